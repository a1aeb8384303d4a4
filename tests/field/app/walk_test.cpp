// A roof walked by touch: side by side, or from a shape; drawn whole, and in how many touches.
// The limits are those of the issue.
#include <doctest/doctest.h>

#include <algorithm>

#include "field/screens/roof/roof_sheet.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

/// A new job, at the first side of its walk.
void begin_walk(Journey& crew) {
    crew.tap_all({"new job", "letter A", "keep name", "walk"});
    crew.touches = 0;
}

/// The side's length, and what is not as the side before.
void key_side(Journey& crew, Length length, const std::string& kind = "",
              const std::string& corner = "") {
    crew.key_in(length);
    if (!kind.empty()) {
        crew.tap("kind " + kind);
    }
    if (!corner.empty()) {
        crew.tap("corner " + corner);
    }
}

const BodyOnJob& roof_of(const Journey& crew) {
    REQUIRE(crew.state().bodies.size() == 1);
    return crew.state().bodies.front();
}

Length expected_on(const Journey& crew, const char* edge) {
    const auto expected = expected_of(crew.state().bodies, edge);
    REQUIRE_MESSAGE(expected, edge);
    return expected->length;
}

}  // namespace

TEST_CASE("An L of equal wings with six lengths and a pitch takes at most 60 touches") {
    Journey crew;
    SUBCASE("in English") {}
    SUBCASE("in Spanish") { crew.tap("language"); }
    begin_walk(crew);
    crew.tap("leave");  // the touch that begins a walk counts
    crew.touches = 0;
    crew.tap("walk");
    key_side(crew, feet(46) + inches(3));
    crew.tap("next");
    key_side(crew, feet(24) + inches(6));
    crew.tap("next");
    key_side(crew, feet(21) + inches(9), "", "inside");
    crew.tap("next");
    key_side(crew, feet(17) + inches(6));
    crew.tap("next");
    key_side(crew, feet(24) + inches(6));
    crew.tap("next");
    key_side(crew, feet(42));
    crew.tap_all({"close", "digit 5", "keep pitch"});
    MESSAGE(crew.touches << " touches");
    CHECK(crew.touches <= 60);
    CHECK(crew.where().screen == Screen::roof);
    CHECK(crew.state().job.edges.size() == 14);
    REQUIRE(roof_of(crew).worked);
    for (const EdgeOnBody& edge : roof_of(crew).edges) {
        CHECK(edge.edges.size() == 1);
        CHECK(edge.expected > Length());
    }
    CHECK(shows(crew, "17 ft"));  // hips and valley say how long they should be
}

TEST_CASE("A gable takes at most 25 touches, two of its lengths left to what closes it") {
    Journey crew;
    SUBCASE("in English") {}
    SUBCASE("in Spanish") { crew.tap("language"); }
    begin_walk(crew);
    crew.tap("leave");
    crew.touches = 0;
    crew.tap("walk");
    key_side(crew, feet(40) + inches(6));
    crew.tap("next");
    key_side(crew, feet(24), "gable");
    crew.tap_all({"close", "digit 6", "keep pitch"});
    MESSAGE(crew.touches << " touches");
    CHECK(crew.touches <= 25);
    REQUIRE(roof_of(crew).worked);
    CHECK(crew.state().job.edges.size() == 7);
    // 12 ft of run at 13.42 in to the foot (framing square).
    CHECK(absolute(expected_on(crew, "B") - sixteenths(2576)) < sixteenths(2));
}

TEST_CASE(
    "A walk under way is a gap, not a fault; a side is taken back, and it goes on after a kill") {
    Journey crew;
    begin_walk(crew);
    key_side(crew, feet(40));
    crew.tap("next");
    CHECK(shows(crew, "next side, from here"));
    key_side(crew, feet(24));
    crew.tap_all({"next", "leave"});
    CHECK(shows(crew, "next side, from here"));
    CHECK_FALSE(shows(crew, "fails to close"));
    crew.tap_all({"walk", "one back"});
    CHECK(crew.last<BodyWalked>().sides.size() == 1);
    crew.start_again();
    CHECK(crew.state().bodies.front().sides.size() == 1);
    crew.tap("next");  // what is next is the walk
    CHECK(crew.where().screen == Screen::walk);
    CHECK(shows(crew, "Walk the roof · side B"));
}

