// The record of an invented eave in frames of version 2: what each tablet's clock said besides the
// time for the order, a clock ten years ahead, and the last possible time.
#pragma once

#include "engine/record/job.h"
#include "tests/engine/record/eave_record.h"

namespace hemline {

inline std::vector<Event> clocks_record() {
    constexpr std::int64_t today_ms = 1'800'000'000'000, ten_years_ms = 315'576'000'000;
    constexpr std::uint64_t ada = eave_device, hal = 0x77aa'0000'0000'beefU;
    std::vector<Event> events;
    const auto add = [&](std::uint64_t device, std::int64_t clock_ms, Fact fact,
                         std::vector<EventId> supersedes = {}) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        Event event{{device, number},
                    {},
                    device == ada ? "Ada" : "Hal",
                    std::move(supersedes),
                    std::move(fact)};
        stamp(event, events, clock_ms);
        events.push_back(std::move(event));
        return events.back().id;
    };
    add(ada, today_ms, JobStarted{"Invented shed", "common practice"});
    add(ada, today_ms + 1'000, EdgeAdded{invented_eave()});
    add(hal, today_ms + ten_years_ms, ReadingTaken{"A", ReadingOf::edge, feet(12)});
    const EventId read =
        add(ada, today_ms + 60'000, ReadingTaken{"A", ReadingOf::edge, feet(12)}, {{hal, 3}});
    add(ada, today_ms + 61'000, Struck{read, "undone"}, {read});
    add(ada, today_ms + 62'000, Unknown{4711, {1, 2, 3}});
    events.back().when = time_last;
    add(hal, today_ms + 63'000, EdgeFinished{"A", "no lap \xE2\x89\xA4 4 in"});
    return events;
}

}  // namespace hemline
