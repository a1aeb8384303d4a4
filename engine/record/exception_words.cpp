#include "engine/record/exception_words.h"

namespace hemline {

Text exception_words(const StepDone& done) {
    if (done.exception.empty()) {
        return {};
    }
    // Of what was seen the exception says what to do about it, not what is wrong.
    return done.answer.kind == AnswerKind::seen
               ? say("It is {1}.", say(done.answer.seen))
               : recalled(done.exception,
                          {a_little_under_least, under_least, a_little_over_most, over_most});
}

}  // namespace hemline
