// Events of frame version 2 say what the clock said and what they come after. tests/golden/
// clocks.journal must always open, and clocks.txt is what it gives.
#include <doctest/doctest.h>

#include "engine/record/fact_words.h"
#include "engine/record/frame.h"
#include "engine/record/merge.h"
#include "tests/engine/record/clocks_record.h"
#include "tests/engine/record/golden.h"
#include "tests/engine/record/same_event.h"

namespace hemline {
namespace {

TEST_CASE("The golden journal of clocks gives its lines, its events and its bytes") {
    const std::string text = golden("clocks.journal");
    const Bytes bytes(text.begin(), text.end());
    const JournalRead read = read_journal(bytes);
    CHECK(read.set_aside.empty());
    CHECK(same_events(read.events, clocks_record()));
    CHECK(journal_of(clocks_record()) == bytes);
    std::string lines;
    for (const Event& event : read.events) {
        lines += print_event_id(event.id) + " " + std::to_string(event.when.wall_ms) + "." +
                 std::to_string(event.when.counter) + " at " + std::to_string(wall_time(event).ms) +
                 " " + event.by + ": " + describe(event.fact).english() + "\n";
    }
    CHECK(lines == golden("clocks.txt"));
    CHECK(same_events(in_order({read.events.rbegin(), read.events.rend()}), read.events));
}

TEST_CASE("An event of version 2 laid out by another program is read, and written to its bytes") {
    // Laid out from docs/journal_format.md with Python's struct and zlib.
    const Bytes frame = from_hex(
        "fe48454d02000300530000009e73c37501d3c2b1a000009c3f0c0000007b8844"
        "709e0100000200000000ea78f654010000010700000000000000090000000300"
        "000041646101000000070000000000000009000000010000004100f87dbc3e02"
        "000000");
    Event event{{0x3f9c0000a0b1c2d3U, 12},
                {1'780'000'000'123, 2},
                "Ada",
                {{7, 9}},
                ReadingTaken{"A", ReadingOf::edge, feet(31) + inches(7) + sixteenths(10)}};
    event.moment = Moment{{1'464'424'000'000}, EventId{7, 9}};
    CHECK(frame_of(event) == frame);
    CHECK(same_events(read_journal(frame).events, {event}));
}

TEST_CASE("Both versions stand beside each other in one journal, and merge frame by frame") {
    std::vector<Event> events = clocks_record();
    for (std::size_t i = 0; i < events.size(); i += 2) {
        events[i].moment.reset();
        events[i].when.wall_ms = std::min(events[i].when.wall_ms, wall_ms_most);
    }
    const Bytes journal = journal_of(events);
    const JournalRead read = read_journal(journal);
    CHECK(same_events(read.events, events));
    Merge merge;
    merge.add(1, journal);
    merge.add(1, journal);
    std::vector<Event> merged;
    for (const auto& [device, bytes] : merge.journals().of_device) {
        CHECK((device == eave_device || device == 0x77aa'0000'0000'beefU));  // the frame's device
        for (const Event& event : read_journal(bytes).events) {
            merged.push_back(event);
        }
    }
    CHECK(same_events(in_order(merged), in_order(events)));
}

TEST_CASE("A clock out of range and a moment cut short are refused by name") {
    Event event{{7, 1}, {1000, 0}, "", {}, EdgeFinished{"A", ""}};
    event.moment = Moment{{-1}, {}};
    CHECK(read_journal(frame_of(event)).set_aside[0].why ==
          "an event of kind 10 that this program cannot read (clock: out of range)");
    event.moment = Moment{{1000}, EventId{7, 0}};
    CHECK(read_journal(frame_of(event)).set_aside[0].why ==
          "an event of kind 10 that this program cannot read (after: out of range)");
    event.moment.reset();
    const Bytes before = frame_of(event);
    const Bytes taken_for_two =
        frame_around({2, 10}, std::span(before).subspan(frame_header_size));  // no moment in it
    CHECK(read_journal(taken_for_two).events.empty());
    CHECK(read_journal(frame_around({3, 10}, std::span(before).subspan(frame_header_size)))
              .set_aside[0]
              .why == "written by another version of the program (format 3, this one reads 2)");
}

}  // namespace
}  // namespace hemline
