// The roof drawn from above: it grows with the readings, opens an edge under a finger, and says
// what keeps it from closing.
#include <doctest/doctest.h>

#include <map>
#include <set>

#include "engine/handover/readings_file.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

Journey& demo(Journey& crew) {
    crew.tap("demo");
    return crew;
}

}  // namespace

TEST_CASE("An edge touched in the drawing opens, as its row in the list does") {
    Journey crew;
    demo(crew).tap("roof D");
    CHECK(crew.where().screen == Screen::reading);
    CHECK(crew.where().edge == "D");
}

TEST_CASE(
    "The demo is a whole roof from the first touch: nothing lacks, and every length is right") {
    Journey crew;
    demo(crew);
    // The lengths that were invented for it.
    const auto bytes = read_file(*assets_folder() / "demo" / "readings.csv");
    REQUIRE(bytes.ok());
    const auto rows =
        read_readings(std::string(bytes->begin(), bytes->end()), assets_read().catalogue);
    std::map<std::string, Length> invented;
    for (const EdgeReading& row : std::get<std::vector<EdgeReading>>(rows)) {
        invented[row.edge.id] = row.length;
    }
    std::set<std::string> told;
    for (const BodyOnJob& body : crew.state().bodies) {
        CAPTURE(body.id);
        REQUIRE(body.worked);
        CHECK_FALSE(body.problem);
        CHECK(body.without_place.empty());
        for (const EdgeOnBody& edge : body.edges) {
            REQUIRE(edge.edges.size() == 1);
            const std::string& id = edge.edges.front();
            CAPTURE(id);
            CHECK(crew.work(id).edge.kind == edge.worked.kind);
            CHECK(absolute(invented.at(id) - edge.expected) <= edge.off + sixteenths(1));
            told.insert(id);
        }
    }
    CHECK(told.size() == crew.state().job.edges.size());
}

TEST_CASE("A finger near an edge opens it, and near two it asks which") {
    Journey crew;
    demo(crew);
    const Box plan = crew.screen->target("roof plan");
    const Box a = crew.screen->target("roof A");
    // Along A, a good way from its letter.
    crew.screen->touch({TouchKind::down, 1, a.mid_x() + plan.w / 8, a.mid_y()});
    crew.screen->touch({TouchKind::up, 1, a.mid_x() + plan.w / 8, a.mid_y()});
    CHECK(crew.where().edge == "A");
    crew.tap("leave");
    // Where A, B and the hip between them meet.
    const Box b = crew.screen->target("roof B");
    const float x = std::max(a.mid_x(), b.mid_x()), y = std::max(a.mid_y(), b.mid_y());
    crew.screen->touch({TouchKind::down, 1, x, y});
    crew.screen->touch({TouchKind::up, 1, x, y});
    CHECK(crew.where().screen == Screen::roof);
    CHECK(crew.screen->has_target("near A"));
    crew.tap("near B");
    CHECK(crew.where().edge == "B");
}

TEST_CASE("A side read a foot too long is said under the drawing, with what would close it") {
    Journey crew;
    demo(crew);
    const std::vector<std::pair<const char*, Length>> lengths = {
        {"A", feet(46) + sixteenths(4)},
        {"B", feet(39) + inches(11)},
        {"C", feet(15) + inches(8) + sixteenths(8)},
        {"D", feet(25) + inches(8) + sixteenths(4)},
        {"E", feet(25) + inches(2) + sixteenths(8)}};
    for (const auto& [edge, length] : lengths) {
        CHECK_FALSE(shows(crew, "fails to close"));
        crew.read_edge(edge, length, length, "5");
        crew.tap("leave");
    }
    // The gable end that no row lists runs along A: it cannot take up a foot of E.
    CHECK(shows(crew, "fails to close by 1 ft"));
    CHECK(shows(crew, "E: 24 ft 2 1/2 in, not 25 ft 2 1/2 in (misread foot)"));
}

TEST_CASE("A drag turns the roof into the solid seen from a corner, and a touch turns it back") {
    Journey crew;
    demo(crew);
    REQUIRE(crew.screen->has_target("roof D"));
    const Box plan = crew.screen->target("roof plan");
    crew.screen->drag_from(plan.mid_x(), plan.mid_y(), 25, 0);
    CHECK_FALSE(crew.screen->has_target("roof D"));
    CHECK(crew.where().screen == Screen::roof);  // a drag opens no edge
    crew.tap("roof plan");
    CHECK(crew.screen->has_target("roof D"));
    CHECK(crew.where().screen == Screen::roof);
    // Dragged there and back it is the plan again.
    crew.screen->drag_from(plan.mid_x(), plan.mid_y(), 25, 0);
    crew.screen->drag_from(plan.mid_x(), plan.mid_y(), -25, 0);
    CHECK(crew.screen->has_target("roof D"));
}
