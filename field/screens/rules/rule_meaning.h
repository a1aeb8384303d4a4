// A rule of the job in words: what it means, and where its usual value comes from.
#pragma once

#include <string>

#include "field/state/state.h"
#include "field/touch/ui.h"

namespace hemline {

/// Draws these words; returns the height used.
float draw_rule_meaning(Ui& ui, const State& state, const std::string& key, Box box);

/// The field in which such a length lies, so that the keys open there.
int field_of(Length length);

}  // namespace hemline
