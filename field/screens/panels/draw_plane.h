// A plane with its panels, true to scale: edges, seams, pans with their numbers and lengths.
#pragma once

#include <span>

#include "engine/panels/panel_layout.h"
#include "field/touch/box.h"
#include "field/touch/ui.h"

namespace hemline {

struct PlaneShown {
    int pan = 0;          ///< the one in hand, strong; 0: none
    bool lengths = true;  ///< along each pan that has room for it
};

/// As large as the box allows, its eave below.
void draw_pans(Ui& ui, const PanelLayout& layout, const PlaneShown& shown,
               std::span<const Penetration> through, Box box);
/// With those seams alone, for layouts side by side.
void draw_strips(const Ui& ui, const DeckPlane& plane, std::span<const Length> seams, Box box);

}  // namespace hemline
