// Is a step's answer within practice, and if not, which limit does it miss and why does that
// matter?
#include "engine/measure/length_text.h"
#include "engine/work/procedure.h"

namespace hemline {
namespace {

/// "it lets water in" from "It lets water in."
std::string as_clause(std::string why) {
    const bool acronym = why.size() > 1 && why[1] >= 'A' && why[1] <= 'Z';
    if (!why.empty() && why[0] >= 'A' && why[0] <= 'Z' && !acronym) {
        why[0] = static_cast<char>(why[0] - 'A' + 'a');
    }
    while (!why.empty() && why.back() == '.') {
        why.pop_back();
    }
    return why;
}

std::string sentence(const std::string& value, std::string_view misses, const std::string& limit,
                     const StepRule& rule) {
    // Printed on the mark the two may read the same: then say that it is less than a mark.
    const std::string said = value == limit ? "A little off " + value : value;
    return said + " " + std::string(misses) + " " + limit + ": " + as_clause(rule.why) + ".";
}

constexpr std::string_view under = "is under the least,";
constexpr std::string_view over = "is over the most,";

std::string length_outside(const Step& step, Length length) {
    // In inches half a mark finer than the job's: a check is about the little that is missing.
    const Marks marks = step.marks == Marks::millimetre ? step.marks : Marks::thirty_second;
    const auto print = [&](Length l) { return print_length(l, marks); };
    if (step.length_least && length < *step.length_least) {
        return sentence(print(length), under, print(*step.length_least), *step.rule);
    }
    if (step.length_most && length > *step.length_most) {
        return sentence(print(length), over, print(*step.length_most), *step.rule);
    }
    return "";
}

std::string count_outside(const Step& step, std::int64_t count) {
    if (step.count_least && count < *step.count_least) {
        return sentence(std::to_string(count), under, std::to_string(*step.count_least),
                        *step.rule);
    }
    if (step.count_most && count > *step.count_most) {
        return sentence(std::to_string(count), over, std::to_string(*step.count_most), *step.rule);
    }
    return "";
}

}  // namespace

std::string outside_practice(const Step& step, const Answer& answer) {
    switch (step.rule->asks) {
        case Asks::length:
            return answer.kind == AnswerKind::length ? length_outside(step, answer.length)
                                                     : "No length was given: measure it.";
        case Asks::count:
            return answer.kind == AnswerKind::count ? count_outside(step, answer.count)
                                                    : "No number was given: count them.";
        default:
            return "";
    }
}

}  // namespace hemline
