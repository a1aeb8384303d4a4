// Is a step's answer within practice, and if not, which limit does it miss and why does that
// matter?
#include "engine/measure/length_text.h"
#include "engine/record/exception_words.h"
#include "engine/work/procedure.h"

namespace hemline {
namespace {

struct Missed {
    Text value, limit, why;
    bool reads_alike;  ///< value and limit, on the job's marks
};

Text said_under(const Missed& missed) {
    return missed.reads_alike ? say(a_little_under_least, missed.value, missed.limit, missed.why)
                              : say(under_least, missed.value, missed.limit, missed.why);
}

Text said_over(const Missed& missed) {
    return missed.reads_alike ? say(a_little_over_most, missed.value, missed.limit, missed.why)
                              : say(over_most, missed.value, missed.limit, missed.why);
}

Text length_outside(const Step& step, Length length) {
    const auto missed = [&](Length limit) {
        const bool alike = tell_closely(length, step.marks) == tell_closely(limit, step.marks);
        return Missed{CloseLength{length}, CloseLength{limit}, say(step.rule->why), alike};
    };
    if (step.length_least && length < *step.length_least) {
        return said_under(missed(*step.length_least));
    }
    if (step.length_most && length > *step.length_most) {
        return said_over(missed(*step.length_most));
    }
    return {};
}

Text count_outside(const Step& step, std::int64_t count) {
    const Text why = say(step.rule->why);
    if (step.count_least && count < *step.count_least) {
        return said_under({as_text(count), as_text(*step.count_least), why, false});
    }
    if (step.count_most && count > *step.count_most) {
        return said_over({as_text(count), as_text(*step.count_most), why, false});
    }
    return {};
}

}  // namespace

Text outside_practice(const Step& step, const Answer& answer) {
    switch (step.rule->asks) {
        case Asks::length:
            return answer.kind == AnswerKind::length ? length_outside(step, answer.length)
                                                     : say("No length was given: measure it.");
        case Asks::count:
            return answer.kind == AnswerKind::count ? count_outside(step, answer.count)
                                                    : say("No number was given: count them.");
        default:
            return {};
    }
}

}  // namespace hemline