TEST_CASE("Every shape gives a whole roof from its lengths and a pitch") {
    const std::pair<const char*, std::vector<int>> shapes[] = {{"gable", {40, 24}},
                                                               {"hip", {40, 24}},
                                                               {"l", {46, 42, 24}},
                                                               {"t", {60, 20, 24}},
                                                               {"lean-to", {20, 8}}};
    const std::size_t edges[] = {7, 9, 14, 19, 4};
    const std::size_t planes[] = {2, 4, 6, 8, 1};
    for (std::size_t i = 0; i < std::size(shapes); ++i) {
        const std::string name = shapes[i].first;
        CAPTURE(name);
        Journey crew;
        begin_walk(crew);
        crew.tap_all({"shape", "shape " + name});
        for (const int length : shapes[i].second) {
            crew.key_in(feet(length));
            crew.tap("next");
        }
        crew.tap_all({"digit 6", "keep pitch"});
        REQUIRE(roof_of(crew).worked);
        CHECK_FALSE(roof_of(crew).problem);
        CHECK(roof_of(crew).worked->planes.size() == planes[i]);
        CHECK(crew.state().job.edges.size() == edges[i]);
    }
}

TEST_CASE("The arms of an L are longer than they are wide, or the shape says so") {
    Journey crew;
    begin_walk(crew);
    crew.tap_all({"shape", "shape l"});
    for (const int length : {46, 20, 24}) {
        crew.key_in(feet(length));
        if (length != 24) {
            crew.tap("next");
        }
    }
    CHECK(shows(crew, "An arm is no longer than it is wide."));
    CHECK_FALSE(crew.screen->has_target("next"));
}

TEST_CASE("The reading screen says what the roof says, and asks about ten feet more") {
    Journey crew;
    begin_walk(crew);
    key_side(crew, feet(40));
    crew.tap("next");
    key_side(crew, feet(24));
    crew.tap_all({"close", "digit 6", "keep pitch", "edge J"});  // the ridge, of 16 ft
    CHECK(shows(crew, "the roof says 16 ft"));
    crew.key_in(feet(26));
    crew.screen->tap("keep");
    CHECK(shows(crew, "Likely ten feet were misread."));
    CHECK(crew.work("J").readings.empty());
    crew.screen->tap("keep");  // kept on purpose
    CHECK(crew.work("J").readings.size() == 1);
}

TEST_CASE("What is next is the walk as long as it is open, and the first edge once it is closed") {
    Journey crew;
    begin_walk(crew);
    key_side(crew, feet(40));
    crew.tap("next");
    key_side(crew, feet(24), "gable");
    crew.tap_all({"close", "digit 6", "keep pitch"});
    REQUIRE(roof_of(crew).closed);
    crew.tap("next");
    CHECK(crew.where().screen == Screen::reading);
    CHECK(crew.where().edge == "A");
    // A second walk under way goes before the edges of the first.
    crew.tap("leave");
    crew.tap_all({"add edge", "walk"});
    key_side(crew, feet(8));
    crew.tap_all({"next", "leave"});
    REQUIRE_FALSE(crew.state().bodies.back().closed);
    crew.tap("next");
    CHECK(crew.where().screen == Screen::walk);
}

TEST_CASE("A dormer runs into a roof in few touches, and is drawn where it lies") {
    Journey crew;
    begin_walk(crew);
    key_side(crew, feet(40));
    crew.tap("next");
    key_side(crew, feet(24), "gable");
    crew.tap_all({"close", "digit 6", "keep pitch", "add edge", "walk"});
    crew.touches = 0;
    key_side(crew, feet(8), "gable");
    crew.tap_all({"runs in", "host A"});
    crew.key_in(feet(16));
    crew.tap("next");
    crew.key_in(feet(4));
    crew.tap("next");
    crew.key_in(feet(4));
    crew.tap_all({"next", "digit 4", "keep pitch"});
    MESSAGE(crew.touches << " touches");
    CHECK(crew.touches <= 25);
    CHECK(crew.where().screen == Screen::roof);
    REQUIRE(roof_of(crew).worked);
    CHECK_FALSE(roof_of(crew).problem);
    CHECK(roof_of(crew).bodies.size() == 2);
    CHECK(crew.state().job.edges.size() == 17);
    CHECK(crew.last<PitchTaken>().pitch == rise_in_12(4));
    const HostSaid host{"A", feet(16), feet(4), feet(4)};
    CHECK(crew.state().job.bodies[1].host == host);
    CHECK_FALSE(shows(crew, "Add the roof's missing edges"));
    // Its front lies 16 of the eave's 40 ft along, and 4 of the house's 24 ft up.
    const RoofSheet sheet = roof_sheet(crew.screen->ui(), crew.state(), {0, 0, 800, 600});
    const auto line = [&](const char* letter) {
        return *std::find_if(sheet.lines.begin(), sheet.lines.end(),
                             [&](const SheetLine& one) { return one.letter == letter; });
    };
    const SheetLine eave = line("A"), behind = line("C"), front = line("H");
    CHECK(front.from.x == doctest::Approx(eave.from.x + eave.length * 16 / 40));
    CHECK(front.from.y == doctest::Approx(eave.from.y + (behind.from.y - eave.from.y) * 4 / 24));
}

