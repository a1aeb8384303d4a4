#include <doctest/doctest.h>

#include <cmath>
#include <vector>

#include "engine/roof/cut_offset.h"
#include "engine/roof/nearest.h"
#include "engine/words/result.h"
#include "tests/engine/roof/in.h"

using namespace hemline;

namespace {

double setback(Length flange, Slope one, Slope two, Angle inside) {
    const Result<Length> found = flange_mitre_setback(flange, {one, two, inside});
    REQUIRE(found.ok());
    return in(*found);
}

}  // namespace

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
        const Slope pitch = rise_in_12(row.rise);
        CHECK(std::abs(setback(inches(12), pitch, pitch, square_out) - row.inches) <= 0.005 + 1e-9);
    }
}

TEST_CASE("A 4 in flange at 6 in 12 is set back 3.578 in") {
    // By hand: 4 × cos 26.565° = 4 × 0.89443.
    CHECK(std::abs(setback(inches(4), rise_in_12(6), rise_in_12(6), square_out) - 3.578) <= 0.0005);
}

TEST_CASE("At a corner of 135 degrees the same flange is set back 1.482 in") {
    // By hand: 3.57771 × cot 67.5° = 3.57771 × 0.41421.
    CHECK(std::abs(setback(inches(4), rise_in_12(6), rise_in_12(6), degrees(135)) - 1.482) <=
          0.0005);
}

TEST_CASE("At an inside corner the flange runs past the line by what an outside one is cut back") {
    for (const std::int64_t rise : {2, 6, 12}) {
        const Slope pitch = rise_in_12(rise);
        const double out = setback(inches(5), pitch, pitch, square_out);
        CHECK(setback(inches(5), pitch, pitch, square_in) == doctest::Approx(-out));
    }
}

TEST_CASE("With unequal pitches the flatter run is cut back by less than the steeper gives it") {
    // By hand at a square corner: w·cosθ1·tanθ1/tanθ2. 4 in at 4 in 12 beside 8 in 12:
    // 4 × 0.94868 × 0.5 = 1.897; beside it 4 × 0.83205 × 2 = 6.656.
    CHECK(std::abs(setback(inches(4), rise_in_12(4), rise_in_12(8), square_out) - 1.897) <= 0.0005);
    CHECK(std::abs(setback(inches(4), rise_in_12(8), rise_in_12(4), square_out) - 6.656) <= 0.0005);
}

TEST_CASE("Two flat roofs meet in a mitre that halves the corner") {
    CHECK(setback(inches(4), rise_in_12(0), rise_in_12(0), square_out) == doctest::Approx(4));
    CHECK(!flange_mitre_setback(inches(4), {rise_in_12(0), rise_in_12(6), square_out}).ok());
}

TEST_CASE("A setback past any roof is refused, whatever the pitches") {
    const Slope hair{SlopeNotation::rise_in_12, 1};
    const Slope wall{SlopeNotation::degrees, 89'999'999};
    CHECK(!flange_mitre_setback(longest_readable(), {wall, hair, square_out}).ok());
    CHECK(!flange_mitre_setback(longest_readable(), {wall, wall, microdegrees(1)}).ok());
    CHECK(!plumb_offset(longest_readable(), wall).ok());
}

TEST_CASE("A gable's 6 in face at 4 in 12 is cut 2 in plumb") {
    // By hand: 6 × 4/12.
    CHECK(plumb_offset(inches(6), rise_in_12(4)).value() == inches(2));
}

TEST_CASE("The nearest nanometre: halves go up, and a sine's last bit does not tip them") {
    CHECK(nearest_nm(2.5) == nanometres(3));
    CHECK(nearest_nm(std::nextafter(2.5, 0.0)) == nanometres(3));
    CHECK(nearest_nm(-2.5) == nanometres(-2));
    CHECK(nearest_nm(2.49) == nanometres(2));
}
