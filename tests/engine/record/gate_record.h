// The record of an invented eave: safe for one, not today for another, not here for a third; the
// foreman lifts what held the whole roof, and lets an exception stand.
#pragma once

#include "tests/engine/record/eave_record.h"

namespace hemline {

inline GateAnswered all_safe() {
    GateAnswered gate{"", {}, "Cy", "County Hospital, 1 Hill Street"};
    for (const GateCheck check : gate_checks) {
        gate.found.push_back({check, Finding::good});
    }
    return gate;
}

inline std::vector<Event> gate_record() {
    std::vector<Event> events;
    const auto add = [&](const char* by, Fact fact) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{eave_device, number},
                          {1'810'000'000'000 + number, number % 3},
                          by,
                          {},
                          std::move(fact)});
        events.back().moment = Moment{{1'810'000'000'000 + number}, {}};
    };
    add("Ada", EdgeAdded{invented_eave()});
    add("Ada", all_safe());
    GateAnswered windy = all_safe();
    windy.found[3].finding = Finding::bad;
    windy.found[2].finding = Finding::bad;
    add("Dee", windy);
    add("Cy", GateAnswered{"A", {{GateCheck::wires, Finding::bad}}, "", ""});
    add("Ben", GateLifted{"A", {{eave_device, 3}}, "wind is down"});
    add("Ben", ValueAccepted{"A", "fasten 2: 9"});
    return events;
}

}  // namespace hemline
