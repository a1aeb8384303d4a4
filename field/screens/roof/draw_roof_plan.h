// The roof from above, to scale, as far as it is read: edges with where they stand, corners, and
// what keeps it from closing.
//
//        E              the letter's circle says where the edge stands, a word beside it too;
//     ┌──○──────┐       a touch on the edge opens it; an edge too short for a touch is in the list
//   A ○         │ D
//     └────┐ ⟂  │       a square in a corner: 90°; else its angle; "?" where it is not known
//        B ○────┘
#pragma once

#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

/// Draws the outline in the box; the id of the edge that was touched, or empty. Needs
/// state.outline.
std::string draw_roof_plan(Ui& ui, const State& state, Box box);
/// Whether it closes, and what single reading would close it; returns the height used.
float draw_roof_words(Ui& ui, const State& state, Box box);

/// The least box it is worth drawing in, mm.
constexpr float roof_plan_mm_least = 40;

}  // namespace hemline
