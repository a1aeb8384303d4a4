#include <doctest/doctest.h>

#include <cmath>
#include <string>
#include <vector>

#include "engine/roof/fold_angle.h"
#include "engine/words/result.h"

using namespace hemline;

TEST_CASE("Before a plumb fascia the metal is folded to 90 degrees and the pitch") {
    // The pitch in degrees of the rafter tables, to two places, added to the right angle.
    struct Row {
        std::int64_t rise;
        double degrees;
    };
    for (const Row& row : std::vector<Row>{{2, 9.46}, {4, 18.43}, {6, 26.57}, {12, 45.00}}) {
        const FoldAngle fold = eave_fold(rise_in_12(row.rise), Fascia::plumb);
        CHECK(std::abs(fold.included_degrees - (90 + row.degrees)) <= 0.005);
        CHECK(std::abs(fold.bend_degrees - (90 - row.degrees)) <= 0.005);
    }
}

TEST_CASE("Before a square-cut fascia the fold is a right angle at any pitch") {
    for (const std::int64_t rise : {0, 3, 6, 12, 18}) {
        const FoldAngle fold = eave_fold(rise_in_12(rise), Fascia::square_cut);
        CHECK(fold.included_degrees == 90);
        CHECK(fold.bend_degrees == 90);
    }
}

TEST_CASE("Included angle and bend always make 180 degrees") {
    for (const Fascia fascia : {Fascia::plumb, Fascia::square_cut}) {
        const FoldAngle fold = eave_fold({SlopeNotation::degrees, 22'600'000}, fascia);
        CHECK(fold.included_degrees + fold.bend_degrees == doctest::Approx(180));
    }
}

namespace {

FoldAngle fold(FoldAsked asked) {
    const Result<FoldAngle> found = fold_of(asked);
    REQUIRE(found.ok());
    return *found;
}

}  // namespace

// Angles of 12ths to two places: rafter tables (26.57 at 6 rise, 33.69 at 8, 18.43 at 4).
TEST_CASE("Every kind of edge has its fold, its bend and its way at 6 in 12") {
    struct Row {
        EdgeKind kind;
        double included;
        Toward toward;
    };
    for (const Row& row : std::vector<Row>{{EdgeKind::eave, 90 + 26.57, Toward::down},
                                           {EdgeKind::high_eave, 90 - 26.57, Toward::down},
                                           {EdgeKind::gable, 90, Toward::down},
                                           {EdgeKind::sidewall, 90, Toward::up},
                                           {EdgeKind::headwall, 90 + 26.57, Toward::up},
                                           {EdgeKind::curb_head, 90 - 26.57, Toward::up},
                                           {EdgeKind::ridge, 180 - 2 * 26.57, Toward::down},
                                           {EdgeKind::hip, 143.13, Toward::down},
                                           {EdgeKind::valley, 143.13, Toward::up}}) {
        const FoldAngle found = fold({row.kind, rise_in_12(6), {}, {}, Fascia::plumb});
        CHECK_MESSAGE(std::abs(found.included_degrees - row.included) <= 0.011,
                      std::string(word_of(row.kind)));
        CHECK(found.included_degrees + found.bend_degrees == doctest::Approx(180));
        CHECK(found.toward == row.toward);
    }
}

TEST_CASE("An eave's angle used at a high eave is 53 degrees off at 6 in 12") {
    // 2 × 26.57°, the degrees of a rafter table.
    const FoldAsked low{EdgeKind::eave, rise_in_12(6), {}, {}, Fascia::plumb};
    FoldAsked high = low;
    high.kind = EdgeKind::high_eave;
    CHECK(std::abs(fold(low).included_degrees - fold(high).included_degrees - 53.13) <= 0.005);
}

TEST_CASE("A square-cut fascia makes a right angle at a high eave too") {
    CHECK(fold({EdgeKind::high_eave, rise_in_12(8), {}, {}, Fascia::square_cut}).included_degrees ==
          90);
}

TEST_CASE("A transition turns up where the upper roof is the steeper, down where it is flatter") {
    const FoldAngle up = fold({EdgeKind::transition, rise_in_12(4), rise_in_12(8), {}, {}});
    CHECK(std::abs(up.bend_degrees - (33.69 - 18.43)) <= 0.011);
    CHECK(up.toward == Toward::up);
    const FoldAngle down = fold({EdgeKind::transition, rise_in_12(8), rise_in_12(4), {}, {}});
    CHECK(down.bend_degrees == doctest::Approx(up.bend_degrees));
    CHECK(down.toward == Toward::down);
}

TEST_CASE("A headwall is a transition to an upright roof") {
    const FoldAngle wall = fold({EdgeKind::headwall, rise_in_12(5), {}, {}, {}});
    const Slope upright{SlopeNotation::degrees, 89'999'999};
    const FoldAngle steep = fold({EdgeKind::transition, rise_in_12(5), upright, {}, {}});
    CHECK(std::abs(wall.included_degrees - steep.included_degrees) <= 0.00001);
    CHECK(wall.toward == steep.toward);
}

TEST_CASE("A hip over an outside corner of 135 degrees at 6 in 12 is folded to 160.29") {
    // cos δ = cos²θ + sin²θ·cos 45° by hand: 0.8 + 0.2 × 0.70711 = 0.94142, δ = 19.71°.
    const FoldAngle found = fold({EdgeKind::hip, rise_in_12(6), {}, degrees(135), Fascia::plumb});
    CHECK(std::abs(found.included_degrees - 160.29) <= 0.005);
}

TEST_CASE("A valley's corner stated from outside folds the same as from inside") {
    const FoldAsked inside{EdgeKind::valley, rise_in_12(7), rise_in_12(9), degrees(250), {}};
    FoldAsked outside = inside;
    outside.corner = degrees(110);
    CHECK(fold(inside).bend_degrees == doctest::Approx(fold(outside).bend_degrees));
}

TEST_CASE("What a kind does not need is passed over") {
    const FoldAngle plain = fold({EdgeKind::gable, rise_in_12(6), {}, {}, Fascia::plumb});
    const FoldAngle full =
        fold({EdgeKind::gable, rise_in_12(6), rise_in_12(9), Angle(), Fascia::square_cut});
    CHECK(plain.included_degrees == full.included_degrees);
}

TEST_CASE("A fold that cannot be is refused with what is missing") {
    const Result<FoldAngle> lonely =
        fold_of({EdgeKind::transition, rise_in_12(6), {}, {}, Fascia::plumb});
    REQUIRE(!lonely.ok());
    CHECK(lonely.problem().what.english().find("upper roof") != std::string::npos);
    for (const Angle corner : {degrees(0), degrees(180), degrees(270), degrees(360)}) {
        const Result<FoldAngle> hip =
            fold_of({EdgeKind::hip, rise_in_12(6), {}, corner, Fascia::plumb});
        REQUIRE(!hip.ok());
        CHECK(hip.problem().what.english().find("hip") != std::string::npos);
        CHECK(!hip.problem().mend.empty());
    }
    for (const Angle corner : {degrees(0), degrees(180)}) {
        CHECK(!fold_of({EdgeKind::valley, rise_in_12(6), {}, corner, Fascia::plumb}).ok());
    }
}
