// Wind on a sheet in hand, and the dew point.
#include <doctest/doctest.h>

#include <cmath>

#include "engine/work/dew_point.h"
#include "engine/work/wind.h"

using namespace hemline;

namespace {

constexpr double panel = 16.0 / 12 * 20, ridge_stick = 15.0 / 12 * 10;  // ft²

}  // namespace

TEST_CASE("A gust pushes by the velocity pressure of ASCE 7 (from memory) on a flat plate") {
    CHECK(wind_push(30, panel) == doctest::Approx(73.728));
    CHECK(wind_push(20, panel) == doctest::Approx(32.768));
    CHECK(wind_push(15, 16.0 / 12 * 30) == doctest::Approx(27.648));
    CHECK(wind_push(30, ridge_stick) == doctest::Approx(34.56));
    CHECK(area_ft2({feet(20), inches(16)}) == doctest::Approx(panel));
}

TEST_CASE("25 lb a person (common practice, no published source) sets the most wind") {
    CHECK(std::abs(wind_most(panel, 2) - 24.7053) < 0.0005);
    CHECK(std::abs(wind_most(ridge_stick, 1) - 25.5155) < 0.0005);
    CHECK(std::abs(wind_most(16.0 / 12 * 40, 3) - 21.3954) < 0.0005);
}

TEST_CASE("Never over the 30 mph of OSHA's note, however many hold however little") {
    CHECK(wind_most(1, 1) == 30);
    CHECK(wind_most(panel, 50) == 30);
    CHECK(wind_most(panel, 0) == 0);
    CHECK(wind_most(0, 2) == 0);
}

TEST_CASE("What is said of a sheet is never rounded up, and is no permission") {
    const Sheet ridge{feet(10), inches(15)}, eave{feet(10), inches(8)};
    CHECK(is_much_for_one(ridge));
    CHECK(wind_words(ridge) ==
          "10 ft of 1 ft 3 in: one person holds it in gusts under 25 mph, two under 30 mph.");
    CHECK_FALSE(is_much_for_one(eave));
    CHECK(wind_words(eave) == "10 ft of 8 in: one person holds it in gusts under 30 mph.");
    CHECK(wind_note().english().find("no figure here is a permission") != std::string::npos);
}

TEST_CASE("The dew point by Magnus' formula, with its published constants 17.625 and 243.04") {
    CHECK(std::abs(dew_point(60, 80) - 53.813) < 0.001);
    CHECK(std::abs(dew_point(75, 50) - 55.1062) < 0.001);
    CHECK(std::abs(dew_point(45, 90) - 42.2441) < 0.001);
    CHECK(dew_point(70, 100) == doctest::Approx(70));
}
