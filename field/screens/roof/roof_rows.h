// The edges of the roof in a list: each with its length and status, and for the foreman what it
// waits for, who worked on it last, and what is outside practice.
#pragma once

#include "field/state/state.h"
#include "field/state/wish.h"
#include "field/touch/ui.h"

namespace hemline {

constexpr float edge_row_mm = 17;

/// Draws a row for each edge at the top of `list` and cuts them off it; a touch opens the edge.
void draw_edge_rows(Ui& ui, const State& state, Box& list, Wished& wish);

/// "2 of 8 edges finished, 1 to tick, 3 exceptions.": the roof at a glance.
Text glance_words(const State& state);

}  // namespace hemline
