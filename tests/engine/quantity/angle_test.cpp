#include "engine/quantity/angle.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cmath>

using namespace hemline;

TEST_CASE("Every millionth of a degree comes back from degrees in double") {
    CHECK(rc::check([] {
        const Angle angle =
            microdegrees(*rc::gen::inRange<std::int64_t>(-720'000'000, 720'000'001));
        RC_ASSERT(nearest_microdegree(degrees_of(angle)) == angle);
        RC_ASSERT(nearest_microdegree(degrees_in(radians_of(angle))) == angle);
    }));
}

TEST_CASE("A half of a millionth is rounded away from 0") {
    CHECK(nearest_microdegree(0.0000005) == microdegrees(1));
    CHECK(nearest_microdegree(-0.0000005) == microdegrees(-1));
    CHECK(nearest_microdegree(0.0000004) == Angle());
}

TEST_CASE("A direction within a turn is the same direction, from 0 to below 360 degrees") {
    CHECK(within_a_turn(degrees(360)) == Angle());
    CHECK(within_a_turn(degrees(-90)) == degrees(270));
    CHECK(within_a_turn(degrees(-720)) == Angle());
    CHECK(within_a_turn(degrees(450)) == degrees(90));
}

TEST_CASE("An angle is a whole number of a builder's angle, or it is not") {
    CHECK(is_whole_number_of(degrees(135), microdegrees(22'500'000)));
    CHECK(!is_whole_number_of(microdegrees(135'000'001), degrees(15)));
    CHECK(is_whole_number_of(-degrees(30), degrees(15)));
}

TEST_CASE("An angle prints its decimals to the last that is not 0, and its sign") {
    CHECK(print_degrees(degrees(135)) == "135°");
    CHECK(print_degrees(microdegrees(-22'500'000)) == "-22.5°");
    CHECK(print_degrees(microdegrees(1)) == "0.000001°");
    CHECK(print_degrees(Angle()) == "0°");
}
