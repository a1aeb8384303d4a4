// One order on every tablet, time that never runs backwards, and what undo strikes.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <limits>

#include "engine/record/job.h"
#include "engine/record/standing.h"
#include "tests/engine/record/eave_record.h"
#include "tests/engine/record/same_event.h"

namespace hemline {
namespace {

/// Few devices, numbers and times, so that ties happen.
std::vector<Event> some_events() {
    const auto few = [](int most) { return *rc::gen::inRange<int>(0, most); };
    std::vector<Event> events(static_cast<std::size_t>(few(12)));
    for (Event& event : events) {
        event.id = {static_cast<std::uint64_t>(few(3)), static_cast<std::uint32_t>(1 + few(4))};
        event.when = {few(4), static_cast<std::uint32_t>(few(2))};
        event.fact = EdgeFinished{few(2) == 0 ? "A" : "B", ""};
    }
    return events;
}

std::vector<Event> joined(std::vector<Event> a, const std::vector<Event>& b) {
    a.insert(a.end(), b.begin(), b.end());
    return a;
}

HybridTime time_after(const std::vector<Event>& held, std::int64_t wall_ms) {
    Event event;
    stamp(event, held, wall_ms);
    return event.when;
}

TEST_CASE("Which tablet's events are read first, and how often, changes nothing") {
    CHECK(rc::check([] {
        const std::vector<Event> a = some_events(), b = some_events(), c = some_events();
        const std::vector<Event> all = in_order(joined(joined(a, b), c));
        RC_ASSERT(same_events(all, in_order(joined(c, joined(b, a)))));
        RC_ASSERT(same_events(all, in_order(joined(in_order(joined(a, b)), joined(c, a)))));
        RC_ASSERT(same_events(all, in_order(all)));
        for (const Event& event : joined(joined(a, b), c)) {  // nothing is lost
            RC_ASSERT(std::any_of(all.begin(), all.end(),
                                  [&](const Event& kept) { return same_event(kept, event); }));
        }
        RC_ASSERT(std::is_sorted(all.begin(), all.end(), [](const Event& x, const Event& y) {
            return std::tie(x.when, x.id) < std::tie(y.when, y.id);
        }));
    }));
}

TEST_CASE("The next time is past the clock and past all that was seen, however wrong the clock") {
    CHECK(rc::check([](std::int32_t wall) {
        const std::vector<Event> seen = in_order(some_events());
        const HybridTime next = time_after(seen, wall);
        for (const Event& event : seen) {
            RC_ASSERT(event.when < next);
        }
        RC_ASSERT(next.wall_ms >= wall);
    }));
    Event last;
    last.when = {1000, std::numeric_limits<std::uint32_t>::max()};
    CHECK(time_after({last}, 5) == HybridTime{1001, 0});
    CHECK(time_after({last}, 2000) == HybridTime{2000, 0});
    CHECK(time_after({}, 7) == HybridTime{7, 0});
}

TEST_CASE("Undo strikes this device's last event that stands, and never a strike") {
    const auto event = [](std::uint64_t device, std::uint32_t sequence, Fact fact) {
        return Event{{device, sequence}, {sequence, 0}, "", {}, std::move(fact)};
    };
    std::vector<Event> events{event(1, 1, EdgeFinished{"A", ""}),
                              event(1, 2, EdgeFinished{"B", ""}),
                              event(2, 1, EdgeFinished{"C", ""})};
    const auto undo_by = [&](std::uint64_t device) {
        return undo_target(events, standing_of(events).struck, device);
    };
    CHECK(undo_by(1) == EventId{1, 2});
    CHECK(undo_by(2) == EventId{2, 1});
    CHECK_FALSE(undo_by(3));
    events.push_back(event(1, 3, Struck{{1, 2}, ""}));
    CHECK(undo_by(1) == EventId{1, 1});
    events.push_back(event(2, 2, Struck{{1, 1}, ""}));
    CHECK_FALSE(undo_by(1));
}

}  // namespace
}  // namespace hemline
