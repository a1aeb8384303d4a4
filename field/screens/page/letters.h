// Letter keys for names, where there is no keyboard.
#pragma once

#include <string>

#include "field/touch/ui.h"

namespace hemline {

/// Draws the keys in `box` and edits `name` (at most 40 letters); typed text is taken too. Where
/// the box is too low for all, letters and digits take turns, as `digits_shown` says.
void draw_letter_keys(Ui& ui, std::string& name, bool& digits_shown, Box box);

}  // namespace hemline
