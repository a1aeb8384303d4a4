// What stands above a step, before anything is done: tie off, wind on a long piece, the caution.
#pragma once

#include <vector>

#include "engine/work/procedure.h"
#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

/// On the color of danger, with its sign; cuts its room off the body. Nothing where it is empty.
void draw_caution(Ui& ui, const Text& caution, Box& body);
/// Tie off, where whoever holds the tablet begins on the edge; and the wind where a piece that one
/// person does not hold is about to be carried there. Empty: neither.
std::vector<Text> before_roof_step(const State& state, const EdgeWork& work,
                                   const std::vector<Step>& steps, const Step& step);

}  // namespace hemline
