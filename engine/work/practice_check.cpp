// Is a step's answer within practice, and if not, which limit does it miss and why does that
// matter?
#include "engine/measure/length_text.h"
#include "engine/record/exception_words.h"
#include "engine/work/procedure.h"

namespace hemline {
namespace {

struct Missed {
    std::string value, limit;
    Text why;
};

Text said_under(const Missed& missed) {
    return missed.value == missed.limit
               ? say(a_little_under_least, missed.value, missed.limit, missed.why)
               : say(under_least, missed.value, missed.limit, missed.why);
}

Text said_over(const Missed& missed) {
    return missed.value == missed.limit
               ? say(a_little_over_most, missed.value, missed.limit, missed.why)
               : say(over_most, missed.value, missed.limit, missed.why);
}

Text length_outside(const Step& step, Length length) {
    // In inches half a mark finer than the job's: a check is about the little that is missing.
    const Marks marks = step.marks == Marks::millimetre ? step.marks : Marks::thirty_second;
    const auto print = [&](Length l) { return print_length(l, marks); };
    const Text why = say(step.rule->why);
    if (step.length_least && length < *step.length_least) {
        return said_under({print(length), print(*step.length_least), why});
    }
    if (step.length_most && length > *step.length_most) {
        return said_over({print(length), print(*step.length_most), why});
    }
    return {};
}

Text count_outside(const Step& step, std::int64_t count) {
    const Text why = say(step.rule->why);
    if (step.count_least && count < *step.count_least) {
        return said_under({std::to_string(count), std::to_string(*step.count_least), why});
    }
    if (step.count_most && count > *step.count_most) {
        return said_over({std::to_string(count), std::to_string(*step.count_most), why});
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
