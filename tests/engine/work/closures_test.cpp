#include "engine/work/closures.h"

#include <doctest/doctest.h>

#include <cmath>

#include "engine/trim/end_metal.h"
#include "engine/trim/practice.h"

using namespace hemline;

namespace {

Edge hip_between(std::int64_t rise, std::int64_t other) {
    Edge edge;
    edge.id = "T";
    edge.kind = EdgeKind::hip;
    edge.left = End::eave;
    edge.right = End::ridge;
    edge.pitch = rise_in_12(rise);
    edge.pitch2 = rise_in_12(other);
    return edge;
}

Edge of_kind(EdgeKind kind) {
    Edge edge;
    edge.id = "R";
    edge.kind = kind;
    edge.left = edge.right = End::gable;
    edge.pitch = rise_in_12(6);
    return edge;
}

double inches_of(Length length) { return static_cast<double>(length.nm()) / 25.4e6; }

/// A module of 16 in, a seam of 1 1/2 in on a foot of 1/2 in, legs of 1 in, ears of 3/4 in: common
/// practice, no published source.
const Practice practice;

}  // namespace

TEST_CASE("a closure is as high as the seam, and as long as the clear pan and two ears") {
    // Common practice, no published source: clear pan 15 1/2, blank 17, stretch-out 3 1/2 of sharp
    // bends.
    const Closures closures = closures_of(of_kind(EdgeKind::headwall), inches(193), practice);
    REQUIRE(closures.sides.size() == 1);
    CHECK(closures.sides[0].count == 13);
    CHECK(closures.sides[0].blank == inches(17));
    CHECK(closures.sides[0].ear_degrees == doctest::Approx(90));
    CHECK(closures.web == sixteenths(24));
    CHECK(closures.leg == inches(1));
    CHECK(closures.ear == sixteenths(12));
    CHECK(closures.girth == sixteenths(56));
    Practice lower = practice;
    lower.seam_height = inches(1);
    CHECK(closures_of(of_kind(EdgeKind::headwall), inches(193), lower).girth == inches(3));
}

TEST_CASE("on a hip between 6/12 roofs a closure is on the skew, and its ears are not square") {
    // clear (16 − 1/2)/cos β with β = 48.19°, the ears at 90° ∓ β (computed; common practice).
    const Closures closures = closures_of(hip_between(6, 6), feet(20), practice);
    REQUIRE(closures.sides.size() == 2);
    for (const ClosureSide& side : closures.sides) {
        CHECK(side.blank == inches(23) + sixteenths(4) + inches(1) + sixteenths(8));
        CHECK(side.ear_degrees == doctest::Approx(41.81).epsilon(0.0002));
        CHECK(180 - side.ear_degrees == doctest::Approx(138.19).epsilon(0.0002));
    }
}

TEST_CASE("the pans of each side of a hip are counted apart") {
    // Computed: plan angles 51.34° and 38.66° over a hip of 27.50° (the pitches 8 and 10 of Audel's
    // unequal hip), so seams 16 in apart stand 28.875 and 23.100 in apart along it.
    const Closures unequal = closures_of(hip_between(8, 10), feet(20), practice);
    REQUIRE(unequal.sides.size() == 2);
    CHECK(std::abs(inches_of(unequal.sides[0].apart) - 28.875) < 0.0006);
    CHECK(std::abs(inches_of(unequal.sides[1].apart) - 23.100) < 0.0006);
    CHECK(unequal.sides[0].count == 9);
    CHECK(unequal.sides[1].count == 11);
    CHECK(unequal.count == 20);
    const Closures flatter = closures_of(hip_between(6, 8), feet(20), practice);
    CHECK(flatter.sides[0].count == 9);
    CHECK(flatter.sides[1].count == 12);
    CHECK(std::abs(inches_of(flatter.sides[0].apart) - 28.72) < 0.005);
    CHECK(std::abs(inches_of(flatter.sides[1].apart) - 21.54) < 0.005);
    CHECK(count_words(unequal).english() ==
          "9 of 2 ft 5 1/2 in on the 8/12 roof and 11 of 1 ft 11 15/16 in on the 10/12 roof");
}

TEST_CASE("seams that run along the hip take no closure, and none is longer than its edge") {
    // Over a corner of 120° an 8/12 and a 4/12 roof meet square to the eave of the 4/12 one: its
    // seams never cross the line (cot α = 0).
    Edge edge = hip_between(8, 4);
    edge.corner_left = degrees(120);
    const Closures along = closures_of(edge, feet(20), practice);
    REQUIRE(along.sides.size() == 2);
    CHECK(along.sides[0].count > 0);
    CHECK(along.sides[1].count == 0);
    CHECK(along.sides[1].blank == Length());
    CHECK(bend_words(along).english().find("none on the 4/12 roof") != std::string::npos);
    for (int corner = 30; corner < 180; ++corner) {
        edge.corner_left = degrees(corner);
        for (const ClosureSide& side : closures_of(edge, feet(20), practice).sides) {
            CAPTURE(corner);
            CHECK(side.blank <= feet(20) + inches(2));
            CHECK(side.count <= 16);
        }
    }
}

TEST_CASE("closures are counted: one a pan on both sides of a ridge, none at an eave") {
    CHECK(closures_of(of_kind(EdgeKind::eave), feet(16), practice).count == 0);
    const Closures ridge = closures_of(of_kind(EdgeKind::ridge), feet(16), practice);
    CHECK(ridge.count == 24);
    CHECK(ridge.sides[1].count == 12);
    CHECK(ridge.sticks == 4);  // seven of 17 in from 10 ft
    CHECK(count_words(ridge).english() == "24 of 1 ft 5 in");
    // A hip over a square corner at 5 in 12 is 17.69 in for each 12 of run (framing square): seams
    // stand 16·17.69/12 = 23.59 in apart along it.
    CHECK(std::abs(inches_of(closures_of(hip_between(5, 5), feet(10), practice).sides[0].apart) -
                   23.59) < 0.005);
}

TEST_CASE("a cap's end over a gable is folded by the height of a seam and 1/2 in") {
    // Common practice, no published source: 2 in for a seam of 1 1/2; a longer tab stays.
    Trim cap;
    cap.kind = EdgeKind::ridge;
    cap.legs = {{LegName::flange, inches(7)}, {LegName::face, inches(7)}};
    const Edge ridge = of_kind(EdgeKind::ridge);
    CHECK(end_metal(ridge, Side::left, cap, practice).tab == inches(2));
    Practice other = practice;
    other.seam_height = inches(1);
    CHECK(end_metal(ridge, Side::right, cap, other).tab == sixteenths(24));
    other.tab_gable = inches(3);
    CHECK(end_metal(ridge, Side::right, cap, other).tab == inches(3));
    CHECK(end_metal(of_kind(EdgeKind::eave), Side::left, cap, practice).tab == inches(1));
}
