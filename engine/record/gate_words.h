// The day's safety questions, in words.
#pragma once

#include <vector>

#include "engine/record/said_values.h"
#include "engine/words/text.h"

namespace hemline {

/// "wires".
Text spoken(GateCheck check);
/// "wires, wind".
Text spoken(const std::vector<GateCheck>& checks);

}  // namespace hemline
