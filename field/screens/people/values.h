// An edge's values against practice, those outside it first.
#pragma once

#include "engine/work/edge_values.h"
#include "field/screens/page/actions.h"
#include "field/state/people_draft.h"
#include "field/state/state.h"
#include "field/state/wish.h"
#include "field/touch/ui.h"

namespace hemline {

/// In a list that scrolls; each with who said it and when, an exception with who noted it. While
/// the foreman is to check the edge off, each exception has a touch of its own by which he lets it
/// stand. All within practice are one line, which a touch opens.
Wished draw_values(Ui& ui, const State& state, const EdgeWork& work, ValuesDraft& draft, Box box);
/// The foreman's button: off while exceptions are left that he has not let stand.
Action tick_action(const State& state, const EdgeWork& work);

}  // namespace hemline
