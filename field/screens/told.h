// What happened, as the crew calls it: the step by what it says to do, the trim by its name, what
// was struck by what it said.
#pragma once

#include "field/app/state.h"

namespace hemline {

/// They look into `state`, which outlives them.
Names names_on(const State& state);
Text told(const State& state, const Fact& fact);

}  // namespace hemline
