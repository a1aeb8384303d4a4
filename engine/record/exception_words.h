// Why an answer was outside practice: said when it is given, kept in the journal in English, and
// said from there in any language.
#pragma once

#include "engine/record/event.h"

namespace hemline {

/// {1} the value, {2} the limit, {3} why it matters. Printed on the mark the two may read the same:
/// then it says that it is less than a mark.
constexpr const char* a_little_under_least =
    phrase("A little off {1} is under the least, {2}. {3}");
constexpr const char* under_least = phrase("{1} is under the least, {2}. {3}");
constexpr const char* a_little_over_most = phrase("A little off {1} is over the most, {2}. {3}");
constexpr const char* over_most = phrase("{1} is over the most, {2}. {3}");

/// Why the answer was no good, a sentence; empty when it was within practice.
Text exception_words(const StepDone& done);

}  // namespace hemline
