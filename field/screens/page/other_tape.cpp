#include "field/screens/page/other_tape.h"

namespace hemline {

Text on_other_tape(Length length, Tapes tapes) {
    if (!tapes.both || length == Length()) {
        return {};
    }
    const Marks other = tapes.marks == Marks::millimetre ? Marks::sixteenth : Marks::millimetre;
    const bool exact = nearest_on(length, mark_of(other)) == length;
    return glued(exact ? "= " : "≈ ", print_length(length, other));
}

Text length_on(Length length, Tapes tapes) {
    return joined({Text(print_length(length, tapes.marks)), on_other_tape(length, tapes)}, " · ");
}

}  // namespace hemline
