// The demo house walked anew by touch, roof by roof, until every edge is drawn with the length that
// it should have. 653 touches keyed the same edges in by hand; 150 is the limit. Its five
// roofs each stand by themselves here.
#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <fstream>
#include <iterator>
#include <vector>

#include "engine/handover/readings_file.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

/// A side as somebody keys it in: its length, where he does not leave it to what closes the roof,
/// and what is not as the side before.
struct Keyed {
    std::optional<Length> length;
    const char *kind = nullptr, *corner = nullptr;
};

void walk_one(Journey& crew, const std::vector<Keyed>& sides, const std::string& pitch,
              bool in_degrees = false) {
    if (!crew.screen->has_target("walk")) {
        crew.tap("add edge");
    }
    crew.tap("walk");
    for (const Keyed& side : sides) {
        if (side.length) {
            crew.key_in(*side.length);
        }
        if (side.kind != nullptr) {
            crew.tap(std::string("kind ") + side.kind);
        }
        if (side.corner != nullptr) {
            crew.tap(std::string("corner ") + side.corner);
        }
        crew.tap(&side == &sides.back() ? "close" : "next");
    }
    if (crew.screen->has_target("by itself")) {
        crew.tap("by itself");
    }
    if (in_degrees) {
        crew.tap("notation degrees");
    }
    for (const char letter : pitch) {
        crew.tap(letter == '.' ? std::string("point") : std::string("digit ") + letter);
    }
    crew.tap("keep pitch");
    REQUIRE(crew.where().screen == Screen::roof);
}

/// Kind and expected length of each edge of a roof, in an order of its own.
std::vector<std::pair<int, Length>> edges_of(const BodyOnJob& body) {
    std::vector<std::pair<int, Length>> edges;
    for (const EdgeOnBody& edge : body.edges) {
        edges.emplace_back(static_cast<int>(edge.worked.kind), edge.expected);
    }
    std::sort(edges.begin(), edges.end());
    return edges;
}

}  // namespace

TEST_CASE("The demo house takes at most 150 touches to the whole roof with its expected lengths" *
          doctest::test_suite("long")) {
    Journey crew;
    SUBCASE("in English") {}
    SUBCASE("in Spanish") { crew.tap("language"); }
    crew.tap_all({"new job", "letter A", "keep name"});
    crew.touches = 0;
    const auto in = [](int ft, int inch, int sixteenth = 0) {
        return feet(ft) + inches(inch) + sixteenths(sixteenth);
    };
    walk_one(crew,
             {{in(46, 0, 4)},
              {in(39, 11)},
              {in(20, 4), "gable"},
              {in(15, 8, 8), "eave", "inside"},
              {{}, nullptr, nullptr}},
             "5");
    walk_one(crew, {{in(12, 6, 6)}, {in(6, 0), "gable"}, {in(12, 6, 6), "wall"}, {}}, "3.5");
    walk_one(crew, {{in(9, 10, 12)}, {in(3, 0), "gable"}, {{}, "wall"}}, "7");
    walk_one(crew, {{in(16, 7, 10)}, {in(4, 0), "open"}, {in(16, 7, 10)}, {{}, "gable"}}, "18.4",
             true);
    walk_one(crew,
             {{in(16, 7, 10), "transition"},
              {in(3, 0), "open"},
              {in(16, 7, 10), "high_eave"},
              {{}, "gable"}},
             "30", true);
    MESSAGE(crew.touches << " touches");
    CHECK(crew.touches <= 150);

    Journey demo;  // the house as the program brings it, from walks that were written at a desk
    demo.tap("demo");
    REQUIRE(crew.state().bodies.size() == demo.state().bodies.size());
    std::size_t edges = 0;
    for (std::size_t i = 0; i < crew.state().bodies.size(); ++i) {
        CAPTURE(i);
        const BodyOnJob &walked = crew.state().bodies[i], &written = demo.state().bodies[i];
        CAPTURE(walked.problem ? walked.problem->what.english() : "");
        REQUIRE(walked.worked);
        CHECK_FALSE(walked.problem);
        for (const EdgeOnBody& edge : walked.edges) {
            CHECK(edge.edges.size() == 1);
        }
        const auto own = edges_of(walked), other = edges_of(written);
        REQUIRE(own.size() == other.size());
        for (std::size_t k = 0; k < own.size(); ++k) {
            CHECK(own[k].first == other[k].first);
            // The walk of the first roof leaves two lengths to the closing that the desk said.
            CHECK(absolute(own[k].second - other[k].second) <= sixteenths(8));
        }
        edges += own.size();
    }
    CHECK(edges == demo.state().job.edges.size());
    CHECK(shows(crew, "21 ft 10 in"));  // the ridge, said along it
}

TEST_CASE(
    "Each length that the demo's roofs say is its invented reading, within what it can be off") {
    Journey demo;
    demo.tap("demo");
    std::ifstream file(std::string(std::getenv("HEMLINE_ASSETS")) + "/demo/readings.csv");
    const std::string text{std::istreambuf_iterator<char>(file), {}};
    const auto read = read_readings(text, assets_read().catalogue);
    REQUIRE(std::get_if<TableProblem>(&read) == nullptr);
    const std::vector<EdgeReading>& readings = std::get<0>(read);
    std::size_t held = 0;
    for (const BodyOnJob& body : demo.state().bodies) {
        for (const EdgeOnBody& edge : body.edges) {
            REQUIRE(edge.edges.size() == 1);  // none of the demo's is lacking, none in pieces
            const auto row = std::find_if(
                readings.begin(), readings.end(),
                [&](const EdgeReading& one) { return one.edge.id == edge.edges.front(); });
            REQUIRE(row != readings.end());
            CAPTURE(row->edge.id);
            CHECK(edge.off > Length());
            CHECK(absolute(edge.expected - row->length) <= edge.off);
            ++held;
        }
    }
    CHECK(held == readings.size());
}
