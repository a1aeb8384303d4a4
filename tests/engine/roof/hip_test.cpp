#include <doctest/doctest.h>

#include <cmath>
#include <vector>

#include "engine/roof/cut_offset.h"
#include "engine/roof/hip.h"
#include "engine/words/result.h"
#include "tests/engine/roof/in.h"

using namespace hemline;

namespace {

HipLine line(Slope one, Slope two, Angle inside = square_out) {
    const Result<HipLine> found = hip_line({one, two, inside});
    REQUIRE(found.ok());
    return *found;
}

/// Length of the hip for a common run of 1: the run of the hip is 1/sin α1.
double hip_of_one_run(Slope pitch) {
    const HipLine hip = line(pitch, pitch);
    return 1 /
           (std::sin(radians_of(hip.from_eave1_degrees)) * std::cos(radians_of(hip.slope_degrees)));
}

/// A figure printed to two places.
bool printed(double value, double as) { return std::abs(value - as) <= 0.005 + 1e-9; }

/// One column of the framing square's rafter table, and the angles of the hip over a square corner.
struct Row {
    std::int64_t rise;
    double degrees, common, hip, jack, side, slope, backing, dihedral;
};

// The lines of a framing square: length of common rafter per foot of run, of hip or valley per foot
// of run, difference of jacks 16 in on center, side cut of jacks. Read on a square: 13.89, 14.42,
// 17.69, 18.76, 19.23, 20.00, 20.83, and side cut 10 (to the whole) at 8. The other figures of a
// row are computed from the same formulas, from no published table.
const std::vector<Row> square = {
    {2, 9.46, 12.17, 17.09, 16.22, 11.84, 6.72, 6.68, 166.65},
    {3, 14.04, 12.37, 17.23, 16.49, 11.64, 10.02, 9.87, 160.25},
    {4, 18.43, 12.65, 17.44, 16.87, 11.38, 13.26, 12.92, 154.16},
    {5, 22.62, 13.00, 17.69, 17.33, 11.08, 16.42, 15.78, 148.44},
    {6, 26.57, 13.42, 18.00, 17.89, 10.73, 19.47, 18.43, 143.13},
    {7, 30.26, 13.89, 18.36, 18.52, 10.37, 22.42, 20.87, 138.25},
    {8, 33.69, 14.42, 18.76, 19.23, 9.98, 25.24, 23.09, 133.81},
    {9, 36.87, 15.00, 19.21, 20.00, 9.60, 27.94, 25.10, 129.79},
    {10, 39.81, 15.62, 19.70, 20.83, 9.22, 30.51, 26.92, 126.17},
    {11, 42.51, 16.28, 20.22, 21.71, 8.85, 32.95, 28.54, 122.92},
    {12, 45.00, 16.97, 20.78, 22.63, 8.49, 35.26, 30.00, 120.00},
    {18, 56.31, 21.63, 24.74, 28.84, 6.66, 46.69, 36.04, 107.92},
};

}  // namespace

TEST_CASE("Every row of the framing square comes out to its last printed place") {
    for (const Row& row : square) {
        CAPTURE(row.rise);
        const Slope pitch = rise_in_12(row.rise);
        CHECK(printed(degrees_of(pitch), row.degrees));
        CHECK(printed(12 * slope_factor_of(pitch), row.common));
        CHECK(printed(12 * hip_of_one_run(pitch), row.hip));
        const Result<Length> jack = jack_difference(inches(16), {pitch, pitch});
        REQUIRE(jack.ok());
        CHECK(printed(in(*jack), row.jack));
        const Result<Length> side = flange_mitre_setback(inches(12), {pitch, pitch});
        REQUIRE(side.ok());
        CHECK(printed(in(*side), row.side));
        const HipLine hip = line(pitch, pitch);
        CHECK(printed(hip.slope_degrees, row.slope));
        CHECK(printed(hip.backing1_degrees, row.backing));
        CHECK(printed(hip.backing2_degrees, row.backing));
        CHECK(printed(hip.dihedral_degrees, row.dihedral));
    }
}

