// Turns a computed figure into a Length that may be cut. All rounding of computed lengths happens
// here.
#pragma once

#include <cmath>

#include "engine/quantity/length.h"

namespace hemline {

/// The nearest whole nanometer, a half up. Anything within 1/1000 nm of a half counts as a half, so
/// that the last bit of a platform's sine does not change the result. Range: ±2^52 nm, 4 500 km;
/// past it a double is coarser than a nanometer.
inline Length nearest_nm(double nm) {
    return Length::of_nm(static_cast<std::int64_t>(std::floor(nm + 0.501)));
}

}  // namespace hemline
