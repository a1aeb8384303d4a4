// A record that a test goes on writing, one event every millisecond.
#pragma once

#include <utility>
#include <vector>

#include "engine/record/event.h"
#include "engine/record/job.h"

namespace hemline {

struct GrowingRecord {
    std::vector<Event> events;

    EventId add(Fact fact, std::vector<EventId> supersedes = {}, std::uint64_t device = 1) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{device, number},
                          {1'795'000'000'000 + number, number % 3},
                          "Ada",
                          std::move(supersedes),
                          std::move(fact)});
        return events.back().id;
    }
    [[nodiscard]] Job job() const { return replay(events); }
};

}  // namespace hemline
