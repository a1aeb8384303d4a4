// The ways from the roof to other screens: the sticks, sending and backing up, and where tablets
// disagree.
#pragma once

#include "field/state/state.h"
#include "field/state/wish.h"
#include "field/touch/ui.h"

namespace hemline {

/// Draws those that apply at the top of `box` and cuts them off it.
void draw_ways(Ui& ui, const State& state, Box& box, Wished& wish);

/// How high they are in that width.
float ways_height(const Ui& ui, const State& state, float w);

}  // namespace hemline
