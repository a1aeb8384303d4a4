// A plan angle as it is written: degrees, in exact millionths.
//
// LEGAL                         ILLEGAL (why)
//   135       135 deg             -90          an angle inside the building is never negative
//   135°      135.25 degrees      360, 400     past a full turn
//                                 1 3/4        degrees have decimals
//                                 22.1234567   more than six decimals
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "engine/words/result.h"

namespace hemline {

/// Reads degrees, 0 to below 360, as whole millionths of a degree, exactly. Problem: `at` is the
/// byte offset of the first character that cannot be right.
Result<std::int64_t> parse_degrees(std::string_view text);

/// "135°", "22.5°"; parse_degrees() gives the same angle back. Negative angles print with a minus.
std::string print_degrees(std::int64_t micro_degrees);

}  // namespace hemline
