#include <doctest/doctest.h>

#include <cmath>
#include <vector>

#include "engine/roof/fold_angle.h"

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

TEST_CASE("The flange mitre of a 12 in flange is the framing square's side cut of jacks") {
    // The framing square's line "side cut of jacks" gives 10 at 8 in 12; the others are the side
    // cuts of the rafter tables, 12 cos(pitch), to two places.
    struct Row {
        std::int64_t rise;
        double inches;
    };
    for (const Row& row : std::vector<Row>{{2, 11.84},
                                           {3, 11.64},
                                           {4, 11.38},
                                           {5, 11.08},
                                           {6, 10.73},
                                           {7, 10.37},
                                           {8, 9.98},
                                           {9, 9.60},
                                           {12, 8.49}}) {
        const Length setback = flange_mitre_setback(inches(12), rise_in_12(row.rise));
        CHECK(std::abs(static_cast<double>(setback.nm()) / 25.4e6 - row.inches) <= 0.005 + 1e-9);
    }
}

TEST_CASE("A 4 in flange at 6 in 12 is set back 3.578 in, and all of it on a flat roof") {
    const Length setback = flange_mitre_setback(inches(4), rise_in_12(6));
    CHECK(std::abs(static_cast<double>(setback.nm()) / 25.4e6 - 3.578) <= 0.0005);
    CHECK(flange_mitre_setback(inches(4), rise_in_12(0)) == inches(4));
}
