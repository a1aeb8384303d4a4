// Answering a step: with what was done, measured, counted or seen; outside practice only by name.
#pragma once

#include <string>
#include <vector>

#include "engine/work/procedure.h"
#include "field/screens/page/frame.h"
#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

struct AnswerActions {
    std::vector<Action> actions;  ///< the primary last
};

/// The buttons that answer this step.
AnswerActions answers_of(const State& state, const Step& step, const Drafts& drafts);

/// The keys this step's answer wants.
KeysWanted keys_for(const State& state, const Step& step, const Drafts& drafts);

/// Those keys, where the answer is a value.
void draw_answer_keys(Ui& ui, const State& state, const Step& step, Drafts& drafts, Box keys);

/// The value keyed in so far. Returns the height used, 0 where the answer is no value.
float draw_answer(Ui& ui, const State& state, const Step& step, Drafts& drafts, Box body);

/// A key or a value was refused, and it is said why.
bool is_refused(const Drafts& drafts);
/// The practice the value must meet, or why it was refused; empty where there is neither.
float draw_limits(Ui& ui, const Step& step, const Drafts& drafts, Box box);

/// The wish of the tapped button. A value outside practice is first refused with the reason; asked
/// again, it is kept as an exception signed by whoever holds the tablet.
Wish answer_with(const std::string& tapped, const State& state, const EdgeWork& work,
                 const Step& step, Drafts& drafts);

}  // namespace hemline
