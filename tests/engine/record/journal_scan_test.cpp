// Whatever happens to a journal's bytes, every event that is whole is read, and nothing else.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <chrono>

#include "engine/record/event_bytes.h"
#include "engine/record/frame.h"
#include "tests/engine/record/eave_record.h"
#include "tests/engine/record/same_event.h"

namespace hemline {
namespace {

/// Where each event's frame ends.
std::vector<std::size_t> ends_of(const std::vector<Event>& events) {
    std::vector<std::size_t> ends;
    std::size_t end = 0;
    for (const Event& event : events) {
        ends.push_back(end += frame_of(event).size());
    }
    return ends;
}

std::vector<Event> without(std::vector<Event> events, std::size_t index) {
    events.erase(events.begin() + static_cast<std::ptrdiff_t>(index));
    return events;
}

/// Events and stretches set aside cover every byte once.
bool accounts_for_every_byte(const JournalRead& read, std::size_t size) {
    std::size_t counted = 0;
    for (const Event& event : read.events) {
        counted += frame_of(event).size();
    }
    for (const SetAside& stretch : read.set_aside) {
        counted += stretch.size;
    }
    return counted == size;
}

TEST_CASE("A journal cut at any byte gives every whole event before the cut, and nothing else") {
    const std::vector<Event> events = eave_record();
    const Bytes whole = journal_of(events);
    const std::vector<std::size_t> ends = ends_of(events);
    for (std::size_t cut = 0; cut <= whole.size(); ++cut) {
        CAPTURE(cut);
        const auto left = std::upper_bound(ends.begin(), ends.end(), cut) - ends.begin();
        const std::size_t whole_size = left == 0 ? 0 : ends[static_cast<std::size_t>(left - 1)];
        const JournalRead read = read_journal(std::span(whole).first(cut));
        REQUIRE(same_events(read.events, {events.begin(), events.begin() + left}));
        CHECK(read.whole_size == whole_size);
        if (cut == whole_size) {
            CHECK(read.set_aside.empty());
        } else {
            REQUIRE(read.set_aside.size() == 1);
            CHECK(read.set_aside[0].offset == whole_size);
            CHECK(read.set_aside[0].size == cut - whole_size);
            CHECK(read.set_aside[0].why.english().find("torn") == 0);
        }
    }
}

TEST_CASE("Any one bit flipped costs the event it stands in, and no other value changes") {
    const std::vector<Event> events = eave_record();
    const Bytes whole = journal_of(events);
    const std::vector<std::size_t> ends = ends_of(events);
    for (std::size_t bit = 0; bit < whole.size() * 8; ++bit) {
        CAPTURE(bit);
        Bytes damaged = whole;
        damaged[bit / 8] = static_cast<std::uint8_t>(damaged[bit / 8] ^ (1U << (bit % 8)));
        const auto hit = std::upper_bound(ends.begin(), ends.end(), bit / 8) - ends.begin();
        const JournalRead read = read_journal(damaged);
        REQUIRE(same_events(read.events, without(events, static_cast<std::size_t>(hit))));
        REQUIRE(read.set_aside.size() == 1);
        CHECK(accounts_for_every_byte(read, damaged.size()));
    }
}

TEST_CASE("Bytes lost or put in anywhere cost at most the two events they touch") {
    const std::vector<Event> events = eave_record();
    const Bytes whole = journal_of(events);
    CHECK(rc::check([&](const Bytes& noise) {
        const auto from = *rc::gen::inRange<std::size_t>(0, whole.size());
        const auto lost =
            *rc::gen::inRange<std::size_t>(0, std::min<std::size_t>(40, whole.size() - from));
        Bytes damaged(whole.begin(), whole.begin() + static_cast<std::ptrdiff_t>(from));
        damaged.insert(damaged.end(), noise.begin(), noise.end());
        damaged.insert(damaged.end(), whole.begin() + static_cast<std::ptrdiff_t>(from + lost),
                       whole.end());
        const JournalRead read = read_journal(damaged);
        RC_ASSERT(read.events.size() + 2 >= events.size());
        RC_ASSERT(accounts_for_every_byte(read, damaged.size()));
        for (const Event& event : read.events) {
            RC_ASSERT(same_event(event, events[event.id.sequence - 1]));
        }
    }));
}

TEST_CASE("Random bytes give no event and are all set aside") {
    CHECK(rc::check([](const Bytes& noise) {
        const JournalRead read = read_journal(noise);
        RC_ASSERT(read.events.empty());
        RC_ASSERT(read.whole_size == 0U);
        RC_ASSERT(accounts_for_every_byte(read, noise.size()));
    }));
}

TEST_CASE("A frame of another version is set aside whole, and what follows it is read") {
    const std::vector<Event> events = eave_record();
    Bytes newer = frame_of(events[0]);
    newer[4] = 3;
    const std::uint32_t crc =
        crc32_of(std::span(newer).subspan(frame_header_size), header_crc(newer));
    for (std::size_t i = 0; i < 4; ++i) {
        newer[12 + i] = static_cast<std::uint8_t>(crc >> (8 * i));
    }
    Bytes bytes = newer;
    const Bytes known = frame_of(events[1]);
    bytes.insert(bytes.end(), known.begin(), known.end());
    bytes.insert(bytes.end(), newer.begin(), newer.end());
    const JournalRead read = read_journal(bytes);
    CHECK(same_events(read.events, {events[1]}));
    REQUIRE(read.set_aside.size() == 2);
    CHECK(read.set_aside[0].size == newer.size());
    CHECK(read.set_aside[0].why ==
          "written by another version of the program (format 3, this one reads 2)");
    CHECK(read.whole_size == bytes.size());  // it is whole: not to be cut off as a torn tail
}

TEST_CASE("A frame that checks out and cannot be read is set aside and says why") {
    const JournalRead read = read_journal(frame_around({1, 3}, Bytes{1, 2, 3}));
    CHECK(read.events.empty());
    REQUIRE(read.set_aside.size() == 1);
    CHECK(read.set_aside[0].why.english().find(
              "an event of kind 3 that this program cannot read (") == 0);
    CHECK(read.whole_size == frame_header_size + 3);
}

TEST_CASE("A payload of 1 MiB is read, and a longer one is not believed") {
    Event event{{1, 1}, {5, 0}, "", {}, Unknown{500, {}}};
    const std::size_t header = frame_of(event).size() - frame_header_size;
    std::get<Unknown>(event.fact).payload.assign(frame_payload_most - header, 0x55);
    CHECK(same_events(read_journal(frame_of(event)).events, {event}));
    std::get<Unknown>(event.fact).payload.push_back(0x55);
    const JournalRead read = read_journal(frame_of(event));
    CHECK(read.events.empty());
    CHECK(read.set_aside.size() == 1);
}

TEST_CASE(
    "A hundred thousand false beginnings, each claiming up to 1 MiB, are looked through in "
    "seconds") {
    Bytes hostile;
    while (hostile.size() < (std::size_t{2} << 20)) {
        hostile.insert(hostile.end(), {0xFE, 'H', 'E', 'M', 1, 0, 3, 0, 0, 0, 0xF, 0, 9, 9, 9, 9});
    }
    const std::vector<Event> events = eave_record();
    const Bytes real = journal_of(events);
    hostile.insert(hostile.end(), real.begin(), real.end());
    const auto begun = std::chrono::steady_clock::now();
    CHECK(same_events(read_journal(hostile).events, events));
    // One CRC after the other over what each claims would be over 100 GB, minutes at the least.
    CHECK(std::chrono::steady_clock::now() - begun < std::chrono::seconds(20));
}

TEST_CASE("A whole frame inside the bytes of an unknown event is not taken for an event") {
    const Event inner{{1, 1}, {5, 0}, "Ada", {}, EdgeFinished{"A", ""}};
    const Event outer{{1, 2}, {6, 0}, "Ada", {}, Unknown{999, frame_of(inner)}};
    CHECK(same_events(read_journal(frame_of(outer)).events, {outer}));
}

}  // namespace
}  // namespace hemline
