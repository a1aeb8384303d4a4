// The grammar that tests/fuzz/events.cpp draws from reaches every kind there is, in both versions,
// and what it writes is read back.
#include "tests/engine/record/event_grammar.h"

#include <doctest/doctest.h>

#include <set>

#include "engine/record/event_bytes.h"
#include "tests/engine/record/same_event.h"

namespace hemline {
namespace {

/// Bytes that differ from seed to seed: Knuth's MMIX generator (from memory).
std::vector<std::uint8_t> noise(std::uint64_t seed) {
    std::vector<std::uint8_t> bytes(600);
    for (std::uint8_t& byte : bytes) {
        seed = seed * 6364136223846793005U + 1442695040888963407U;
        byte = static_cast<std::uint8_t>(seed >> 56U);
    }
    return bytes;
}

TEST_CASE("The grammar reaches every kind of event, apart and together, and all of it is read") {
    std::set<std::size_t> kinds;
    bool some_moment = false, some_before = false, some_conflict = false, some_struck = false,
         some_cut = false;
    for (std::uint64_t seed = 0; seed < 300; ++seed) {
        const std::vector<std::uint8_t> bytes = noise(seed);
        const std::vector<Event> events = EventGrammar(bytes).events();
        for (const Event& event : events) {
            kinds.insert(event.fact.index());
            (event.moment ? some_moment : some_before) = true;
            const JournalRead read = read_journal(frame_of(event));
            if (!read.set_aside.empty()) {
                FAIL_CHECK(read.set_aside[0].why);
            }
            CHECK(same_events(read.events, {event}));
        }
        const Job job = replay(in_order(events));
        some_conflict = some_conflict || !job.conflicts.empty();
        some_struck = some_struck || !job.struck.empty();
        some_cut = some_cut || job.sticks_opened > 0;
    }
    CHECK(kinds.size() == Fact::kinds);
    CHECK(some_moment);
    CHECK(some_before);
    CHECK(some_conflict);
    CHECK(some_struck);
    CHECK(some_cut);
}

}  // namespace
}  // namespace hemline
