// The miters of a card as the diagonals they are, with their waste hatched.
//
//      outer edge ───────┐╲▒▒▒▒│ end        the leg on this roof
//      bend       ────────┴─╲▒▒│
//                        ╱▒▒▒▒▒│            the leg on the other roof
#pragma once

#include <functional>

#include "engine/work/card.h"
#include "field/touch/ui.h"

namespace hemline {

/// Where the legs of the card are drawn, and where a length along it is.
struct DrawnCard {
    const Card& card;
    Box near, far;  ///< the leg on this roof and the leg on the other
    std::function<float(Length)> at;
};

/// Whether the mark is an end of such a diagonal: no upright line is drawn for it.
bool is_on_diagonal(MarkKind kind);

/// The cut diagonals of both ends of a hip or valley: where metal falls it is hatched.
void draw_corner_waste(Ui& ui, const DrawnCard& drawn);
/// The lines themselves, to cut or to fold along.
void draw_corner_lines(const Ui& ui, const DrawnCard& drawn);

}  // namespace hemline
