// What happened, in words.
#pragma once

#include <functional>
#include <string>

#include "engine/record/event.h"
#include "engine/record/thing_names.h"
#include "engine/words/text.h"

namespace hemline {

/// Names for the things that an event knows by id; where none is given, the id is shown.
struct Names {
    std::function<Text(const StepSaid&)> step;
    std::function<Text(const std::string&)> trim, rule;
    std::function<const Fact*(EventId)> event;  ///< null: not on this tablet
    std::function<Text(EventId)> entry;         ///< an event that is not told
    std::function<Text(EventId)> offcut;        ///< the piece whose cut left it
};

/// The same names, for things that tablets disagree about.
ThingNames thing_names(const Names& names);

/// A line for the history screen and `journal`: what happened, in words, with its values. A strike
/// says what it struck, one level deep only, because strikes may strike each other or themselves.
Text describe(const Fact& fact, const Names& names = {});
/// "piece 1, step hook", or its action in quotes.
Text step_words(const StepSaid& said, const Names& names);

}  // namespace hemline
