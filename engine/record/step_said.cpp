#include "engine/record/step_said.h"

#include <algorithm>

#include "engine/record/outside_words.h"
#include "engine/record/step_facts.h"
#include "engine/trim/practice.h"

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
    // Of something seen, the exception says what to do about it, not what is wrong.
    return done.answer.kind == AnswerKind::seen
               ? say("It is {1}.", say(done.answer.seen))
               : recalled(done.exception,
                          {a_little_under_least, under_least, a_little_over_most, over_most});
}

const char* words_of(Finding finding) {
    switch (finding) {
        case Finding::good:
            break;
        case Finding::bad:
            return phrase("not as it should be");
        case Finding::left:
            return phrase("left");
        case Finding::right:
            return phrase("right");
    }
    return phrase("as it should be");
}

Text outside(const StepAnswered& step, const Answer& answer) {
    const std::vector<Finding>& would_do = step.limits.findings;
    if (answer.kind == AnswerKind::seen) {
        return would_do.empty() || std::count(would_do.begin(), would_do.end(), step.finding) > 0
                   ? Text()
                   : say("It is {1}.", say(answer.seen));
    }
    const Text missed = outside_words(answer, step.limits);
    return missed.empty() || step.limits.rule.empty()
               ? missed
               : say("{1} The rule: {2}.", missed, spoken_rule(step.limits.rule));
}

}  // namespace

bool says_no(const StepSaid& step) {
    return step.answer.kind == AnswerKind::seen && step.exception_by.empty() &&
           step.answer.seen == words_of(Finding::bad);
}

StepSaid StepDone::said() const {
    return {edge, step, piece, answer, kept_sentence(*this), exception_by};
}

StepSaid StepAnswered::said() const {
    Answer answer{kind, length, count, {}};
    answer.seen = kind == AnswerKind::seen ? words_of(finding) : "";
    return {edge, step, piece, answer, outside(*this, answer), accepted_by};
}

StepSaid StepLifted::said() const {
    Answer answer{AnswerKind::seen, {}, 0, words_of(Finding::good)};
    return {edge, step, 0, answer, say("The no was lifted: {1}.", say(reason)), lifted_by};
}

}  // namespace hemline
