// The eave in section: deck at its pitch, fascia, cleat, and the trim folded over them.
//
//        deck ╱╱
//      ╱─────┐  flange lies on the deck
//            │  face over the fascia
//            ╲  kick, its hem hooked on the cleat
#pragma once

#include "engine/trim/catalogue.h"
#include "field/touch/ui.h"

namespace hemline {

/// Draws the section, to scale and as large as `box` allows.
void draw_eave_section(Ui& ui, const Trim& trim, Slope pitch, Fascia fascia, Box box);

}  // namespace hemline
