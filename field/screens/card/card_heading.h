// What is shown above the piece on its card: how long it is cut, from what, and how it lies.
#pragma once

#include "engine/work/card.h"
#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

/// The cut length at the left, what to take and hook beside it (below it on an upright screen). The
/// words about the screws go below both where they are too wide for their column. Cuts its height
/// off `body`.
void draw_card_heading(Ui& ui, const State& state, const Card& card, Box& body);

}  // namespace hemline
