// The record of an invented eave with a lap other than the job's, and of another eave that laps as
// the job's rule again.
#pragma once

#include "tests/engine/record/eave_record.h"

namespace hemline {

inline std::vector<Event> edge_lap_record() {
    std::vector<Event> events;
    const auto add = [&](Fact fact, std::vector<EventId> supersedes = {}) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{eave_device, number},
                          {1'795'000'000'000 + number, number % 3},
                          "Ada",
                          std::move(supersedes),
                          std::move(fact)});
        return events.back().id;
    };
    add(EdgeAdded{invented_eave()});
    Edge other = invented_eave();
    other.id = "B";
    add(EdgeAdded{other});
    add(LapChosen{"A", inches(8)});
    const EventId hail = add(LapChosen{"B", inches(10) + sixteenths(1)});
    add(LapChosen{"B", std::nullopt}, {hail});
    return events;
}

}  // namespace hemline
