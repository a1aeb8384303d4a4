// The outline of a job: which edges it takes in, and what it says of them.
#include "engine/work/roof_outline.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "eave_job.h"
#include "engine/handover/readings_file.h"
#include "engine/record/event.h"

using namespace hemline_test;

namespace {

/// The invented demo house with its readings taken twice; the first `feet_off` feet too long.
Job demo_house(std::int64_t feet_off, std::size_t readings) {
    const auto catalogue = Catalogue::read(assets_file("catalogue/trims.csv")).value();
    const auto read = read_readings(assets_file("demo/readings.csv"), catalogue);
    REQUIRE(std::get_if<TableProblem>(&read) == nullptr);
    Job job;
    std::uint32_t n = 0;
    const auto keep = [&](const Fact& fact) {
        Event event;
        event.id = {1, ++n};
        event.fact = fact;
        apply(job, event);
    };
    for (const EdgeReading& row : std::get<0>(read)) {
        keep(EdgeAdded{row.edge});
        for (std::size_t i = 0; i < readings; ++i) {
            keep(ReadingTaken{row.edge.id, ReadingOf::edge,
                              row.length + feet(row.edge.id == "A" ? feet_off : 0)});
        }
    }
    return job;
}

}  // namespace

TEST_CASE(
    "The demo house's outline is its first roof; the dormer's and lean-to's edges are beside it") {
    const auto roof = outline_of(demo_house(0, 2));
    REQUIRE(roof);
    REQUIRE(roof->outline.lines.size() == 6);  // A to E, and a gable end that no row lists
    CHECK(roof->outline.lines[0].edge == "A");
    CHECK(roof->outline.lines[2].edge == "");
    CHECK(roof->outline.lines[2].length == LengthIs::implied);
    CHECK(roof->beside.front() == "F");
    CHECK(roof->outline.state == OutlineState::open);
    CHECK(state_words(roof->outline) == "Not all is read yet. What is read agrees.");
}

TEST_CASE("One reading draws the edge already, and nothing read is drawn all the same") {
    CHECK(outline_of(demo_house(0, 1))->outline.lines[0].plan == feet(46) + sixteenths(4));
    CHECK(outline_of(demo_house(0, 0))->outline.lines[0].length == LengthIs::guessed);
    CHECK(!outline_of(Job()));
}

// A 40 × 24 ft rectangle of four eaves; the corner words are this project's, no published source.
TEST_CASE("A rectangle with one side read a foot too long says by how much it misses, and where") {
    Job job;
    std::uint32_t n = 0;
    for (const char* id : {"A", "B", "C", "D"}) {
        Edge edge;
        edge.id = id;
        edge.left = edge.right = End::corner_out;
        const Length length = feet(*id == 'A' || *id == 'C' ? 40 : 24) + feet(*id == 'C' ? 1 : 0);
        for (const Fact& fact :
             {Fact(EdgeAdded{edge}), Fact(ReadingTaken{id, ReadingOf::edge, length})}) {
            Event event;
            event.id = {1, ++n};
            event.fact = fact;
            apply(job, event);
        }
    }
    const auto roof = outline_of(job);
    REQUIRE(roof);
    CHECK(roof->outline.state == OutlineState::misses);
    CHECK(state_words(roof->outline).english().find("fails to close by 1 ft") != std::string::npos);
    const auto named = [](const Suspect& suspect) {
        return suspect_words(suspect) == "C: 40 ft, not 41 ft (misread foot)";
    };
    const auto& suspects = roof->outline.suspects;
    CHECK(std::any_of(suspects.begin(), suspects.end(), named));
    CHECK(roof->beside.empty());
    CHECK(roof->outline.lines[0].inside == degrees(90));
}
