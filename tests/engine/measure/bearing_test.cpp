#include "engine/measure/bearing.h"

#include <doctest/doctest.h>

#include "engine/measure/temperature.h"
#include "engine/words/result.h"

using namespace hemline;

TEST_CASE("a bearing is a point of the compass or degrees from north by way of east") {
    CHECK(parse_bearing("N").value() == Angle());
    CHECK(parse_bearing("E").value() == degrees(90));
    CHECK(parse_bearing("WNW").value() == microdegrees(292'500'000));
    CHECK(parse_bearing("270").value() == degrees(270));
    CHECK(parse_bearing("280.5 deg").value() == microdegrees(280'500'000));
    for (const char* wrong : {"", "w", "NEN", "-10", "360", "west"}) {
        CHECK_FALSE(parse_bearing(wrong).ok());
    }
    for (std::int64_t d = 0; d < 360; ++d) {
        CHECK(parse_bearing(print_bearing(degrees(d))).value() == degrees(d));
    }
    CHECK(print_bearing(degrees(270)) == "W");
    CHECK(print_bearing(degrees(10)) == "10°");
}

// 0 °C is 32 °F, 100 °C 212 °F: by definition of the scales.
TEST_CASE("a temperature is whole degrees with F or C, without a letter F") {
    CHECK(parse_temperature("60 F").value() == fahrenheit(60));
    CHECK(parse_temperature("-20").value() == fahrenheit(-20));
    CHECK(parse_temperature("0 C").value() == fahrenheit(32));
    CHECK(parse_temperature("100C").value() == fahrenheit(212));
    CHECK(parse_temperature("-40 C").value() == fahrenheit(-40));
    CHECK(parse_temperature("15 C").value() == fahrenheit(59));
    CHECK(parse_temperature("60°F").value() == fahrenheit(60));
    for (const char* wrong : {"", "-", "F", "60 K", "60.5 F", "1000", "251 F", "-61", "60 F now"}) {
        CHECK_FALSE(parse_temperature(wrong).ok());
    }
    CHECK(print_temperature(parse_temperature("16 C").value()) == "60.8 F");
    CHECK(print_temperature(fahrenheit(-5)) == "-5 F");
}
