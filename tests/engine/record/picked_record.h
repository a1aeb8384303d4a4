// The record of an invented eave that two tablets read separately: the pick of one reading, the
// pick of who answered a step for himself, and the notice of a number written twice put away.
#pragma once

#include "tests/engine/record/eave_record.h"

namespace hemline {

inline std::vector<Event> picked_record() {
    std::vector<Event> events;
    std::uint32_t written = 0;
    const auto add = [&](EventId id, Fact fact, std::vector<EventId> supersedes = {}) {
        ++written;
        events.push_back({id,
                          {1'797'000'000'000 + written, written % 3},
                          id.device == eave_device ? "Ada" : "Ben",
                          std::move(supersedes),
                          std::move(fact)});
        return id;
    };
    constexpr std::uint64_t other = 0xbe40'0000'0000'0001U;
    add({eave_device, 1}, EdgeAdded{invented_eave()});
    const EventId ada = add({eave_device, 2}, ReadingTaken{"A", ReadingOf::edge, feet(31)});
    const EventId ben = add({other, 1}, ReadingTaken{"A", ReadingOf::edge, feet(30)});
    add({other, 2}, Picked{ben, {Subject::reading, "A", TrimRole::main, 0, "", ""}}, {ada, ben});
    const EventId cut =
        add({eave_device, 3}, PieceCut{"A", TrimRole::cleat, 2, feet(6), {feet(10), {}}});
    add({other, 3}, Picked{cut, {Subject::piece, "A", TrimRole::cleat, 2, "", ""}}, {cut});
    const EventId tied = add({other, 4}, StepDone{"A", "tie_off", 0, {}, "", ""});
    add({eave_device, 4}, Picked{tied, {Subject::step, "A", TrimRole::main, 0, "tie_off", "Ben"}},
        {tied});
    add({eave_device, 5}, CopyNoted{{other, 4}, 3});
    return events;
}

}  // namespace hemline
