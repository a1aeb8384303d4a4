// What a crew that keeps to practice answers to a step, and what a step cuts.
#pragma once

#include "engine/work/procedure.h"

namespace hemline_test {

using namespace hemline;

/// An answer within practice: what the limits ask, or nothing to say.
inline Answer good_answer(const Step& step) {
    switch (step.rule->asks) {
        case Asks::length:
            return {AnswerKind::length, step.length_least.value_or(Length()), 0, ""};
        case Asks::count:
            return {AnswerKind::count, Length(), step.count_least.value_or(0), ""};
        case Asks::seen:
        case Asks::safe:
            return {AnswerKind::seen, Length(), 0, "fine"};
        default:
            return {};
    }
}

inline TrimRole role_of_step(const Step& step) {
    return step.rule->each == Each::wrap_piece    ? TrimRole::wrap
           : step.rule->each == Each::cleat_piece ? TrimRole::cleat
                                                  : TrimRole::main;
}

}  // namespace hemline_test
