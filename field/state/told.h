// What happened, in the crew's words: a step by what it says to do, a trim by its name, a struck
// event by what it said.
#pragma once

#include "engine/record/fact_words.h"
#include "field/state/state.h"

namespace hemline {

/// `state` must outlive them.
Names names_on(const State& state);
Text told(const State& state, const Fact& fact);
/// Which clocks are wrong, for whoever holds the tablet: the foreman is told of all, others only of
/// their tablet's clock. Empty when none is.
Text clocks_told(const State& state);

}  // namespace hemline
