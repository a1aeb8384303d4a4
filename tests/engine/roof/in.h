// Lengths in inches, to compare with figures worked by hand.
#pragma once

#include "engine/quantity/length.h"

namespace hemline {

inline double in(Length length) { return static_cast<double>(length.nm()) / 25.4e6; }

}  // namespace hemline
