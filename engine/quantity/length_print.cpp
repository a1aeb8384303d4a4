// Prints a length: rounded to the mark, then whole feet, whole inches and a reduced fraction.
#include "engine/quantity/length_print.h"

#include <numeric>

#include "engine/require.h"

namespace hemline {

namespace {

bool lies_on(Length length, Length mark) { return length.nm() % mark.nm() == 0; }

}  // namespace

Length mark_of(Marks marks) {
    switch (marks) {
        case Marks::sixteenth:
            return sixteenths(1);
        case Marks::thirty_second:
            return thirty_seconds(1);
        case Marks::millimetre:
            return millimetres(1);
    }
    stop("marks without a size");
}

LengthParts take_apart(Length length, Marks marks) {
    const Length mark = mark_of(marks);
    const Length size = nearest_on(absolute(length), mark);
    LengthParts parts;
    parts.negative = length < Length() && size > Length();
    if (marks == Marks::millimetre) {
        parts.millimetres = size.nm() / mark.nm();
        return parts;
    }
    const std::int64_t in_an_inch = inches(1).nm() / mark.nm();
    const std::int64_t count = size.nm() / mark.nm();
    const std::int64_t rest = count % in_an_inch;
    const std::int64_t common = std::gcd(rest, in_an_inch);
    parts.feet = count / (12 * in_an_inch);
    parts.inches = count / in_an_inch % 12;
    parts.numerator = static_cast<int>(rest / common);
    parts.denominator = static_cast<int>(in_an_inch / common);
    return parts;
}

std::string print_length(Length length, Marks marks) {
    const LengthParts parts = take_apart(length, marks);
    std::string out = parts.negative ? "-" : "";
    if (marks == Marks::millimetre) {
        return out + std::to_string(parts.millimetres) + " mm";
    }
    const bool fraction = parts.numerator != 0;
    const bool in_feet = parts.feet != 0;
    if (in_feet) {
        out += std::to_string(parts.feet) + " ft";
        if (parts.inches == 0 && !fraction) {
            return out;
        }
        out += " ";
    }
    if (parts.inches != 0 || in_feet || !fraction) {
        out += std::to_string(parts.inches) + (fraction ? " " : "");
    }
    if (fraction) {
        out += std::to_string(parts.numerator) + "/" + std::to_string(parts.denominator);
    }
    return out + " in";
}

std::string tell_length(Length length, std::optional<Marks> marks) {
    if (marks == Marks::millimetre) {
        return print_length(length, *marks);
    }
    for (const Marks exact : {Marks::sixteenth, Marks::thirty_second, Marks::millimetre}) {
        if (lies_on(length, mark_of(exact))) {
            return print_length(length, exact);
        }
    }
    return print_length(length, marks.value_or(Marks::thirty_second));
}

std::string tell_closely(Length length, std::optional<Marks> marks) {
    return print_length(length,
                        marks == Marks::millimetre ? Marks::millimetre : Marks::thirty_second);
}

}  // namespace hemline
