#include "engine/measure/tilt.h"
#include "engine/words/result.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <cmath>
#include <vector>

using namespace hemline;

namespace {

constexpr double radians = 3.14159265358979323846 / 180;

/// What a sensor says that lies on a deck of so many degrees, its top edge turned so far away from
/// uphill, and is itself wrong by so many degrees in x and y. By turning up into the tablet's frame
/// and taking the specification's angles back out of it: beta = asin(y), gamma = atan2(−x, z).
TiltSample lying(double pitch, double turned, double error_x, double error_y) {
    const double s = std::sin(pitch * radians);
    const double x = s * std::sin(turned * radians) + std::sin(error_x * radians);
    const double y = s * std::cos(turned * radians) + std::sin(error_y * radians);
    const double z = std::sqrt(std::max(0.0, 1 - x * x - y * y));
    return {std::asin(y) / radians, std::atan2(-x, z) / radians};
}

std::vector<TiltSample> still(TiltSample sample) {
    return std::vector<TiltSample>(tilt_samples, sample);
}

}  // namespace

TEST_CASE("Turned end for end, the sensor's own error cancels") {
    const auto tilt =
        tilt_of(still(lying(22.62, 0, 1.2, -0.8)), still(lying(22.62, 180, 1.2, -0.8)));
    REQUIRE(tilt.ok());
    CHECK(tilt->degrees == doctest::Approx(22.62));
    CHECK(tilt->own_error == doctest::Approx(std::hypot(1.2, 0.8)).epsilon(0.01));
    CHECK(tilt->spread == doctest::Approx(0).epsilon(1e-6));
    // 5 in 12 is 22.62°: framing-square tables; a level shows tenths.
    CHECK(slope_of(*tilt) == Slope{SlopeNotation::degrees, 22'600'000});
}

TEST_CASE("It does not matter which way the tablet lies on the deck") {
    CHECK(rc::check("any way round", [] {
        const double pitch = *rc::gen::inRange(0, 600) / 10.0;
        const double turned = *rc::gen::inRange(0, 360);
        const double error_x = *rc::gen::inRange(-20, 20) / 10.0;
        const double error_y = *rc::gen::inRange(-20, 20) / 10.0;
        const auto tilt = tilt_of(still(lying(pitch, turned, error_x, error_y)),
                                  still(lying(pitch, turned + 180, error_x, error_y)));
        RC_ASSERT(tilt.ok());
        RC_ASSERT(std::abs(tilt->degrees - pitch) < 1e-6);
    }));
}

TEST_CASE("A tablet that was not turned, moved, or was read too briefly gives no pitch") {
    CHECK_FALSE(tilt_of(still(lying(20, 0, 0, 0)), still(lying(20, 0, 0, 0))).ok());
    std::vector<TiltSample> moved = still(lying(20, 0, 0, 0));
    for (std::size_t i = 0; i < moved.size(); i += 2) {
        moved[i] = lying(23, 0, 0, 0);
    }
    CHECK_FALSE(tilt_of(moved, still(lying(20, 180, 0, 0))).ok());
    CHECK_FALSE(tilt_of({}, {}).ok());
    const std::vector<TiltSample> brief(3, lying(20, 0, 0, 0));
    CHECK_FALSE(tilt_of(brief, still(lying(20, 180, 0, 0))).ok());
}

TEST_CASE("A trembling hand averages out, and its tremble is told") {
    std::vector<TiltSample> first, turned;
    for (std::size_t i = 0; i < tilt_samples; ++i) {
        const double off = i % 2 == 0 ? 0.2 : -0.2;
        first.push_back(lying(18.43 + off, 0, 0, 0));
        turned.push_back(lying(18.43 - off, 180, 0, 0));
    }
    const auto tilt = tilt_of(first, turned);
    REQUIRE(tilt.ok());
    CHECK(tilt->degrees == doctest::Approx(18.43).epsilon(0.001));
    CHECK(tilt->spread == doctest::Approx(0.2).epsilon(0.05));
}

TEST_CASE("A level deck is 0, and says so only when it was read twice") {
    const auto tilt = tilt_of(still(lying(0, 0, 0.4, 0)), still(lying(0, 180, 0.4, 0)));
    REQUIRE(tilt.ok());
    CHECK(tilt->degrees == doctest::Approx(0));
}
