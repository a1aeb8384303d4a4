// An installer's screen: what is done in one go, a row for each step with its value as it is asked.
// One touch confirms all; a touch on a row opens that step alone.
#pragma once

#include <vector>

#include "engine/work/procedure.h"
#include "field/state/state.h"
#include "field/state/steps_draft.h"
#include "field/state/wish.h"
#include "field/touch/ui.h"

namespace hemline {

/// The steps that are confirmed together now; empty: the next step is answered by itself, because
/// it only can be, or because it was opened.
std::vector<std::size_t> confirmed_now(const State& state, const std::vector<Step>& steps,
                                       std::size_t next, const StepDraft& draft);

Wished draw_confirm(Ui& ui, const State& state, const EdgeWork& work,
                    const std::vector<Step>& steps, const std::vector<std::size_t>& together,
                    StepDraft& draft);

}  // namespace hemline
