// The length being keyed in, large, and the fields it is keyed into.
//
//   30 ft  0 3/16 in                  where it is narrow:   ┌───────┐┌──────┐┌─────┐
//   [ feet ] [ inches ] [ 16ths ]                           │ 30 ft ││ 0 in ││ 3/16│
#pragma once

#include "field/screens/page/other_tape.h"
#include "field/state/length_draft.h"
#include "field/touch/ui.h"

namespace hemline {

/// The readback with its fields to tap: feet, inches, sixteenths. Large, with the fields below it;
/// where `body` is too narrow or low for that, in the fields themselves. What is not keyed in is a
/// dash; the other tape is shown below where there is room. Returns the height used.
float draw_length_fields(Ui& ui, LengthDraft& draft, Box body, Tapes tapes);
/// The least height it needs, in mm.
constexpr float length_fields_mm = 15;

}  // namespace hemline
