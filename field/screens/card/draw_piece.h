// The piece as it lies on the sawhorse: metal to scale along its length, the tape, and every mark.
#pragma once

#include "engine/work/card.h"
#include "field/screens/page/other_tape.h"
#include "field/touch/ui.h"

namespace hemline {

/// Draws metal, tape and labeled marks into `box`, the tape's hook at the left. Lengths along the
/// piece are to scale; its height is drawn larger, so that the legs can be told apart.
void draw_piece(Ui& ui, const Card& card, Tapes tapes, Box box);

/// Slanted lines across a box: waste.
void draw_hatching(Ui& ui, Box box);

/// The height of the box, or the least height at which draw_piece() shows every mark with its
/// label.
float piece_height(const Ui& ui, const Card& card, Tapes tapes, Box box);

}  // namespace hemline
