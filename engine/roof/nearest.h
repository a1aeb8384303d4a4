// From a computed figure to a Length that may be cut: the one door, and its rounding.
#pragma once

#include <cmath>

#include "engine/quantity/length.h"

namespace hemline {

/// The nearest whole nanometre, a half up. A half is recognised within 1/1000 nm, so that the last
/// bit of a platform's sine can not tip it. Range: ±2^52 nm, 4 500 km; past it the double itself is
/// coarser than a nanometre.
inline Length nearest_nm(double nm) {
    return Length::of_nm(static_cast<std::int64_t>(std::floor(nm + 0.501)));
}

}  // namespace hemline
