#include "engine/quantity/angle.h"

#include <cmath>

namespace hemline {

Angle nearest_microdegree(double degrees) { return microdegrees(std::llround(degrees * 1e6)); }

std::string print_degrees(Angle angle) {
    const bool negative = angle < Angle();
    const auto size = negative ? 0 - static_cast<std::uint64_t>(angle.microdegrees())
                               : static_cast<std::uint64_t>(angle.microdegrees());
    std::string decimals = std::to_string(1'000'000 + size % 1'000'000).substr(1);
    decimals.resize(decimals.find_last_not_of('0') + 1);  // npos + 1 is 0: nothing but zeros
    return (negative ? "-" : "") + std::to_string(size / 1'000'000) +
           (decimals.empty() ? "" : "." + decimals) + "°";
}

}  // namespace hemline
