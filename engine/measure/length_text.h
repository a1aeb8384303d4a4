// Lengths as the trade writes them: reads what people write and lasers type (length_print.h prints
// lengths).
//
// LEGAL                                        ILLEGAL (why)
//   31' 7 5/8"     31' 7-5/8     31-7-5/8        379           which unit?
//   31 ft 7.625 in 31ft 7 5/8in  31' 7           9 650         which unit? (9 650 mm is legal)
//   379 5/8        7-5/8"        5/8 in          9,65 m        a comma is read two ways
//   31'            31 1/2 ft     31 pies 7 pulg. 31' 12"       twelve inches are a foot
//   .5 ft          31.5 ft       7 inches        1 200 ft      feet, or thousands of them?
//   9.65 m         965 cm        9650 mm         31-7          feet and inches, or a fraction?
//   9 650 mm       31′ 7 5⁄8″    7 ½ in          7 5/10 in     a tape has no tenths of an inch
//   0 in           30 ft 0 1/4 in                7 9/8 in      a fraction is less than one
//                                                -7 in         a length is never negative
//                                                31.5' 3"      decimals only in the last figure
//                                                9 m 65 cm     one metric unit at a time
//                                                7.1234567 in  finer than a nanometer
//                                                2 km, 1001 m  unknown unit; longer than any roof
#pragma once

#include <optional>
#include <string_view>

#include "engine/quantity/length.h"
#include "engine/quantity/length_print.h"
#include "engine/words/result_declared.h"

namespace hemline {

/// The unit of a bare number, where somebody has given it (`--unit`).
enum class BareUnit { nanometre, millimetre, inch, sixteenth };

/// Reads a length, exactly. `bare` is the unit of a number without a unit; without it a bare number
/// is a Problem, except with a binary fraction ("379 5/8"), which can only be inches. Problem: `at`
/// is the byte offset of the first character that cannot be right.
Result<Length> parse_length(std::string_view text, std::optional<BareUnit> bare = {});

}  // namespace hemline
