// Whether a step's answer is within practice; if not, which limit it misses and why that matters.
#include "engine/record/outside_words.h"
#include "engine/work/procedure.h"
#include "engine/work/procedure_words.h"

namespace hemline {

PracticeLimits limits_asked(const Step& step) {
    PracticeLimits limits;
    for (const std::string& word : {step.rule->least, step.rule->most}) {
        if (limits.rule.empty() && practice_length({}, word)) {
            limits.rule = word;
        }
    }
    limits.length_least = step.length_least;
    limits.length_most = step.length_most;
    limits.count_least = step.count_least;
    limits.count_most = step.count_most;
    if (step.rule->asks == Asks::seen || step.rule->asks == Asks::safe) {
        limits.findings = {Finding::good};
    } else if (step.rule->asks == Asks::side) {
        limits.findings = {Finding::left, Finding::right};
    }
    return limits;
}

Text outside_practice(const Step& step, const Answer& answer) {
    const auto told = [&] {
        const Text sentence = outside_words(answer, limits_asked(step));
        return sentence.empty() ? Text() : joined({sentence, say(step.rule->why)}, " ");
    };
    switch (step.rule->asks) {
        case Asks::length:
            return answer.kind == AnswerKind::length ? told()
                                                     : say("No length was given: measure it.");
        case Asks::count:
            return answer.kind == AnswerKind::count ? told()
                                                    : say("No number was given: count them.");
        default:
            return {};
    }
}

}  // namespace hemline
