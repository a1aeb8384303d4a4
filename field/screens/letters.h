// Letter keys for names, where there is no keyboard.
#pragma once

#include <string>

#include "field/touch/ui.h"

namespace hemline {

/// Draws the keys in `box` and edits `name` (at most 40 letters); typed text is taken too.
void draw_letter_keys(Ui& ui, std::string& name, Box box);

}  // namespace hemline
