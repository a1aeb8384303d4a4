// A time years away locks nothing: whatever times a job's events state, another can be written, is
// read back, comes after all that its tablet held, and merges.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>

#include "engine/record/event_bytes.h"
#include "engine/record/job.h"
#include "engine/work/day_sheet.h"
#include "tests/engine/record/crew_record.h"
#include "tests/engine/record/hours.h"
#include "tests/engine/record/same_event.h"

namespace hemline {
namespace {

constexpr std::int64_t today_ms = 1'780'000'000'000, ten_years_ms = 315'576'000'000;
constexpr std::uint32_t counter_most = 0xFFFF'FFFFU;

/// A reading by a tablet that holds those events, as a tablet writes it.
Event written(std::uint64_t device, std::uint32_t sequence, const std::vector<Event>& held,
              std::int64_t clock_ms) {
    // Each reading has another length: readings of the same length would agree, seen or not.
    const Length length = feet(10) + sixteenths(sequence);
    Event event{{device, sequence}, {}, "Ada", {}, ReadingTaken{"A", ReadingOf::edge, length}};
    stamp(event, held, clock_ms);
    event.supersedes = Seen(held).of(event);
    return event;
}

bool is_read_back(const Event& event) {
    return same_events(read_journal(frame_of(event)).events, {event});
}

/// A crew's events, some of them with times that no clock gives, of either version.
std::vector<Event> with_hostile_times(std::vector<Event> events) {
    for (Event& event : events) {
        if (few(3) == 0) {
            event.moment = few(2) == 0 ? std::nullopt : event.moment;
            event.when.wall_ms = wall_ms_most + (event.moment ? few(2) : 0);
            event.when.counter = counter_most - static_cast<std::uint32_t>(few(2));
        }
    }
    return in_order(std::move(events));
}

TEST_CASE("After any event that can be read another one can be written, by anybody, for ever") {
    const std::vector<std::pair<HybridTime, bool>> latest = {
        {{wall_ms_most, counter_most}, false},  // the last of version 1
        {{wall_ms_most, counter_most}, true},
        {{wall_ms_most + 1, counter_most - 1}, true},
        {time_last, true}};
    for (const auto& [when, has_moment] : latest) {
        Event hostile{{99, counter_most}, when, "Hal", {}, EdgeFinished{"B", ""}};
        if (has_moment) {
            hostile.moment = Moment{{wall_ms_most}, {}};
        }
        REQUIRE(is_read_back(hostile));
        // Tablets of higher and lower numbers take turns.
        std::vector<Event> held{hostile};
        for (std::uint32_t turn = 1; turn <= 20; ++turn) {
            held.push_back(written(turn % 2 == 0 ? 7 : 500, turn, held, today_ms));
            CHECK(is_read_back(held.back()));
            CHECK(same_events(in_order(held), held));
        }
        std::vector<Event> turned(held.rbegin(), held.rend());
        CHECK(same_events(in_order(turned), held));
        CHECK(standing_of(held).conflicts.empty());  // each had seen all before
    }
}

TEST_CASE("A time that nothing can follow is refused by its name, and no other is") {
    Event event{{7, 1}, {wall_ms_most + 2, 0}, "", {}, EdgeFinished{"A", ""}};
    event.moment = Moment{{today_ms}, {}};
    const JournalRead late = read_journal(frame_of(event));
    CHECK(late.events.empty());
    REQUIRE(late.set_aside.size() == 1);
    CHECK(late.set_aside[0].why ==
          "an event of kind 10 that this program cannot read (time: out of range)");
    event.moment.reset();
    event.when = {wall_ms_most + 1, 0};
    CHECK_FALSE(is_read_back(event));  // version 1 ends with the year 9999
    event.when = {wall_ms_most, counter_most};
    CHECK(is_read_back(event));
    event.moment = Moment{{wall_ms_most + 1}, {}};
    CHECK_FALSE(is_read_back(event));  // no clock says so
}

TEST_CASE("A clock before 1970 or past the year 9999 takes nothing from what can be written") {
    for (const std::int64_t clock : {INT64_MIN, std::int64_t{-1}, wall_ms_most + 1, INT64_MAX}) {
        CHECK(is_read_back(written(7, 1, {}, clock)));
        CHECK(is_read_back(written(7, 2, {written(7, 1, {}, clock)}, clock)));
    }
}

TEST_CASE("Whatever times events state, the order is one, and a new event stands last in it") {
    CHECK(rc::check([] {
        const std::vector<Event> all = with_hostile_times(some_crew().written);
        std::vector<Event> turned(all.rbegin(), all.rend());
        turned.insert(turned.end(), all.begin(), all.end());
        RC_ASSERT(same_events(in_order(turned), all));
        std::vector<Event> held = all;
        for (std::uint32_t turn = 1; turn <= 4; ++turn) {
            const std::uint64_t device = static_cast<std::uint64_t>(1 + few(60));
            held.push_back(written(device, 100 + turn, held, today_ms));
            RC_ASSERT(is_read_back(held.back()));
            RC_ASSERT(same_events(in_order(held), held));
        }
    }));
}

TEST_CASE("Events that say they come after one another in a circle have an order all the same") {
    std::vector<Event> events;
    for (std::uint32_t i = 0; i < 5; ++i) {
        events.push_back({{7, i + 1}, time_last, "", {}, EdgeFinished{"A", ""}});
        events.back().moment = Moment{{today_ms}, EventId{7, (i + 1) % 5 + 1}};
    }
    events.push_back({{8, 1}, time_last, "", {}, EdgeFinished{"A", ""}});
    events.back().moment = Moment{{today_ms}, EventId{8, 1}};  // after itself
    const std::vector<Event> ordered = in_order(events);
    CHECK(ordered.size() == events.size());
    std::vector<Event> turned(events.rbegin(), events.rend());
    CHECK(same_events(in_order(turned), ordered));
    const Event next = written(1, 1, ordered, today_ms);
    std::vector<Event> with_next = ordered;
    with_next.push_back(next);
    CHECK(same_events(in_order(with_next), with_next));
}

TEST_CASE("A hundred thousand events after the last time are put in order at once" *
          doctest::test_suite("long")) {
    std::vector<Event> events;
    Event last{{1, 1}, time_last, "", {}, EdgeFinished{"A", ""}};
    last.moment = Moment{};
    for (std::uint32_t i = 0; i < 100'000; ++i) {
        events.push_back(last);
        last.id = {1 + (i * 7) % 5, i + 2};
        last.moment->after = events.back().id;
    }
    std::vector<Event> turned(events.rbegin(), events.rend());
    CHECK(same_events(in_order(turned), events));
}

/// Hal's tablet is ten years ahead; Ada and Ben take his reading in and write on, today.
struct AheadCrew {
    std::vector<Event> events;

