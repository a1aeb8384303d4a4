// Tablets that write separately and meet, each having seen what it holds: what a crew does, without
// a disk.
#pragma once

#include <algorithm>
#include <map>
#include <set>
#include <string>
#include <vector>

#include <doctest/doctest.h>

#include "engine/record/job.h"
#include "engine/record/pick.h"
#include "engine/record/seen.h"
#include "tests/engine/record/eave_record.h"

namespace hemline {

struct ApartCrew {
    std::vector<Event> events;  ///< as they were written
    std::map<std::uint64_t, std::set<std::size_t>> holds = {};
    std::int64_t clock = 1'000;

    [[nodiscard]] std::vector<Event> held_by(std::uint64_t device) const {
        std::vector<Event> held;
        if (const auto found = holds.find(device); found != holds.end()) {
            for (const std::size_t place : found->second) {
                held.push_back(events[place]);
            }
        }
        return in_order(std::move(held));
    }
    /// `supersedes`: besides what was seen about its thing.
    EventId write(std::uint64_t device, Fact fact, const std::string& by = "Ada",
                  std::vector<EventId> supersedes = {}) {
        const auto own = std::count_if(events.begin(), events.end(), [&](const Event& event) {
            return event.id.device == device;
        });
        const std::vector<Event> held = held_by(device);
        Event event{{device, static_cast<std::uint32_t>(own) + 1},
                    {},
                    by,
                    std::move(supersedes),
                    std::move(fact)};
        stamp(event, held, ++clock);
        const std::vector<EventId> seen = Seen(held).of(event);
        event.supersedes.insert(event.supersedes.end(), seen.begin(), seen.end());
        holds[device].insert(events.size());
        events.push_back(event);
        return event.id;
    }
    EventId pick(std::uint64_t device, EventId side) {
        const std::vector<Event> held = held_by(device);
        const Result<ToWrite> picked = hemline::pick(replay(held), held, side);
        REQUIRE(picked.ok());
        return write(device, picked->fact, "Picker " + std::to_string(device), picked->supersedes);
    }
    EventId undo(std::uint64_t device, EventId id) {
        return write(device, StruckFor{id, StrikeReason::undone}, "Ada", {id});
    }
    /// As a program from before the kind Picked wrote it.
    void strike_as_pick(std::uint64_t device, EventId struck, EventId chosen) {
        write(device, Struck{struck, "picked instead"}, "Ada", {struck, chosen});
    }
    void meet(const std::set<std::uint64_t>& devices) {
        std::set<std::size_t> all;
        for (const std::uint64_t device : devices) {
            all.insert(holds[device].begin(), holds[device].end());
        }
        for (const std::uint64_t device : devices) {
            holds[device] = all;
        }
    }
    /// Of all that was written.
    [[nodiscard]] Job job() const { return replay(in_order(events)); }
    [[nodiscard]] Job job_on(std::uint64_t device) const { return replay(held_by(device)); }
};

/// Three tablets that hold a single eave, A.
inline ApartCrew crew_with_edge() {
    ApartCrew crew;
    Edge edge;
    edge.id = "A";
    edge.pitch = rise_in_12(5);
    crew.write(1, EdgeAdded{edge});
    crew.meet({1, 2, 3});
    return crew;
}

/// Piece 1 of edge A.
inline PieceCut cut(Length length) { return {"A", TrimRole::main, 1, length, new_stick}; }

/// What the sides say, in order.
inline std::vector<EventId> values_of(const Conflict& conflict) {
    std::vector<EventId> values;
    std::transform(conflict.sides.begin(), conflict.sides.end(), std::back_inserter(values),
                   [](const Tip& side) { return side.says; });
    return values;
}

}  // namespace hemline
