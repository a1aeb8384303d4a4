// The record of an invented house whose trim is not bent as in the catalogue.
#pragma once

#include "tests/engine/record/eave_record.h"

namespace hemline {

inline std::vector<Event> sections_record() {
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
    add(JobStarted{"Invented house", "common practice"});
    add(EdgeAdded{invented_eave()});
    const EventId first = add(SectionChosen{"eave_rolled",
                                            {{inches(4), Hem::none, {}},
                                             {inches(5), Hem::none, {}},
                                             {sixteenths(10), Hem::none, microdegrees(-25'500'000)},
                                             {sixteenths(8), Hem::open, half_turn}}});
    add(SectionChosen{"eave_rolled",
                      {{inches(4), Hem::none, {}},
                       {inches(6), Hem::none, {}},
                       {sixteenths(10), Hem::none, microdegrees(-25'500'000)},
                       {sixteenths(8), Hem::closed, half_turn}}},
        {first});
    add(SectionChosen{"gable", {}});
    return events;
}

}  // namespace hemline