    AheadCrew() {
        Edge edge;
        edge.id = "A";
        add(1, "Ada", today_ms - day_ms, JobStarted{"Boathouse", ""});
        add(1, "Ada", today_ms - day_ms, EdgeAdded{edge});
        add(3, "Hal", today_ms + ten_years_ms, ReadingTaken{"A", ReadingOf::edge, feet(10)});
        add(1, "Ada", today_ms, ReadingTaken{"A", ReadingOf::edge, feet(10)});
        add(2, "Ben", today_ms + hour_ms,
            PieceCut{"A", TrimRole::main, 1, feet(10), {feet(10), {}}});
    }
    void add(std::uint64_t device, const std::string& by, std::int64_t clock_ms, Fact fact) {
        const auto sequence = static_cast<std::uint32_t>(events.size() + 1);
        Event event{{device, sequence}, {}, by, {}, std::move(fact)};
        stamp(event, events, clock_ms);
        event.supersedes = Seen(events).of(event);
        events.push_back(std::move(event));
    }
};

TEST_CASE("A tablet ten years ahead changes nobody's day: the sheet of today lists today's work") {
    const AheadCrew crew;
    REQUIRE(same_events(in_order(crew.events), crew.events));
    CHECK(crew.events.back().when.wall_ms > today_ms + ten_years_ms - 1);  // raised, as it must be
    CHECK(wall_time(crew.events.back()) == WallTime{today_ms + hour_ms});
    const Job job = replay(crew.events);
    const DaySheet today =
        day_sheet(job, crew.events, {today_ms - hour_ms, today_ms + 2 * hour_ms});
    REQUIRE(today.people.size() == 2);
    CHECK(today.people[0].name == "Ada");
    CHECK(today.people[0].readings == 1);
    CHECK(today.people[1].name == "Ben");
    CHECK(today.people[1].cut == 1);
    CHECK(parts_of(today)[1].lines[0].clock == WallTime{today_ms + hour_ms});
    CHECK(job.edges[0].readings[0].clock == WallTime{today_ms + ten_years_ms});
    CHECK(job.edges[0].readings[1].clock == WallTime{today_ms});
}

}  // namespace
}  // namespace hemline
