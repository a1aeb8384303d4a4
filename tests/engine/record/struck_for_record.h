// The record of an invented eave some of whose events were taken back, for each reason there is;
// every field set to something that is not its default.
#pragma once

#include "tests/engine/record/eave_record.h"

namespace hemline {

inline std::vector<Event> struck_for_record() {
    std::vector<Event> events;
    const auto add = [&](Fact fact) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{eave_device, number},
                          {1'810'000'000'000 + number, number % 3},
                          "Ada",
                          {},
                          std::move(fact)});
        events.back().moment = Moment{{1'810'000'000'000 + number}, {}};
        return events.back().id;
    };
    add(EdgeAdded{invented_eave()});
    for (const StrikeReason reason :
         {StrikeReason::undone, StrikeReason::by_hand, StrikeReason::disk_failed}) {
        const EventId read = add(ReadingTaken{"A", ReadingOf::edge, feet(31)});
        add(StruckFor{read, reason});
    }
    const EventId read = add(ReadingTaken{"A", ReadingOf::edge, feet(32)});
    add(StruckFor{add(StruckFor{read, StrikeReason::disk_failed}), StrikeReason::disk_failed});
    return events;
}

}  // namespace hemline
