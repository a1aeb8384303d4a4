// What a step was answered with, of whichever kind the event is.
#pragma once

#include <optional>
#include <string>

#include "engine/record/said_values.h"
#include "engine/words/text.h"

namespace hemline {

struct StepSaid {
    std::string edge, step;  ///< id in the procedure
    int piece = 0;           ///< 0 when the step is of the whole edge
    Answer answer;
    Text exception;            ///< why it was outside practice, a sentence; empty: within
    std::string exception_by;  ///< who accepted it

    bool operator==(const StepSaid&) const = default;
};

/// Somebody said no, and nobody signed for it.
bool says_no(const StepSaid& step);

/// A kind that answers a step says so by said().
template <class One>
concept AStep = requires(const One& fact) {
    StepSaid(fact.said());
};

}  // namespace hemline
