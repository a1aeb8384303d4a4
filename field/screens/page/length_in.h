// A length in a box that may be narrow or low, as large as fits.
#pragma once

#include "field/screens/page/other_tape.h"
#include "field/touch/ui.h"

namespace hemline {

/// In the middle of the box: at 30′ for the tapes asked for, else for one tape, else at 22′, else
/// in small letters with the fraction in the line, feet over inches where it is narrow; nothing
/// where there is no room at all.
void draw_length_in(Ui& ui, Length length, Tapes tapes, Box box);

}  // namespace hemline
