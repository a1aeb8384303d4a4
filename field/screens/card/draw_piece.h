// The piece as it lies on the sawhorse: metal to scale along its length, the tape, and every mark.
#pragma once

#include <string_view>

#include "engine/work/card.h"
#include "field/screens/page/other_tape.h"
#include "field/touch/ui.h"

namespace hemline {

/// Draws metal, tape and labeled marks into `box`, the tape's hook at the left. Lengths along the
/// piece are to scale; its height is drawn larger, so that the legs can be told apart. Metal and
/// tape stay in sight: labels that find no room scroll below them, in the list of that name, each
/// of which is to be seen, and then `after`.
void draw_piece(Ui& ui, const Card& card, Tapes tapes, Box box, std::string_view list,
                const Text& after);

/// Slanted lines across a box: waste.
void draw_hatching(Ui& ui, Box box);

/// The least height at which draw_piece() shows every mark with its label.
float piece_height(const Ui& ui, const Card& card, Tapes tapes, Box box);
/// Whether the box shows a row of labels below the outline.
bool has_room_for_heading(const Ui& ui, Box box);

}  // namespace hemline