TEST_CASE("What a body lies out past the eave and lower is said, and a walk back asks again") {
    Journey crew;
    begin_walk(crew);
    key_side(crew, feet(40));
    crew.tap("next");
    key_side(crew, feet(24), "gable");
    CHECK_FALSE(crew.screen->has_target("runs in"));  // there is no roof yet
    crew.tap_all({"close", "digit 6", "keep pitch", "add edge", "walk"});
    key_side(crew, feet(16), "gable");
    crew.tap_all({"runs in", "leave", "runs in", "host A"});
    crew.key_in(feet(12));
    crew.tap_all({"next", "other way"});
    crew.key_in(feet(10));
    crew.tap_all({"next", "other way"});
    crew.key_in(feet(2));
    crew.tap_all({"next", "digit 6", "keep pitch"});
    const HostSaid host{"A", feet(12), -feet(10), -feet(2)};
    CHECK(crew.state().job.bodies[1].host == host);
    CHECK(roof_of(crew).worked);
    CHECK(crew.work("A").edge.kind == EdgeKind::eave);
}

TEST_CASE("A hood stands on a roof or by itself") {
    for (const bool stands : {true, false}) {
        Journey crew;
        begin_walk(crew);
        key_side(crew, feet(40));
        crew.tap("next");
        key_side(crew, feet(24), "gable");
        crew.tap_all({"close", "digit 6", "keep pitch", "add edge", "walk"});
        key_side(crew, feet(4));
        crew.tap("next");
        key_side(crew, feet(4));
        crew.tap("close");
        if (stands) {
            crew.tap("host A");
            crew.key_in(feet(18));
            crew.tap("next");
            crew.key_in(feet(4));
            crew.tap("next");
            crew.key_in(feet(5));
            crew.tap("next");
        } else {
            crew.tap("by itself");
        }
        crew.tap_all({"digit 1", "digit 2", "keep pitch"});
        CHECK(crew.state().bodies.size() == (stands ? 1 : 2));
        const auto& edges = crew.state().job.edges;
        CHECK(std::any_of(edges.begin(), edges.end(), [](const EdgeWork& work) {
                  return work.edge.kind == EdgeKind::curb_head;
              }) == stands);
    }
}

TEST_CASE("A porch under an eave says which one, and how far along; its height follows") {
    Journey crew;
    begin_walk(crew);
    key_side(crew, feet(40));
    crew.tap("next");
    key_side(crew, feet(24), "gable");
    crew.tap_all({"close", "digit 8", "keep pitch", "add edge", "walk"});
    key_side(crew, feet(16), "eave");
    crew.tap("next");
    key_side(crew, feet(8), "gable");
    crew.tap("next");
    key_side(crew, feet(16), "transition");
    crew.tap_all({"close", "host A"});
    crew.key_in(feet(10));
    crew.tap_all({"next", "digit 3", "keep pitch"});
    REQUIRE(roof_of(crew).worked);
    CHECK(roof_of(crew).bodies.size() == 2);
    const HostSaid host{"A", feet(10), {}, {}};
    CHECK(crew.state().job.bodies[1].host == host);
    CHECK(crew.state().job.bodies[1].sides[2].meets == "A");
    CHECK(absolute(expected_on(crew, "A") - feet(10)) < sixteenths(1));
    const auto& edges = crew.state().job.edges;
    const auto met = std::find_if(edges.begin(), edges.end(), [](const EdgeWork& work) {
        return work.edge.kind == EdgeKind::transition;
    });
    REQUIRE(met != edges.end());
    CHECK(met->edge.pitch == rise_in_12(3));
    CHECK(met->edge.pitch2 == rise_in_12(8));
}
