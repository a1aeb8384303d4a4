// Answering a step: with what was done, measured, counted or seen; outside practice only by name.
#pragma once

#include <string>
#include <vector>

#include "engine/work/procedure.h"
#include "field/app/state.h"
#include "field/screens/frame.h"
#include "field/touch/ui.h"

namespace hemline {

struct AnswerActions {
    std::vector<Action> actions;  ///< the primary last
};

/// The buttons that answer this step.
AnswerActions answers_of(const State& state, const Step& step, const Drafts& drafts);

/// Keys and readback where the answer is a value; the values so far where the foreman ticks.
/// Returns what is left of `body`.
Box draw_answer(Ui& ui, const State& state, const EdgeWork& work, const Step& step, Drafts& drafts,
                Box body);

/// The wish of the tapped button. A value outside practice is first refused with the reason; asked
/// again, it is kept as an exception signed by whoever holds the tablet.
Wish answer_with(const std::string& tapped, const State& state, const EdgeWork& work,
                 const Step& step, Drafts& drafts);

/// Every answer of the edge beside its rule, exceptions by name.
void draw_values(Ui& ui, const State& state, const EdgeWork& work, Box box);

}  // namespace hemline
