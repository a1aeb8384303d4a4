#include "engine/work/dew_point.h"

#include <cmath>

#include "engine/require.h"

namespace hemline {
namespace {

constexpr double magnus_a = 17.625, magnus_b = 243.04;

}  // namespace

double dew_point(double air_fahrenheit, double humidity_percent) {
    require(humidity_percent > 0 && humidity_percent <= 100, "a humidity is above 0 up to 100 %");
    const double air = (air_fahrenheit - 32) / 1.8;
    const double gamma = std::log(humidity_percent / 100) + magnus_a * air / (magnus_b + air);
    return magnus_b * gamma / (magnus_a - gamma) * 1.8 + 32;
}

}  // namespace hemline
