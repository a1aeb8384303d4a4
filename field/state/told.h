// What happened, as the crew calls it: the step by what it says to do, the trim by its name, what
// was struck by what it said.
#pragma once

#include "engine/record/fact_words.h"
#include "field/state/state.h"

namespace hemline {

/// They look into `state`, which outlives them.
Names names_on(const State& state);
Text told(const State& state, const Fact& fact);
/// Which clocks are wrong: to its holder his tablet's, to the foreman all. Empty when none is.
Text clocks_told(const State& state);
/// Which clocks are wrong: to who holds one of these tablets of his own, to the foreman of all.
/// Empty when none is.
Text clocks_told(const State& state);

}  // namespace hemline
