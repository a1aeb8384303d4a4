// The eave in section: deck at its pitch, fascia, and the metal that is on it so far.
//
//        deck ╱╱
//      ╱─────┐  flange lies on the deck
//            │  face over the fascia, the wrap and the cleat behind it
//            ╲  kick, its hem hooked on the cleat
#pragma once

#include "engine/trim/catalogue.h"
#include "field/touch/ui.h"

namespace hemline {

/// The metal on an eave, in the order it goes on.
enum class EaveLayer { wood, wrap, cleat, trim };

struct EaveSection {
    Trim trim;  ///< fitted to its edge
    Slope pitch;
    Fascia fascia = Fascia::plumb;
    bool wrap = false;  ///< the edge has it
    EaveLayer up_to =
        EaveLayer::trim;  ///< the layer being worked, drawn in chalk; those before it in ink
};

/// Draws the section, to scale and as large as `box` allows.
void draw_eave_section(Ui& ui, const EaveSection& section, Box box);

}  // namespace hemline
