// The record of an invented house's sticks and choices: an event of every kind about them, every
// field set to something that is not its default.
#pragma once

#include "tests/engine/record/eave_record.h"

namespace hemline {

inline std::vector<Event> sticks_record() {
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
    Edge plain;
    plain.id = "B";
    add(JobStarted{"Invented house", "common practice"});
    add(EdgeAdded{invented_eave()});
    add(EdgeAdded{plain});
    add(StockChosen{{feet(12), feet(10), feet(8)}});
    const EventId counted = add(MetalCounted{"A", TrimRole::wrap, inches(67), 3});
    add(MetalCounted{"A", TrimRole::wrap, inches(67), 2}, {counted});
    const EventId offcuts = add(MetalCounted{"B", TrimRole::main, inches(40), 2});
    add(StickMeasured{"B", TrimRole::main, {feet(12), {}}, feet(9) + inches(11)});
    add(StickMeasured{"B", TrimRole::main, {inches(40), offcuts}, inches(39)});
    add(StickSpoiled{"B", TrimRole::main, {inches(40), offcuts}});
    add(StickSpoiled{"B", TrimRole::cleat, {feet(10), {}}});
    add(SupplyChosen{"A", TrimRole::wrap, Supply::on_hand_only});
    add(LooksChosen{"B", Looks::free});
    add(PlanChosen{Prefer::sticks,
                   "eave_rolled",
                   1,
                   2,
                   9,
                   {{"A", TrimRole::wrap, {feet(10), inches(42)}},
                    {"B", TrimRole::main, {inches(48), feet(10), inches(42)}}}});
    return events;
}

}  // namespace hemline
