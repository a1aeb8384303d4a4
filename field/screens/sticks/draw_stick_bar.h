// A stick to scale: its pieces with their names, and what is left of it.
//
//   |  A/2  7 ft  |  B/1 2 ft 6 in  |//////|   waste hatched; an offcut that is kept is left blank
//   0           7 ft           9 ft 6 in       one tape reading from the left end
#pragma once

#include "field/state/pool_view.h"
#include "field/touch/ui.h"

namespace hemline {

/// What becomes of the rest of a stick.
enum class Leftover { none, kept, scrap };
Leftover leftover_of(const PlannedStick& stick, const Practice& practice);

/// Draws the stick into `bar`, whose whole width stands for `longest`, and the tape below it.
void draw_stick_bar(Ui& ui, const State& state, const SticksAlike& sticks, Length longest, Box bar);

}  // namespace hemline
