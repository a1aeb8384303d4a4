// A plane with its panels, true to scale: edges, seams, pans with their numbers and lengths.
#pragma once

#include <span>

#include "engine/panels/panel_layout.h"
#include "field/touch/box.h"
#include "field/touch/ui.h"

namespace hemline {

/// As large as the box allows, its eave below. `in_hand`: the pan that is drawn strong, 0: none.
void draw_pans(Ui& ui, const PanelLayout& layout, int in_hand, std::span<const Penetration> through,
               Box box);
/// With those seams alone, for layouts side by side.
void draw_strips(const Ui& ui, const DeckPlane& plane, std::span<const Length> seams, Box box);

}  // namespace hemline
