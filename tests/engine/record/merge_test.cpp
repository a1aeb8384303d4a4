// Merging: any set of journals, in any order, with repeats and gaps, gives one job.
// RC_PARAMS="max_success=1000000" runs a million cases; tools/nightly does.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include "engine/record/merge.h"
#include "tests/engine/record/crew_record.h"
#include "tests/engine/record/same_event.h"

namespace hemline {
namespace {

Journals merged(const std::vector<Bytes>& journals) {
    Merge merge;
    for (const Bytes& journal : journals) {
        merge.add(7, journal);
    }
    return merge.journals();
}

Journals merged(const Journals& a, const Journals& b) {
    Merge merge;
    for (const Journals* one : {&a, &b}) {
        for (const auto& [device, bytes] : one->of_device) {
            merge.add(device, bytes);
        }
        for (const Bytes& stretch : one->damage) {
            merge.add_damage(stretch);
        }
    }
    return merge.journals();
}

std::vector<Event> events_in(const Journals& journals) {
    std::vector<Event> events;
    for (const auto& [device, bytes] : journals.of_device) {
        for (Event& event : read_journal(bytes).events) {
            events.push_back(std::move(event));
        }
    }
    return in_order(std::move(events));
}

/// Some of the journals' bytes: cut off early, or with a byte changed, as a carrier may leave them.
Bytes part_of(Bytes journal) {
    if (!journal.empty() && few(4) == 0) {
        journal.resize(*rc::gen::inRange<std::size_t>(0, journal.size()));
    }
    if (!journal.empty() && few(6) == 0) {
        journal[*rc::gen::inRange<std::size_t>(0, journal.size())] ^= 0x10;
    }
    return journal;
}

TEST_CASE("Merging is commutative, associative and idempotent to the byte, and loses no event") {
    CHECK(rc::check([] {
        const Crew crew = some_crew();
        std::vector<Bytes> parts;
        for (const Tablet& tablet : crew.tablets) {
            const Bytes whole = crew.journal(tablet.device);
            parts.push_back(part_of(whole));
            if (few(2) == 0) {
                parts.push_back(part_of(whole));
            }
        }
        const Journals all = merged(parts);
        // in any order, with repeats
        std::vector<Bytes> mixed = *rc::gen::container<std::vector<Bytes>>(
            static_cast<std::size_t>(few(4)), rc::gen::elementOf(parts));
        std::vector<Bytes> turned(parts.rbegin(), parts.rend());
        mixed.insert(mixed.end(), turned.begin(), turned.end());
        RC_ASSERT(merged(mixed) == all);
        // in any grouping
        const auto middle = *rc::gen::inRange<std::size_t>(0, parts.size() + 1);
        const auto cut = parts.begin() + static_cast<std::ptrdiff_t>(middle);
        const Journals left = merged({parts.begin(), cut}), right = merged({cut, parts.end()});
        RC_ASSERT(merged(left, right) == all);
        RC_ASSERT(merged(right, left) == all);
        RC_ASSERT(merged(all, all) == all);
        // nothing lost, nothing invented
        std::set<Bytes> before, after;
        for (const Bytes& part : parts) {
            for (const Event& event : read_journal(part).events) {
                before.insert(frame_of(event));
            }
        }
        const std::vector<Event> events = events_in(all);
        for (const Event& event : events) {
            after.insert(frame_of(event));
        }
        RC_ASSERT(before == after);
        RC_ASSERT(events.size() == after.size());
    }));
}

TEST_CASE("Conflicts are what no writer had seen, whatever the clocks say") {
    CHECK(rc::check([] {
        const Crew crew = some_crew();
        std::map<Thing, std::vector<std::size_t>> tips;
        for (std::size_t i = 0; i < crew.written.size(); ++i) {
            const Thing thing = thing_of(crew.written[i].fact);
            bool seen = thing.subject == Subject::none;
            for (std::size_t later = 0; later < crew.written.size(); ++later) {
                seen = seen || (crew.had_seen[later].count(i) > 0 &&
                                thing_of(crew.written[later].fact) == thing);
            }
            if (!seen) {
                tips[thing].push_back(i);
            }
        }
        std::map<Thing, std::set<EventId>> expected;
        for (const auto& [thing, all] : tips) {
            const bool same = std::all_of(all.begin(), all.end(), [&, &ends = all](std::size_t i) {
                return describe(crew.written[i].fact) == describe(crew.written[ends[0]].fact);
            });
            if (all.size() > 1 && !(same && thing.subject == Subject::rule)) {
                for (const std::size_t i : all) {
                    expected[thing].insert(crew.written[i].id);
                }
            }
        }
        std::map<Thing, std::set<EventId>> found;
        const std::vector<Event> events = in_order(crew.written);
        for (const Conflict& conflict : find_conflicts(events)) {
            RC_ASSERT(!conflict.number_twice);
            found[conflict.thing] = {conflict.sides.begin(), conflict.sides.end()};
        }
        RC_ASSERT(found == expected);
    }));
}

TEST_CASE("Picking any side, or doing it again having seen all, settles a conflict for good") {
    CHECK(rc::check([] {
        Crew crew = some_crew();
        Tablet judge{99, 0, 0, {}};
        for (std::size_t i = 0; i < crew.written.size(); ++i) {
            judge.holds.insert(i);
        }
        const auto conflicts = find_conflicts(crew.held_by(judge));
        for (const Conflict& conflict : conflicts) {
            const EventId chosen = *rc::gen::elementOf(conflict.sides);
            const std::vector<Event> events = crew.held_by(judge);
            const auto side = std::find_if(events.begin(), events.end(),
                                           [&](const Event& e) { return e.id == chosen; });
            if (few(2) == 0) {
                write(crew, judge, side->fact);
                continue;
            }
            const auto strikes = strikes_to_pick(events, chosen);
            RC_ASSERT(strikes.ok());
            for (const EventId id : *strikes) {
                RC_ASSERT(id != chosen);
                write(crew, judge, Struck{id, "picked"});
            }
        }
        RC_ASSERT(find_conflicts(crew.held_by(judge)).empty());
        RC_ASSERT(replay(crew.held_by(judge)).conflicts.empty());
    }));
}

TEST_CASE("What another version wrote passes through a merge byte for byte") {
    const std::vector<Event> events = eave_record();
    Bytes newer = frame_of(events[0]);
    newer[4] = 3;  // a version to come; its CRC made right
    const std::uint32_t crc =
        crc32_of(std::span(newer).subspan(16), crc32_of(std::span(newer).subspan(4, 8)));
    for (std::size_t i = 0; i < 4; ++i) {
        newer[12 + i] = static_cast<std::uint8_t>(crc >> (8 * i));
    }
    Bytes journal = newer;
    const Bytes rest = journal_of({events.back(), events[1]});
    journal.insert(journal.end(), rest.begin(), rest.end());
    const Journals all = merged({journal, journal});
    CHECK(all.damage.empty());
    REQUIRE(all.of_device.size() == 2);
    CHECK(all.of_device.at(7) == newer);
    CHECK(all.of_device.at(eave_device) == journal_of({events[1], events.back()}));
    CHECK(merged(all, all) == all);
}

TEST_CASE("Damage between events is kept once, aside") {
    const Bytes frames = journal_of(eave_record());
    Bytes journal = {1, 2, 3};
    journal.insert(journal.end(), frames.begin(), frames.end());
    const Journals all = merged({journal, journal, frames});
    CHECK(all.damage == std::set<Bytes>{{1, 2, 3}});
    CHECK(all.of_device.at(eave_device) == frames);
}

TEST_CASE("A device is known by its journal's name") {
    CHECK(device_in_name("3f9c0000a0b1c2d3.journal") == eave_device);
    CHECK(device_in_name("3f9c0000a0b1c2d3-2.journal") == eave_device);
    CHECK(device_in_name("eave.journal") == 0);
    CHECK(device_in_name("3f9c0000a0b1c2d3") == 0);
    CHECK(device_in_name("") == 0);
}

}  // namespace
}  // namespace hemline
