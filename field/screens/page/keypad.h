// Keys for lengths and counts: one field at a time, each key at least 19 mm.
#pragma once

#include "field/screens/page/key_grid.h"
#include "field/state/length_draft.h"
#include "field/touch/ui.h"

namespace hemline {

/// The keys of the draft's current field, in `box`. Field 0: feet digits, 1: inches 0…11,
/// 2: sixteenths, stacked; in a box of three rows eighths, and a key for a sixteenth more. Metric:
/// digits.
void draw_length_keys(Ui& ui, LengthDraft& draft, Box box, bool metric);

/// What a keyboard or a laser types goes into the draft, Enter too where a line waits for it.
/// Before what depends on the length is drawn.
void take_typed(Ui& ui, LengthDraft& draft, bool metric);

/// Digits 0…9 and a key to erase, for counts and pitches. Returns the key that was tapped or
/// typed: '0'…'9', '.', '\b'.
char draw_digit_keys(Ui& ui, Box box, bool with_point, bool with_back = true);

}  // namespace hemline
