// The edges of the roof in a list: each with its length, where it stands, and for the foreman what
// it waits for, who did the last of it, and what lies outside practice.
#pragma once

#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

/// Draws a row an edge at the top of `list` and cuts them off it; a touch opens the edge.
void draw_edge_rows(Ui& ui, const State& state, Box& list, Wish& wish);

/// "2 of 8 edges finished, 1 to tick, 3 exceptions.": the roof at a glance.
Text glance_words(const State& state);

}  // namespace hemline
