#include "engine/trim/hem_clearance.h"
#include "engine/words/result.h"

#include <doctest/doctest.h>

using namespace hemline;

namespace {

Practice at(const char* now, const char* held) {
    Practice practice = with_rule({}, "metal_now", now).value();
    return with_rule(practice, "trim_held", held).value();
}

}  // namespace

// Expansion: 6.7 millionths a °F for galvanized steel, 12.9 for aluminum, as handbooks have them;
// the design range to 180 °F as in the check of aluminum 10 ft, 60 to 180 °F: 0.186 in (computed).

TEST_CASE("a 10 ft stick held at one point grows as the coefficient of its metal says") {
    const double stick = 120;  // in
    CHECK(expansion_of(MetalFamily::galvanized) * stick * 160 == doctest::Approx(0.12864));
    CHECK(expansion_of(MetalFamily::galvanized) * stick * 120 == doctest::Approx(0.09648));
    CHECK(expansion_of(MetalFamily::aluminum) * stick * 160 == doctest::Approx(0.24768));
    CHECK(expansion_of(MetalFamily::aluminum) * stick * 120 == doctest::Approx(0.18576));
}

TEST_CASE("the hem's notch leaves room for what the stick grows, on 1/16 in, and 1/8 in at least") {
    const auto clearance = [](MetalFamily metal, const char* now) {
        return hem_clearance(metal, inches(6), at(now, "one_point"));
    };
    CHECK(clearance(MetalFamily::galvanized, "20 F") == sixteenths(3));     // 0.129
    CHECK(clearance(MetalFamily::galvanized, "60 F") == sixteenths(2));     // 0.096
    CHECK(clearance(MetalFamily::aluminum_zinc, "20 F") == sixteenths(3));  // steel
    CHECK(clearance(MetalFamily::aluminum, "20 F") == sixteenths(4));       // 0.248
    CHECK(clearance(MetalFamily::aluminum, "60 F") == sixteenths(3));       // 0.186
    CHECK(clearance(MetalFamily::aluminum, "180 F") == sixteenths(2));      // grows no more
    Practice hot = at("60 F", "one_point");
    hot = with_rule(hot, "metal_hottest", "140 F").value();
    CHECK(hem_clearance(MetalFamily::aluminum, inches(6), hot) == sixteenths(2));  // 0.124
}

TEST_CASE("held by screws only the metal past the last screw moves: 1/8 in is enough") {
    for (const MetalFamily metal :
         {MetalFamily::galvanized, MetalFamily::copper, MetalFamily::aluminum, MetalFamily::zinc}) {
        CHECK(hem_clearance(metal, inches(6), at("-20 F", "screws")) == sixteenths(2));
        CHECK(hem_clearance(metal, inches(6), {}) == sixteenths(2));
    }
}

// Common practice, no published source.
TEST_CASE("held at one point with no temperature said: copper, aluminum 1/4 in, zinc 3/8 in") {
    const Practice practice = with_rule({}, "trim_held", "one_point").value();
    CHECK(hem_clearance(MetalFamily::copper, inches(6), practice) == sixteenths(4));
    CHECK(hem_clearance(MetalFamily::aluminum, inches(6), practice) == sixteenths(4));
    CHECK(hem_clearance(MetalFamily::zinc, inches(6), practice) == sixteenths(6));
    CHECK(hem_clearance(MetalFamily::galvanized, inches(6), practice) == sixteenths(2));
    CHECK(hem_clearance(MetalFamily::other, inches(6), practice) == sixteenths(2));
}

TEST_CASE("the job's rule is the least: 3/8 in stays 3/8 in") {
    Practice practice = at("60 F", "one_point");
    practice.hem_notch_clear = sixteenths(6);
    CHECK(hem_clearance(MetalFamily::aluminum, inches(6), practice) == sixteenths(6));
}
