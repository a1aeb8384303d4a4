// Answering a step: with what was done, measured, counted or seen; outside practice only under a
// name.
#pragma once

#include <string>
#include <vector>

#include "engine/work/procedure.h"
#include "field/screens/page/frame.h"
#include "field/state/state.h"
#include "field/state/steps_draft.h"
#include "field/state/wish.h"
#include "field/touch/ui.h"

namespace hemline {

struct AnswerActions {
    std::vector<Action> actions;  ///< the primary action last
};

/// The buttons that answer this step.
AnswerActions answers_of(const State& state, const EdgeWork& work, const Step& step,
                         const StepDraft& draft);

/// "fasten 2": the step and its piece.
std::string key_of(const Step& step);
/// The answer to a step where all is as it is asked.
StepAnswered answer_as_asked(const std::string& edge, const Step& step);

/// The keys that this step's answer needs.
KeysWanted keys_for(const State& state, const Step& step, const StepDraft& draft);

/// Those keys, where the answer is a value.
void draw_answer_keys(Ui& ui, const State& state, const Step& step, StepDraft& draft, Box keys);

/// The value keyed in so far. Returns the height used, 0 where the answer is not a value.
float draw_answer(Ui& ui, const State& state, const Step& step, StepDraft& draft, Box body);
/// The height of a count and of the one that is asked for beside it.
constexpr float count_fields_mm = 11;

/// Whether a key or a value was refused; then it is said why.
bool is_refused(const StepDraft& draft);
/// The practice that the value must meet, or why it was refused; empty where there is neither.
float draw_limits(Ui& ui, const Step& step, const StepDraft& draft, Box box);

/// The wish of the tapped button. A value outside practice is first refused with the reason; tapped
/// again, it is saved as an exception signed by whoever holds the tablet.
Wished answer_with(const std::string& tapped, const State& state, const EdgeWork& work,
                   const Step& step, StepDraft& draft);

}  // namespace hemline
