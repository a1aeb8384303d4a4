// Is a step's answer within practice, and if not, which limit does it miss and why does that
// matter?
#include "engine/measure/length_text.h"
#include "engine/work/procedure.h"

namespace hemline {
namespace {

struct Missed {
    std::string value, limit;
    Text why;
};

/// Printed on the mark the two may read the same: then it says that it is less than a mark.
Text under_least(const Missed& missed) {
    return missed.value == missed.limit
               ? say("A little off {1} is under the least, {2}. {3}", missed.value, missed.limit,
                     missed.why)
               : say("{1} is under the least, {2}. {3}", missed.value, missed.limit, missed.why);
}

Text over_most(const Missed& missed) {
    return missed.value == missed.limit
               ? say("A little off {1} is over the most, {2}. {3}", missed.value, missed.limit,
                     missed.why)
               : say("{1} is over the most, {2}. {3}", missed.value, missed.limit, missed.why);
}

Text length_outside(const Step& step, Length length) {
    // In inches half a mark finer than the job's: a check is about the little that is missing.
    const Marks marks = step.marks == Marks::millimetre ? step.marks : Marks::thirty_second;
    const auto print = [&](Length l) { return print_length(l, marks); };
    const Text why = say(step.rule->why);
    if (step.length_least && length < *step.length_least) {
        return under_least({print(length), print(*step.length_least), why});
    }
    if (step.length_most && length > *step.length_most) {
        return over_most({print(length), print(*step.length_most), why});
    }
    return {};
}

Text count_outside(const Step& step, std::int64_t count) {
    const Text why = say(step.rule->why);
    if (step.count_least && count < *step.count_least) {
        return under_least({std::to_string(count), std::to_string(*step.count_least), why});
    }
    if (step.count_most && count > *step.count_most) {
        return over_most({std::to_string(count), std::to_string(*step.count_most), why});
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
