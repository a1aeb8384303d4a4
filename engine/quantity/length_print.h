// Lengths printed as the trade writes them: on the marks of a tape.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "engine/quantity/length.h"

namespace hemline {

/// What printing rounds to; always to the nearest, a half to the longer.
enum class Marks { sixteenth, thirty_second, millimetre };

/// The length of a mark: 1/16 in, 1/32 in or 1 mm.
Length mark_of(Marks marks);

/// A length taken apart for drawing: feet, inches below 12, and a reduced fraction (0/1 when none);
/// or whole millimeters. `negative` is the sign of the whole length.
struct LengthParts {
    bool negative = false;
    std::int64_t feet = 0;
    std::int64_t inches = 0;
    int numerator = 0;
    int denominator = 1;
    std::int64_t millimetres = 0;
};
LengthParts take_apart(Length length, Marks marks = Marks::sixteenth);

/// "31 ft 7 5/8 in", "7 5/8 in" below a foot, "9650 mm"; parse_length(print_length(x)) == x for
/// every x on the mark and not negative.
std::string print_length(Length length, Marks marks = Marks::sixteenth);

/// A length in a sentence, for a reader who works on those marks (none: not known). Lengths that
/// differ by a mark of any tape never read the same in feet and inches: a length between the 1/16
/// in marks is printed to 1/32 in where that is exact, and a whole number of millimeters that is
/// not on a 1/32 in was read in millimeters and stays so. Anything else is rounded to the reader's
/// marks, or to 1/32 in where those are not known.
std::string tell_length(Length length, std::optional<Marks> marks);
/// The same for a small difference or a limit, which may be less than a mark: to the nearest 1/32
/// in, or millimeter.
std::string tell_closely(Length length, std::optional<Marks> marks);

}  // namespace hemline
