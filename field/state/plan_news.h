// What a new plan changed that the crew did not ask for.
#pragma once

#include <cstdint>
#include <string>

#include "field/state/state.h"

namespace hemline {

/// "Planned again. Piece 2 of …": pieces that changed, and sticks to open; empty for nothing.
/// `fact`: what was just entered. `before`: the plan before it, with its sticks_in_all().
Text plan_news(const State& now, const Fact& fact, const Plan& before, std::int64_t sticks_before);

}  // namespace hemline
