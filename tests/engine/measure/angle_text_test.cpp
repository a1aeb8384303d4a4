#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <string>
#include <utility>
#include <vector>

#include "engine/measure/angle_text.h"
#include "engine/words/result.h"

using namespace hemline;

TEST_CASE("Degrees are read exactly, with or without their sign") {
    for (const auto& row :
         std::vector<std::pair<std::string, Angle>>{{"90", degrees(90)},
                                                    {"135°", degrees(135)},
                                                    {" 112.5 deg ", microdegrees(112'500'000)},
                                                    {"22.123456 degrees", microdegrees(22'123'456)},
                                                    {"359.999999", microdegrees(359'999'999)},
                                                    {"0", Angle()}}) {
        const auto read = parse_degrees(row.first);
        REQUIRE_MESSAGE(read.ok(), row.first);
        CHECK(*read == row.second);
    }
}

TEST_CASE("What is no angle is refused at its place") {
    for (const auto& row : std::vector<std::pair<std::string, int>>{{"", 0},
                                                                    {"  ", 2},
                                                                    {"-90", 0},
                                                                    {"360", 0},
                                                                    {"99999999999999999", 0},
                                                                    {"1 3/4", 2},
                                                                    {"90.", 3},
                                                                    {"22.1234567", 9},
                                                                    {"90 grad", 3},
                                                                    {"square", 0}}) {
        const auto read = parse_degrees(row.first);
        REQUIRE_MESSAGE(!read.ok(), row.first);
        CHECK_MESSAGE(read.problem().at == row.second, row.first);
        CHECK(!read.problem().mend.empty());
    }
}

TEST_CASE("A printed angle is read back the same") {
    CHECK(rc::check([] {
        const Angle angle = microdegrees(*rc::gen::inRange<std::int64_t>(0, 360'000'000));
        const auto read = parse_degrees(print_degrees(angle));
        RC_ASSERT(read.ok());
        RC_ASSERT(*read == angle);
    }));
}

TEST_CASE("Any bytes are read or refused, never a crash") {
    CHECK(rc::check([](const std::string& bytes) {
        const auto read = parse_degrees(bytes);
        RC_ASSERT((read.ok() || !read.problem().what.empty()));
    }));
}
