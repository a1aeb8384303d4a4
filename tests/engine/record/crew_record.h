// Invented crews: up to five tablets that write, read from each other, are copied, and whose clocks
// are up to ten years wrong. What each has seen is kept beside, so that a test can judge without
// looking at what events supersede.
#pragma once

#include <algorithm>
#include <set>
#include <vector>

#include <rapidcheck.h>

#include "engine/record/job.h"
#include "engine/record/merge.h"
#include "tests/engine/record/eave_record.h"

namespace hemline {

struct Tablet {
    std::uint64_t device = 0;
    std::uint32_t sequence = 0;
    std::int64_t clock_ms = 0;
    std::set<std::size_t> holds;  ///< indices of Crew::written
};

struct Crew {
    std::vector<Tablet> tablets;
    std::vector<Event> written;
    std::vector<std::set<std::size_t>> had_seen;  ///< what its writer held, for each event

    [[nodiscard]] std::vector<Event> held_by(const Tablet& tablet) const {
        std::vector<Event> events;
        for (const std::size_t index : tablet.holds) {
            events.push_back(written[index]);
        }
        return in_order(std::move(events));
    }
    [[nodiscard]] Bytes journal(std::uint64_t device) const {
        std::vector<Event> own;
        for (const Event& event : written) {
            if (event.id.device == device) {
                own.push_back(event);
            }
        }
        return journal_of(own);
    }
};

inline int few(int most) { return *rc::gen::inRange(0, most); }

/// A fact about one of two edges, so that tablets meet.
inline Fact some_fact() {
    const std::string edge = few(2) == 0 ? "A" : "B";
    switch (few(8)) {
        case 0:
            return PitchTaken{edge, rise_in_12(4 + few(3))};
        case 1:
            return StepDone{edge, "fasten", 1, {}, "", ""};
        case 2:
            return EdgeFinished{edge, ""};
        case 3:
            return RuleSet{"lap", few(2) == 0 ? "4 in" : "6 in"};
        case 4:
            return PieceCut{edge, TrimRole::main, 1, inches(60 + few(3)), {feet(10), {}}};
        case 5:
            return Unknown{60'000, {static_cast<std::uint8_t>(few(256))}};
        default:
            return ReadingTaken{edge, ReadingOf::edge, inches(120) + sixteenths(few(3))};
    }
}

inline void write(Crew& crew, Tablet& tablet, Fact fact) {
    const std::vector<Event> held = crew.held_by(tablet);
    tablet.clock_ms += few(3);
    Event event{
        {tablet.device, ++tablet.sequence}, {}, "Ada", Seen(held).of(fact), std::move(fact)};
    stamp(event, held, tablet.clock_ms);
    crew.had_seen.push_back(tablet.holds);
    tablet.holds.insert(crew.written.size());
    crew.written.push_back(std::move(event));
}

inline Crew some_crew() {
    constexpr std::int64_t ten_years_ms = 315'576'000'000;
    constexpr std::int64_t today_ms = 1'780'000'000'000;
    Crew crew;
    crew.tablets.resize(static_cast<std::size_t>(2 + few(4)));
    for (std::size_t i = 0; i < crew.tablets.size(); ++i) {
        crew.tablets[i].device = 11 * (i + 1);
        crew.tablets[i].clock_ms =
            today_ms + *rc::gen::inRange<std::int64_t>(-ten_years_ms, ten_years_ms);
    }
    const auto any = [&]() -> Tablet& {
        return crew.tablets[static_cast<std::size_t>(few(static_cast<int>(crew.tablets.size())))];
    };
    for (int turns = 4 + few(14); turns > 0; --turns) {
        if (few(3) > 0) {
            write(crew, any(), some_fact());
            continue;
        }
        Tablet& reader = any();
        const Tablet& other = any();
        reader.holds.insert(other.holds.begin(), other.holds.end());
    }
    return crew;
}

}  // namespace hemline
