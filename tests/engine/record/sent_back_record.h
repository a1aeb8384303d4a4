// The record of an invented eave that was signed off and sent back, every field set to something
// that is not its default.
#pragma once

#include "tests/engine/record/eave_record.h"

namespace hemline {

inline std::vector<Event> sent_back_record() {
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
    const EventId tick = add(EdgeFinished{"A", "straight"});
    add(EdgeSentBack{"A", "lap too short at piece 2"}, {tick});
    return events;
}

}  // namespace hemline
