// The record of an invented eave whose steps were answered within practice and outside it, by the
// kind of event that kept a sentence and by the kind that keeps values; every field set to
// something that is not its default.
#pragma once

#include "tests/engine/record/eave_record.h"

namespace hemline {

inline std::vector<Event> answered_record() {
    std::vector<Event> events;
    const auto add = [&](Fact fact) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{eave_device, number},
                          {1'800'000'000'000 + number, number % 3},
                          "Ada",
                          {},
                          std::move(fact)});
        events.back().moment = Moment{{1'800'000'000'000 + number}, {}};
    };
    const auto length = [](const char* step, int piece, Length value, PracticeLimits limits) {
        return StepAnswered{"A",           step,   piece, AnswerKind::length, value, 0,
                            Finding::good, limits, ""};
    };
    add(EdgeAdded{invented_eave()});
    add(StepDone{
        "A",
        "hook",
        1,
        {AnswerKind::length, sixteenths(2), 0, ""},
        "1/8 in is over the most, 1/16 in. A hem that is not hooked tears off in the wind.",
        "Ben"});
    StepAnswered hook = length("hook", 2, sixteenths(2), {"hook_gap_most", {}, sixteenths(1)});
    hook.accepted_by = "Ben";
    add(hook);
    StepAnswered slide = length("slide", 2, inches(5) + sixteenths(8), {"lap", inches(6)});
    slide.accepted_by = "Ben";
    add(slide);
    add(length("string", 0, sixteenths(3), {"", sixteenths(1), sixteenths(4)}));
    StepAnswered screws{"A", "fasten", 2, AnswerKind::count};
    screws.count = 9;
    screws.limits.count_least = 10;
    screws.limits.count_most = 12;
    screws.accepted_by = "Ada";
    add(screws);
    StepAnswered ground{"A", "ground", 0, AnswerKind::seen};
    ground.finding = Finding::bad;
    ground.limits.findings = {Finding::good};
    ground.accepted_by = "Ada";
    add(ground);
    StepAnswered hand{"A", "hand", 0, AnswerKind::seen};
    hand.finding = Finding::left;
    hand.limits.findings = {Finding::left, Finding::right};
    add(hand);
    return events;
}

}  // namespace hemline
