// What the pictures of a step show is what the step asks: on which side of the metal a thing lies,
// how many there are, and that the last picture is the right one. The stage is a flange that lies
// level, its bend toward you, and a face that hangs down from it. Common practice, no published
// source.
#include "engine/work/step_scene.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <string>
#include <string_view>

namespace hemline {
namespace {

constexpr double flange_wide = 100, face_wide = 90, long_mm = 300;

Scenery stage_with(bool over_panels, bool two_roofs = false) {
    Scenery stage;
    stage.flange = {0, long_mm, flange_wide, {0, 0, 0}, {1, 0, 0}, {0, 1, 0}, {0, 0, 1}};
    stage.face = {0, long_mm, face_wide, {0, 0, 0}, {1, 0, 0}, {0, 0, -1}, {0, -1, 0}};
    stage.piece = {sheet(Stuff::strip, stage.flange, 0, long_mm, 0, flange_wide, 0).facets.front()};
    stage.over_panels = over_panels;
    stage.two_roofs = two_roofs;
    return stage;
}

Shots shots_of(std::string_view step, bool over_panels = false, bool two_roofs = false) {
    const auto shots = scene_of(step, stage_with(over_panels, two_roofs));
    REQUIRE_MESSAGE(shots.has_value(), std::string(step));
    return *shots;
}

std::size_t count(const Shot& shot, Stuff stuff) {
    std::size_t n = 0;
    for (const Prop& prop : shot.props) {
        n += prop.stuff == stuff ? prop.facets.size() : 0;
    }
    return n;
}

/// The least and the greatest of all corners of that stuff.
struct Reach {
    Space low{1e9, 1e9, 1e9}, high{-1e9, -1e9, -1e9};
};

Reach reach(const Shot& shot, Stuff stuff) {
    Reach found;
    for (const Prop& prop : shot.props) {
        for (const Facet& facet : prop.stuff == stuff ? prop.facets : std::vector<Facet>()) {
            for (const Space& at : facet.corners) {
                found.low = {std::min(found.low.x, at.x), std::min(found.low.y, at.y),
                             std::min(found.low.z, at.z)};
                found.high = {std::max(found.high.x, at.x), std::max(found.high.y, at.y),
                              std::max(found.high.z, at.z)};
            }
        }
    }
    return found;
}

}  // namespace

TEST_CASE("the membrane comes down the deck and ends on the flange, over it") {
    const Shots shots = shots_of("membrane");
    CHECK(count(shots[0], Stuff::membrane) == 0);
    const Reach half = reach(shots[1], Stuff::membrane), done = reach(shots[2], Stuff::membrane);
    CHECK(done.low.z > 0);
    CHECK(done.low.y < flange_wide / 2);
    CHECK(done.high.y > flange_wide);
    CHECK(half.low.y > done.low.y);
    CHECK(half.high.y == doctest::Approx(done.high.y));
}

TEST_CASE("on a deck that is right no nail stands out") {
    const Shots shots = shots_of("deck");
    CHECK(reach(shots[0], Stuff::fastener).high.z > 15);
    CHECK(reach(shots[1], Stuff::fastener).high.z > 0);
    CHECK(reach(shots[1], Stuff::fastener).high.z < reach(shots[0], Stuff::fastener).high.z);
    CHECK(count(shots[2], Stuff::fastener) == 1);
    CHECK(reach(shots[2], Stuff::fastener).high.z <= 0);
}

TEST_CASE("fasteners are none, half of them, all of them") {
    for (const char* step : {"fasten", "wrap_fasten", "cleat_fasten", "closures_free"}) {
        CAPTURE(std::string(step));
        const Shots shots = shots_of(step);
        const std::size_t all = count(shots[2], Stuff::fastener);
        CHECK(count(shots[0], Stuff::fastener) == 0);
        CHECK(count(shots[1], Stuff::fastener) == (all + 1) / 2);
        CHECK(all >= 3);
    }
}

TEST_CASE("no head stands in a waterway that is right, and a strip is pinned outside it") {
    const Shots way = shots_of("waterway");
    CHECK(count(way[0], Stuff::fastener) == 1);
    CHECK(count(way[2], Stuff::fastener) == 0);
    CHECK(reach(way[2], Stuff::film).low.y == doctest::Approx(0));  // the water runs through
    const Shots pinned = shots_of("strip_pinned");
    CHECK(reach(pinned[0], Stuff::fastener).high.y < flange_wide);
    CHECK(reach(pinned[2], Stuff::fastener).low.y > flange_wide);
}

TEST_CASE("film is off before sealant is on, and in the end none is left") {
    const Shots seal = shots_of("seal");
    CHECK(count(seal[0], Stuff::film) == 1);
    CHECK(count(seal[0], Stuff::sealant) == 0);
    for (const std::size_t i : {1U, 2U}) {
        CHECK(count(seal[i], Stuff::film) == 0);
        CHECK(count(seal[i], Stuff::sealant) == 2 * i);  // a bead runs across flange and face
    }
    const Shots film = shots_of("film");
    CHECK(count(film[0], Stuff::film) == 2);
    CHECK(count(film[2], Stuff::film) == 0);
}

TEST_CASE("panels lie over what goes on before them and under what goes on after them") {
    const Reach over = reach(shots_of("panels", true)[2], Stuff::panel);
    const Reach under = reach(shots_of("panels", false)[2], Stuff::panel);
    CHECK(under.low.z > 0);
    CHECK(over.low.z < -30);  // a seam below the trim
    CHECK(count(shots_of("panels")[0], Stuff::panel) == 0);
}

TEST_CASE("a closure stands between the seams under the cap, on both roofs of a ridge") {
    const Shots set = shots_of("closures_set", true);
    CHECK(count(set[0], Stuff::strip) == 0);
    const Reach zee = reach(set[2], Stuff::strip);
    CHECK(zee.high.z <= 0);
    CHECK(zee.low.z < -30);
    const std::size_t one = count(set[2], Stuff::strip);
    CHECK(count(shots_of("closures_set", true, true)[2], Stuff::strip) == 2 * one);
    const Shots look = shots_of("look_closures", true, true);
    CHECK(count(look[0], Stuff::strip) == 0);
    CHECK(count(look[1], Stuff::strip) < count(look[2], Stuff::strip));
}

TEST_CASE("a strip is flat, half bent and bent, and is set in tape") {
    const Shots cut = shots_of("strip_cut");
    const auto high = [&](const Shot& shot) {
        const Reach found = reach(shot, Stuff::strip);
        return found.high.z - found.low.z;
    };
    CHECK(high(cut[0]) == doctest::Approx(0));
    CHECK(high(cut[1]) > 1);
    CHECK(high(cut[2]) == doctest::Approx(5));  // a riser of 3/16 in, the lip level again
    const Shots set = shots_of("strip_set");
    CHECK(count(set[0], Stuff::strip) == 0);
    CHECK(count(set[0], Stuff::sealant) == 1);
    CHECK(reach(set[1], Stuff::strip).low.z > reach(set[2], Stuff::strip).low.z);
    CHECK(count(set[2], Stuff::fastener) >= 3);
}

TEST_CASE("an end cap's lip is cut, its corners clipped, its lips folded into the piece") {
    const Shots cut = shots_of("cap_cut", true, true);
    CHECK(reach(cut[0], Stuff::strip).high.z > reach(cut[2], Stuff::strip).high.z);
    const Shots fold = shots_of("cap_fold", true, true);
    CHECK(reach(fold[0], Stuff::strip).high.x == doctest::Approx(0));
    CHECK(reach(fold[1], Stuff::strip).high.x > 10);
    CHECK(reach(fold[2], Stuff::strip).high.x == doctest::Approx(20));  // in from the end at 0
    CHECK(reach(fold[2], Stuff::strip).high.z == doctest::Approx(0));   // none stands out
    const Shots look = shots_of("cap_look", true, true);
    CHECK(count(look[0], Stuff::strip) == 0);
    CHECK(reach(look[0], Stuff::sealant).low.x > 0);
    CHECK(reach(look[1], Stuff::strip).low.x < 0);
    CHECK(reach(look[2], Stuff::strip).low.x == doctest::Approx(0));
    // Down to the pans, a seam and 1/2 in below the leg, as its card has it.
    const std::vector<Space>& plate = look[2].props.back().facets.front().corners;
    REQUIRE(plate.size() == 5);
    CHECK(plate.front().z == doctest::Approx(-51));  // 1 1/2 in and 1/2 in, drawn in whole mm
    CHECK(plate.front().y == doctest::Approx(flange_wide));
}

TEST_CASE("counterflashing hangs over the wall leg's upper edge, in front of it") {
    const Shots shots = shots_of("counter");
    CHECK(count(shots[0], Stuff::wood) < count(shots[2], Stuff::wood));
    Reach found = reach({{}, {}, {shots[2].props.back()}}, Stuff::wood);
    CHECK(found.high.z > -face_wide);  // the leg runs down here from its bend: its edge is below
    CHECK(found.low.z < -face_wide);
    CHECK(found.high.y < 0);
}

}  // namespace hemline
