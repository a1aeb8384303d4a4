// A plan angle as it is written: degrees with decimals.
//
// LEGAL                         ILLEGAL (why)
//   135       135 deg             -90          an angle inside the building is never negative
//   135°      135.25 degrees      360, 400     past a full turn
//                                 1 3/4        degrees have decimals
//                                 22.1234567   more than six decimals
#pragma once

#include <string_view>

#include "engine/quantity/angle.h"
#include "engine/words/result_declared.h"

namespace hemline {

/// Reads degrees, 0 to below 360, exactly. Problem: `at` is the byte offset of the first character
/// that cannot be right.
Result<Angle> parse_degrees(std::string_view text);

}  // namespace hemline
