// Keys for lengths and counts: one field at a time, each key at least 19 mm.
#pragma once

#include "field/app/length_draft.h"
#include "field/screens/key_grid.h"
#include "field/touch/ui.h"

namespace hemline {

/// The keys of the draft's current field, in `box`. Field 0: feet digits, 1: inches 0…11,
/// 2: sixteenths, stacked. Metric: digits.
void draw_length_keys(Ui& ui, LengthDraft& draft, Box box, bool metric);

/// Where the fields stand: below the readback, or to the right of a short one.
enum class FieldsAt { below, right };

/// The readback with its fields as places to tap: feet, inches, sixteenths. Returns its height.
float draw_length_fields(Ui& ui, LengthDraft& draft, Box body, bool metric,
                         FieldsAt at = FieldsAt::below);
float length_fields_height(const Ui& ui, bool metric, FieldsAt at = FieldsAt::below);

/// Digits 0…9 and back, for counts and pitches. Returns the key that was tapped: '0'…'9', '.',
/// '\b'.
char draw_digit_keys(Ui& ui, Box box, bool with_point);

}  // namespace hemline
