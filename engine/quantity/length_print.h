// Lengths printed as the trade writes them: on the marks of a tape.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "engine/quantity/length.h"

namespace hemline {

/// What printing rounds to; always to the nearest, a half to the longer.
enum class Marks { sixteenth, thirty_second, millimetre };

/// The mark itself: 1/16 in, 1/32 in or 1 mm.
Length mark_of(Marks marks);

/// A length taken apart for drawing: feet, inches below 12, and a reduced fraction (0/1 when none);
/// or whole millimetres. `negative` stands for the sign of all of it.
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

/// A length as a sentence tells it to a reader who works on those marks (none: nobody has said).
/// Two that differ by a mark of any tape never read the same in feet and inches: what lies between
/// the 1/16 in is told to 1/32 in where that is exact, and what is a whole number of millimetres
/// and of no 1/32 in was read in millimetres and stays so. All else is rounded to the reader's
/// marks, to 1/32 in where nobody has said.
std::string tell_length(Length length, std::optional<Marks> marks);
/// The same of a small difference or a limit, worked out to less than a mark: to the nearest
/// 1/32 in, or millimetre.
std::string tell_closely(Length length, std::optional<Marks> marks);

}  // namespace hemline
