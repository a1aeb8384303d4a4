// The length being keyed in, in the fields that it is keyed into.
//
//   ┌────────┐┌───────┐┌──────┐
//   │  30 ft ││  0 in ││ 3/16 │
//   └────────┘└───────┘└──────┘
#pragma once

#include "field/screens/page/other_tape.h"
#include "field/state/length_draft.h"
#include "field/touch/ui.h"

namespace hemline {

/// Feet, inches and sixteenths, each a field to tap with its number in it, large where `body` has
/// room; millimeters as one number. What is not keyed in is a dash; the other tape is shown below
/// where there is room. On a narrow page a key to erase is at their end. Returns the height used.
float draw_length_fields(Ui& ui, LengthDraft& draft, Box body, Tapes tapes);
/// The least height they need.
float length_fields_height(const Ui& ui);

}  // namespace hemline
