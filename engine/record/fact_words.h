// What happened, in words.
#pragma once

#include <functional>
#include <string>

#include "engine/record/event.h"
#include "engine/words/text.h"

namespace hemline {

/// What people call that which an event knows by its id; what is not given is named by the id.
struct Names {
    std::function<Text(const StepSaid&)> step;
    std::function<Text(const std::string&)> trim, rule;
    std::function<const Fact*(EventId)> event;  ///< null: not on this tablet
    std::function<Text(EventId)> offcut;        ///< the piece whose cut left it
};

/// One line for the history screen and `journal`: what happened, in words, with its values. What a
/// strike struck is said one level deep: strikes may strike each other, or themselves.
Text describe(const Fact& fact, const Names& names = {});
/// "piece 1, step hook", or its action in quotes.
Text step_words(const StepSaid& said, const Names& names);

}  // namespace hemline
