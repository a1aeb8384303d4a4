#include "engine/record/step_said.h"

#include "engine/record/step_facts.h"

namespace hemline {
namespace {

/// As programs wrote it that kept the sentence in English; {1} the value, {2} the limit, {3} why it
/// matters.
constexpr const char* a_little_under_least =
    phrase("A little off {1} is under the least, {2}. {3}");
constexpr const char* under_least = phrase("{1} is under the least, {2}. {3}");
constexpr const char* a_little_over_most = phrase("A little off {1} is over the most, {2}. {3}");
constexpr const char* over_most = phrase("{1} is over the most, {2}. {3}");

Text kept_sentence(const StepDone& done) {
    if (done.exception.empty()) {
        return {};
    }
    // Of what was seen the exception says what to do about it, not what is wrong.
    return done.answer.kind == AnswerKind::seen
               ? say("It is {1}.", say(done.answer.seen))
               : recalled(done.exception,
                          {a_little_under_least, under_least, a_little_over_most, over_most});
}

}  // namespace

StepSaid StepDone::said() const {
    return {edge, step, piece, answer, kept_sentence(*this), exception_by};
}

}  // namespace hemline
