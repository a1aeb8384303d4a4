// The record of an invented eave that was added twice and taken off once, every field set to
// something that is not its default.
#pragma once

#include "tests/engine/record/eave_record.h"

namespace hemline {

inline std::vector<Event> taken_off_record() {
    std::vector<Event> events;
    const auto add = [&](Fact fact, std::vector<EventId> supersedes = {}) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{eave_device, number},
                          {1'790'000'000'000 + number, number % 3},
                          "Ada",
                          std::move(supersedes),
                          std::move(fact)});
        return events.back().id;
    };
    add(EdgeAdded{invented_eave()});
    Edge again = invented_eave();
    again.id = "A2";
    const EventId twice = add(EdgeAdded{again});
    add(ReadingTaken{"A2", ReadingOf::edge, feet(31)});
    add(EdgeTakenOff{"A2"}, {twice});
    return events;
}

}  // namespace hemline
