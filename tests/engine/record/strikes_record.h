// The record of an invented eave on which strikes strike themselves and each other.
#pragma once

#include "engine/record/job.h"
#include "tests/engine/record/eave_record.h"

namespace hemline {

constexpr std::uint64_t strikes_device = 0x5eed'0000'0000'0077U;

/// The job and its eave; a strike of itself; two strikes of each other; then so many, each of the
/// strike before, also the first of them.
inline std::vector<Event> strikes_record(std::uint32_t chain) {
    std::vector<Event> events;
    const auto add = [&](Fact fact) {
        Event event{{strikes_device, static_cast<std::uint32_t>(events.size() + 1)},
                    {},
                    "Ada",
                    {},
                    std::move(fact)};
        stamp(event, events, 1'780'000'000'000 + static_cast<std::int64_t>(events.size()));
        events.push_back(std::move(event));
    };
    const auto strike = [&](std::uint32_t target) {
        add(Struck{{strikes_device, target}, "undone"});
    };
    add(JobStarted{"Invented shed", "common practice"});
    add(EdgeAdded{invented_eave()});
    strike(3);
    strike(5);
    strike(4);
    for (std::uint32_t i = 0; i < chain; ++i) {
        strike(5 + i);
    }
    return events;
}

}  // namespace hemline
