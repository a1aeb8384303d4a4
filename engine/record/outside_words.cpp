#include "engine/record/outside_words.h"

namespace hemline {
namespace {

bool read_alike(Length a, Length b) {
    return tell_closely(a, Marks::thirty_second) == tell_closely(b, Marks::thirty_second) ||
           tell_closely(a, Marks::millimetre) == tell_closely(b, Marks::millimetre);
}

Text under(const Text& value, const Text& least, bool alike) {
    return alike ? say("A little off {1} is under the least, {2}.", value, least)
                 : say("{1} is under the least, {2}.", value, least);
}

Text over(const Text& value, const Text& most, bool alike) {
    return alike ? say("A little off {1} is over the most, {2}.", value, most)
                 : say("{1} is over the most, {2}.", value, most);
}

Text length_outside(Length length, const PracticeLimits& limits) {
    if (limits.length_least && length < *limits.length_least) {
        return under(CloseLength{length}, CloseLength{*limits.length_least},
                     read_alike(length, *limits.length_least));
    }
    if (limits.length_most && length > *limits.length_most) {
        return over(CloseLength{length}, CloseLength{*limits.length_most},
                    read_alike(length, *limits.length_most));
    }
    return {};
}

Text count_outside(std::int64_t count, const PracticeLimits& limits) {
    if (limits.count_least && count < *limits.count_least) {
        return under(as_text(count), as_text(*limits.count_least), false);
    }
    if (limits.count_most && count > *limits.count_most) {
        return over(as_text(count), as_text(*limits.count_most), false);
    }
    return {};
}

}  // namespace

Text outside_words(const Answer& answer, const PracticeLimits& limits) {
    switch (answer.kind) {
        case AnswerKind::length:
            return length_outside(answer.length, limits);
        case AnswerKind::count:
            return count_outside(answer.count, limits);
        case AnswerKind::seen:
        case AnswerKind::done:
            break;
    }
    return {};
}

}  // namespace hemline
