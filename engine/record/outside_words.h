// Why an answer is outside practice.
#pragma once

#include "engine/record/said_values.h"
#include "engine/words/text.h"

namespace hemline {

/// One sentence: which value, and which limit it misses; empty when it is within them. Where value
/// and limit read the same on a tape, it says that they differ by less than a mark.
Text outside_words(const Answer& answer, const PracticeLimits& limits);

}  // namespace hemline
