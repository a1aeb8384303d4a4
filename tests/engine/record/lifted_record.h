// The record of an invented eave: the installer says that it is not safe, the foreman lifts it.
#pragma once

#include "tests/engine/record/eave_record.h"

namespace hemline {

inline std::vector<Event> lifted_record() {
    StepAnswered no{"A", "ground", 0, AnswerKind::seen};
    no.finding = Finding::bad;
    no.limits.findings = {Finding::good};
    std::vector<Event> events;
    const auto add = [&](const char* by, Fact fact) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{eave_device, number},
                          {1'800'000'000'000 + number, number % 3},
                          by,
                          {},
                          std::move(fact)});
        events.back().moment = Moment{{1'800'000'000'000 + number}, {}};
    };
    add("Ada", EdgeAdded{invented_eave()});
    add("Ada", no);
    add("Ben", StepLifted{"A", "ground", "wind is down", "Ben"});
    return events;
}

}  // namespace hemline
