// What else a reading may have been meant to say, by hand.
#include "engine/roof/other_readings.h"

#include <doctest/doctest.h>

#include <algorithm>

namespace hemline {
namespace {

bool has(const std::vector<OtherReading>& among, SuspectKind kind, Length length) {
    return std::any_of(among.begin(), among.end(), [&](const OtherReading& other) {
        return other.kind == kind && other.length == length;
    });
}

TEST_CASE("Twelve inches off are a foot that was misread, eleven are eleven inches") {
    const auto by_a_foot = other_readings(feet(30), inches(12), ReadIn::feet_and_inches);
    CHECK(has(by_a_foot, SuspectKind::misread_foot, feet(31)));
    CHECK_FALSE(has(by_a_foot, SuspectKind::misread_inch, feet(31)));
    const auto by_inches = other_readings(feet(30), inches(11), ReadIn::feet_and_inches);
    CHECK(has(by_inches, SuspectKind::misread_inch, feet(30) + inches(11)));
}

TEST_CASE("No figure is written with a nought before it: 30 ft is not 03 ft misread") {
    const auto others = other_readings(feet(30), inches(5), ReadIn::feet_and_inches);
    CHECK_FALSE(has(others, SuspectKind::swapped_digits, feet(3)));
    // 30 ft are 360 in, 306 and 630 with two digits changed.
    CHECK(has(others, SuspectKind::swapped_digits, inches(630)));
    CHECK(has(others, SuspectKind::swapped_digits, inches(306)));
}

}  // namespace
}  // namespace hemline
