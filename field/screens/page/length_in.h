// A length in a box that may be narrow or low, as large as it can be read there.
#pragma once

#include "field/screens/page/other_tape.h"
#include "field/touch/ui.h"

namespace hemline {

/// In the box's middle: at 30′ on the tapes asked for, else on one, else at 22′, else in small
/// letters with the fraction in the line, feet over inches where it is narrow; nothing where it
/// has no room at all.
void draw_length_in(Ui& ui, Length length, Tapes tapes, Box box);

}  // namespace hemline
