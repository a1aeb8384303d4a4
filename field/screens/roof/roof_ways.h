// The roof's ways elsewhere: to the sticks, to handing over, and to what was made apart.
#pragma once

#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

/// Draws those that there are at the top of `box` and cuts them off it.
void draw_ways(Ui& ui, const State& state, Box& box, Wish& wish);

}  // namespace hemline
