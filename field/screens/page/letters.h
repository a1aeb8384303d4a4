// Letter keys for names, where there is no keyboard.
#pragma once

#include "field/state/name_draft.h"
#include "field/touch/ui.h"

namespace hemline {

/// Draws the keys in `box` and edits `name` (at most 40 letters); typed text is taken too. Where
/// the box is too low for all keys, the draft says whether letters or digits show.
void draw_letter_keys(Ui& ui, NameDraft& name, Box box);

}  // namespace hemline