TEST_CASE("Navy Builder manual: 7 rise over a 16 ft span is a common rafter of 111.12 in") {
    // NAVEDTRA 14044: 8 ft of run × 13.89, written as 9 ft 3 1/8 in.
    const double length = 8 * 12 * slope_factor_of(rise_in_12(7));
    CHECK(std::abs(length - 111.12) <= 8 * 0.005);  // the manual multiplies the rounded 13.89
    CHECK(std::abs(length - (9 * 12 + 3.125)) <= 1.0 / 16);
}

TEST_CASE("Navy Builder manual: a hip run of 21.21 ft at 8 rise is 23.45 ft of hip") {
    // NAVEDTRA 14044. 21.21 ft is the diagonal of 15 ft of common run.
    CHECK(std::abs(15 * hip_of_one_run(rise_in_12(8)) - 23.45) <= 0.01);
}

TEST_CASE("Navy Builder manual: the shortest hip jack 16 in on centre at 8 rise is 19.23 in") {
    const Result<Length> jack = jack_difference(inches(16), {rise_in_12(8), rise_in_12(8)});
    REQUIRE(jack.ok());
    CHECK(printed(in(*jack), 19.23));
}

TEST_CASE("US Army EN5156: 8 rise on a building 20 ft wide is a rafter of 144.17 in") {
    // The text multiplies a rounded factor; 10 ft × sqrt(208)/12 is 144.22.
    CHECK(std::abs(10 * 12 * slope_factor_of(rise_in_12(8)) - 144.17) <= 0.06);
    CHECK(printed(10 * 12 * slope_factor_of(rise_in_12(8)), 144.22));
}

TEST_CASE("Audel vol. 3: jacks 16 in apart at 10 rise differ by 20.83 in") {
    const Result<Length> jack = jack_difference(inches(16), {rise_in_12(10), rise_in_12(10)});
    REQUIRE(jack.ok());
    CHECK(printed(in(*jack), 20.83));
}

TEST_CASE("Pitches of 8 and 10 make a hip of 27.50 degrees with backings of 20.27 and 29.99") {
    // A published worked case of an irregular hip.
    const HipLine hip = line(rise_in_12(8), rise_in_12(10));
    CHECK(printed(hip.slope_degrees, 27.50));
    const double small = std::min(hip.backing1_degrees, hip.backing2_degrees);
    const double large = std::max(hip.backing1_degrees, hip.backing2_degrees);
    CHECK(printed(small, 20.27));
    CHECK(printed(large, 29.99));
    CHECK(small + large == doctest::Approx(180 - hip.dihedral_degrees));
}

TEST_CASE("Swapping the two roofs swaps the two sides of the hip and nothing else") {
    const HipLine one = line(rise_in_12(4), rise_in_12(9), microdegrees(112'500'000));
    const HipLine two = line(rise_in_12(9), rise_in_12(4), microdegrees(112'500'000));
    CHECK(one.slope_degrees == doctest::Approx(two.slope_degrees));
    CHECK(one.backing1_degrees == doctest::Approx(two.backing2_degrees));
    CHECK(one.from_eave1_degrees == doctest::Approx(two.from_eave2_degrees));
}

TEST_CASE("A valley lies as the hip of the same corner turned over") {
    const HipLine hip = line(rise_in_12(7), rise_in_12(7), square_out);
    const HipLine valley = line(rise_in_12(7), rise_in_12(7), square_in);
    CHECK(valley.slope_degrees == doctest::Approx(hip.slope_degrees));
    CHECK(valley.dihedral_degrees == doctest::Approx(hip.dihedral_degrees));
    CHECK(valley.backing1_degrees == doctest::Approx(-hip.backing1_degrees));
    CHECK(valley.from_eave1_degrees == doctest::Approx(135));
}

TEST_CASE("No line rises from a straight eave, a full turn or a flat roof") {
    for (const Angle inside :
         {degrees(0), degrees(180), degrees(360), microdegrees(-5), degrees(400)}) {
        const Result<HipLine> none = hip_line({rise_in_12(6), rise_in_12(6), inside});
        REQUIRE(!none.ok());
        CHECK(!none.problem().mend.empty());
    }
    CHECK(!hip_line({rise_in_12(0), rise_in_12(6), square_out}).ok());
    CHECK(!hip_line({rise_in_12(6), rise_in_12(0), square_out}).ok());
}
