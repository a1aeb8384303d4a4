// What had seen what: by the numbers of a device, and without quadratic time, at sizes where it
// would take minutes.
#include "engine/record/descent.h"

#include <doctest/doctest.h>

#include "engine/record/job.h"
#include "engine/record/pick.h"
#include "engine/record/seen.h"
#include "engine/record/standing.h"
#include "engine/words/result.h"

namespace hemline {
namespace {

constexpr std::uint32_t many = 300'000;  // its square is 9 · 10^10 comparisons

Event reading(EventId id, std::int64_t ms, std::vector<EventId> supersedes = {}) {
    return {id,
            {ms, 0},
            "Ada",
            std::move(supersedes),
            ReadingTaken{"A", ReadingOf::edge, inches(static_cast<std::int64_t>(id.device % 99))}};
}

/// Readings of as many tablets, none of which had seen another.
std::vector<Event> all_apart() {
    Edge edge;
    edge.id = "A";
    std::vector<Event> events = {{{1, 1}, {0, 0}, "", {}, EdgeAdded{edge}}};
    for (std::uint32_t i = 0; i < many; ++i) {
        events.push_back(reading({i + 2, 1}, i + 1));
    }
    return events;
}

std::vector<EventId> ids_of(std::span<const Event> events) {
    std::vector<EventId> ids;
    for (const Event& event : events) {
        ids.push_back(event.id);
    }
    return ids;
}

TEST_CASE(
    "A device's sequence is its own up to the number that was copied, and not from there on") {
    std::vector<Event> events;
    for (const std::uint32_t number : {1U, 2U, 3U, 3U, 4U, 5U}) {  // 3 on both, then each goes on
        events.push_back(reading({7, number}, static_cast<std::int64_t>(events.size())));
    }
    const Descent descent(events, {0, 1, 2, 3, 4, 5}, first_numbers_twice(events));
    CHECK_FALSE(descent.own_before(0));
    CHECK(descent.own_before(1) == 0);
    for (const std::size_t after : {2U, 3U, 4U, 5U}) {
        CHECK(descent.own_before(after) == 1);
    }
    CHECK(descent.tips_among({0, 1, 2, 3, 4, 5}) == std::vector<std::size_t>{2, 3, 4, 5});
}

TEST_CASE("Who took an offcut up had seen the event that left it") {
    const MetalTaken offcut{{}, EventId{7, 1}};
    for (const Fact& fact : {Fact(StickMeasured{"A", TrimRole::main, offcut, feet(2)}),
                             Fact(StickSpoiled{"A", TrimRole::main, offcut})}) {
        const std::vector<Event> events = {
            {{7, 1}, {1, 0}, "", {}, MetalCounted{"A", TrimRole::main, feet(3), 1}},
            {{8, 1}, {2, 0}, "", {}, fact}};
        CHECK(Descent(events, {0, 1}, {}).named_at(1) == std::vector<std::size_t>{0});
    }
}

TEST_CASE("One event that supersedes all others of its thing is no work of a square" *
          doctest::test_suite("large")) {
    std::vector<Event> events = all_apart();
    CHECK(standing_of(events).conflicts.at(0).sides.size() == many);
    events.push_back(reading({1, 2}, many + 1, ids_of(events)));
    CHECK(standing_of(events).conflicts.empty());
    Event next = reading({1, 3}, many + 2);
    Seen seen(events);
    CHECK(seen.of(next) == std::vector<EventId>{{1, 2}});
    next.supersedes = ids_of(events);
    CHECK(seen.of(next).empty());  // it names them all
    seen.add(next);
    CHECK(seen.of(reading({1, 4}, many + 3)) == std::vector<EventId>{{1, 3}});
    CHECK(replay(events).edges[0].readings.size() == many + 1);
}

TEST_CASE("A pick among all that many is no work of a square, and crosses out the rest" *
          doctest::test_suite("long")) {
    std::vector<Event> events = all_apart();
    const EventId chosen = events.back().id;
    const Result<ToWrite> picked = pick(replay(events), events, chosen);
    REQUIRE(picked);
    events.push_back({{1, 2}, {many + 1, 0}, "", ids_of(events), picked->fact});
    const Standing standing = standing_of(events);
    CHECK(standing.conflicts.empty());
    CHECK(standing.struck.count(chosen) == 0);
    // Those that say the same agree with it; there are 99 lengths.
    CHECK(standing.struck.size() > many - many / 90);
}

TEST_CASE("Of more than can be named the latest are, and picks go on until all is settled" *
          doctest::test_suite("long")) {
    std::vector<Event> events = all_apart();
    events.resize(10'000);
    const Event next = reading({1, 2}, many);
    const Seen seen(events);
    const std::vector<EventId> named = seen.of(next);
    REQUIRE(named.size() == supersedes_most);
    CHECK(named.back() == events.back().id);
    std::uint32_t picks = 0;
    for (Job job = replay(events); !job.conflicts.empty(); job = replay(events)) {
        const Result<ToWrite> picked = pick(job, events, job.conflicts[0].sides.back().id);
        REQUIRE(picked);
        Event event{{1, ++picks + 1}, {many + picks, 0}, "", picked->supersedes, picked->fact};
        const std::vector<EventId> seen = Seen(events).of(event);
        event.supersedes.insert(event.supersedes.end(), seen.begin(), seen.end());
        CHECK(event.supersedes.size() <= supersedes_most);
        events.push_back(event);
        REQUIRE(picks < 5);
    }
    CHECK(picks == 3);
}

TEST_CASE("A number that stands for many events, named by many, is no work of a square" *
          doctest::test_suite("long")) {
    std::vector<Event> events;
    for (std::uint32_t i = 0; i < many / 2; ++i) {
        events.push_back(reading({7, 7}, i));
    }
    for (std::uint32_t i = 0; i < many / 2; ++i) {
        events.push_back(reading({i + 10, 1}, many + i, {{7, 7}}));
    }
    const Standing standing = standing_of(events);
    CHECK(standing.conflicts.size() == 2);  // the number, and everything that disagrees
}

TEST_CASE("Old picks, losses and cuts by the hundred thousand are no work of a square" *
          doctest::test_suite("long")) {
    const MetalTaken stick{feet(10), {}};
    std::vector<Event> events;
    for (std::uint32_t i = 1; i <= many / 3; ++i) {
        events.push_back(
            {{i, 1}, {i, 0}, "", {}, RuleSet{"lap", std::to_string(i % 9 + 1) + " in"}});
        events.push_back(
            {{i, 2}, {i, 1}, "", {}, PieceCut{"A", TrimRole::main, 1, feet(5), stick}});
    }
    for (std::uint32_t i = 2; i <= many / 3; ++i) {  // a chain: each lost to the pick before
        const EventId lost{i, 1}, won{i - 1, 1};
        events.push_back({{i, 3}, {many + i, 0}, "", {lost, won}, Struck{lost, ""}});
        events.push_back({{i, 4},
                          {many + i, 1},
                          "",
                          {{i, 2}},
                          PieceSpoiled{"A", TrimRole::main, 1, feet(5), stick}});
    }
    const Standing standing = standing_of(events);
    CHECK(standing.struck.size() == many / 3 - 1);
    CHECK(standing.spoiled_cuts.size() == many / 3 - 1);
    CHECK(standing.conflicts.empty());
}

}  // namespace
}  // namespace hemline
