// An edge's values against practice, those outside it first.
#pragma once

#include "engine/work/edge_values.h"
#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

/// In a list that scrolls; each with who said it and when, an exception with who noted it.
void draw_values(Ui& ui, const State& state, const EdgeWork& work, Box box);

}  // namespace hemline
