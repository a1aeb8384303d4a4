// What is written is read back, and what could not have been written is refused.
#include "engine/record/event_bytes.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <limits>

#include "engine/record/crc32.h"
#include "engine/record/frame.h"
#include "tests/engine/record/answered_record.h"
#include "tests/engine/record/body_record.h"
#include "tests/engine/record/eave_record.h"
#include "tests/engine/record/edge_lap_record.h"
#include "tests/engine/record/gate_record.h"
#include "tests/engine/record/golden.h"
#include "tests/engine/record/lifted_record.h"
#include "tests/engine/record/picked_record.h"
#include "tests/engine/record/same_event.h"
#include "tests/engine/record/sections_record.h"
#include "tests/engine/record/sent_back_record.h"
#include "tests/engine/record/sticks_record.h"
#include "tests/engine/record/struck_for_record.h"
#include "tests/engine/record/taken_off_record.h"

namespace hemline {
namespace {

Bytes bytes_of(std::string_view text) { return {text.begin(), text.end()}; }

/// A payload as the page lays it out, put together by hand.
struct Payload {
    Bytes bytes{1};

    template <class T>
    Payload& number(T value) {
        for (std::size_t i = 0; i < sizeof(T); ++i) {
            bytes.push_back(
                static_cast<std::uint8_t>(static_cast<std::uint64_t>(value) >> (8 * i)));
        }
        return *this;
    }
    Payload& text(std::string_view text) {
        number(static_cast<std::uint32_t>(text.size()));
        bytes.insert(bytes.end(), text.begin(), text.end());
        return *this;
    }
    /// Event 9 of device 7, by nobody, that supersedes nothing.
    Payload& header() {
        return number(std::uint64_t{7})
            .number(std::uint32_t{9})
            .number(std::int64_t{1000})
            .number(std::uint32_t{0})
            .text("")
            .number(std::uint32_t{0});
    }
};

std::string refusal(std::uint16_t kind, const Payload& payload) {
    const auto found = event_in({1, kind}, payload.bytes);
    const auto* why = std::get_if<std::string>(&found);
    return why == nullptr ? "" : *why;
}

constexpr std::uint16_t reading_taken = 3, edge_added = 2;

TEST_CASE("The CRC gives the published check value") {
    // Check value of CRC-32/ISO-HDLC, Catalogue of parametrised CRC algorithms (G. Cook).
    CHECK(crc32_of(bytes_of("123456789")) == 0xCBF43926U);
    // From zlib's crc32() in Python: of one zero byte, and of the bytes 0 to 254.
    CHECK(crc32_of(Bytes{0}) == 0xD202EF8DU);
    Bytes counted(255);
    for (std::size_t i = 0; i < counted.size(); ++i) {
        counted[i] = static_cast<std::uint8_t>(i);
    }
    CHECK(crc32_of(counted) == 0xD32F9BA0U);
    CHECK(crc32_of({}) == 0);
    CHECK(crc32_of({}, 0xD202EF8DU) == 0xD202EF8DU);  // nothing more leaves it as it was
}

TEST_CASE("The CRC of a stretch is the CRC of its bytes") {
    CHECK(rc::check([](const Bytes& bytes, std::uint32_t so_far) {
        const auto from = *rc::gen::inRange<std::size_t>(0, bytes.size() + 1);
        const auto size = *rc::gen::inRange<std::size_t>(0, bytes.size() - from + 1);
        const auto stretch = std::span(bytes).subspan(from, size);
        RC_ASSERT(StretchCrc(bytes).of(from, size, so_far) == crc32_of(stretch, so_far));
    }));
}

TEST_CASE("An event laid out by another program is read, and written to the same bytes") {
    // Laid out from docs/journal_format.md with Python's struct and zlib.
    const Bytes frame = from_hex(
        "fe48454d010003003e00000045984a1201d3c2b1a000009c3f0c0000007b8844"
        "709e010000020000000300000041646101000000070000000000000009000000"
        "010000004100f87dbc3e02000000");
    const Event event{{0x3f9c0000a0b1c2d3U, 12},
                      {1'780'000'000'123, 2},
                      "Ada",
                      {{7, 9}},
                      ReadingTaken{"A", ReadingOf::edge, feet(31) + inches(7) + sixteenths(10)}};
    CHECK(frame_of(event) == frame);
    const JournalRead read = read_journal(frame);
    CHECK(same_events(read.events, {event}));
    CHECK(read.set_aside.empty());
    CHECK(read.whole_size == frame.size());
}

TEST_CASE("Every field of every kind is read back as it was written") {
    std::vector<Event> events = eave_record();
    for (const auto& more :
         {sticks_record(), sections_record(), sent_back_record(), taken_off_record(),
          edge_lap_record(), picked_record(), answered_record(), struck_for_record(),
          lifted_record(), gate_record(), body_record()}) {
        events.insert(events.end(), more.begin(), more.end());
    }
    for (std::size_t kind = 0; kind < Fact::kinds; ++kind) {
        CHECK(std::any_of(events.begin(), events.end(),
                          [&](const Event& event) { return event.fact.index() == kind; }));
    }
    const JournalRead read = read_journal(journal_of(events));
    REQUIRE(read.events.size() == events.size());
    for (std::size_t i = 0; i < events.size(); ++i) {
        CAPTURE(i);
        CHECK(same_event(read.events[i], events[i]));
    }
    CHECK(read.set_aside.empty());
}

TEST_CASE("An edge with nothing stated is read back with nothing stated") {
    const Event event{{1, 1}, {}, "", {}, EdgeAdded{}};
    CHECK(same_events(read_journal(frame_of(event)).events, {event}));
}

TEST_CASE("Any numbers and texts within bounds are read back") {
    CHECK(rc::check([](std::uint64_t device, std::int32_t piece, std::int64_t count) {
        const auto text = [] {
            return *rc::gen::container<std::string>(rc::gen::inRange<char>(1, 127));
        };
        const auto sequence = *rc::gen::inRange<std::uint32_t>(1, 0xFFFF'FFFFU);
        const Length length =
            Length::of_nm(*rc::gen::inRange<std::int64_t>(0, longest_readable().nm() + 1));
        const auto wall = *rc::gen::inRange<std::int64_t>(0, 253'402'300'800'000);
        StepDone step{text(), text(), piece, {AnswerKind::count, length, count, text()},
                      text(), text()};
        const Event event{{device, sequence},
                          {wall, sequence},
                          text(),
                          {{device, sequence}, {count == 0 ? 1U : device, 1}},
                          step};
        RC_ASSERT(same_events(read_journal(frame_of(event)).events, {event}));
    }));
}

TEST_CASE("An event of a kind not known yet keeps its header readable and its bytes untouched") {
    Payload payload;
    payload.header().text("something new").number(std::uint16_t{0xFFFF});
    const Bytes frame = frame_around({1, 4711}, payload.bytes);
    const JournalRead read = read_journal(frame);
    REQUIRE(read.events.size() == 1);
    const auto* unknown = std::get_if<Unknown>(&read.events[0].fact);
    REQUIRE(unknown != nullptr);
    CHECK(unknown->kind == 4711);
    CHECK(read.events[0].id == EventId{7, 9});
    CHECK(read.events[0].when == HybridTime{1000, 0});
    CHECK(frame_of(read.events[0]) == frame);
}

TEST_CASE("A size larger than the bytes left is refused before anything is allocated for it") {
    for (const std::uint32_t size : {5U, 4097U, 0x0010'0000U, 0x7FFF'FFFFU, 0xFFFF'FFFFU}) {
        Payload text;
        text.header().number(size).number(std::uint32_t{0});
        CHECK(refusal(reading_taken, text) == "edge: says it is longer than the event");
        Payload many;
        many.number(std::uint64_t{7})
            .number(std::uint32_t{9})
            .number(std::int64_t{0})
            .number(std::uint32_t{0})
            .text("Ada")
            .number(size);
        CHECK(refusal(reading_taken, many) == "supersedes: says it is longer than the event");
    }
}

TEST_CASE("Bytes after the last field are refused, and so is a field cut short") {
    Payload payload;
    payload.header().text("A").number(std::uint8_t{0}).number(std::int64_t{1});
    CHECK(refusal(reading_taken, payload).empty());
    Payload longer = payload;
    longer.number(std::uint8_t{0});
    CHECK(refusal(reading_taken, longer) == "holds more bytes than its kind has fields");
    for (std::size_t size = 0; size < payload.bytes.size(); ++size) {
        Payload shorter{Bytes(payload.bytes.begin(),
                              payload.bytes.begin() + static_cast<std::ptrdiff_t>(size))};
        CHECK_FALSE(refusal(reading_taken, shorter).empty());
    }
}

TEST_CASE("A choice, a flag, a length and a time out of range are refused by name") {
    const auto reading = [](std::uint8_t of, std::int64_t nm) {
        Payload payload;
        payload.header().text("A").number(of).number(nm);
        return refusal(reading_taken, payload);
    };
    CHECK(reading(1, longest_readable().nm()).empty());
    CHECK(reading(2, 0) == "reading of: no such choice");
    CHECK(reading(0, -1) == "length: out of range");
    CHECK(reading(0, longest_readable().nm() + 1) == "length: out of range");
    CHECK(reading(0, std::numeric_limits<std::int64_t>::min()) == "length: out of range");

    Payload edge;
    edge.header().text("A").number(std::uint8_t{0}).text("").number(std::uint16_t{0});
    edge.number(std::uint8_t{7});  // "pitch" neither there nor not
    CHECK(refusal(edge_added, edge) == "pitch: neither yes nor no");

    Payload time;
    time.number(std::uint64_t{7}).number(std::uint32_t{9}).number(std::int64_t{-1});
    CHECK(refusal(reading_taken, time) == "time: out of range");
    Payload id;
    id.number(std::uint64_t{7}).number(std::uint32_t{0});
    CHECK(refusal(reading_taken, id) == "event id: out of range");
    Payload big_endian;
    big_endian.bytes[0] = 0;
    CHECK(refusal(reading_taken, big_endian) ==
          "does not begin with the mark of little-endian bytes");
}

TEST_CASE("A text is UTF-8 without NUL and at most 4 KiB") {
    const auto named = [](const std::string& edge) {
        Payload payload;
        payload.header().text(edge).number(std::uint8_t{0}).number(std::int64_t{1});
        return refusal(reading_taken, payload);
    };
    CHECK(named(std::string(4096, 'x')).empty());
    CHECK(named(std::string(4097, 'x')) == "edge: longer than 4096 bytes");
    // Unicode 15, table 3-7 (well-formed UTF-8), and the ill-formed ones beside it.
    for (const char* text :
         {"\xC3\xBC", "\xE2\x80\xB3", "\xED\x9F\xBF", "\xF0\x9F\x8F\xA0", "\xF4\x8F\xBF\xBF"}) {
        CHECK(named(text).empty());
    }
    for (const char* text : {"\x80", "\xC0\x80", "\xC3", "\xE0\x9F\xBF", "\xED\xA0\x80",
                             "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xFE", "a\xFF"}) {
        CHECK(named(text) == "edge: not UTF-8 text");
    }
    CHECK(named(std::string(1, '\0')) == "edge: not UTF-8 text");
}

TEST_CASE("Any payload of any kind is an event or refused, never more than it says") {
    CHECK(rc::check([](const Bytes& noise) {
        const PayloadKind of{*rc::gen::element<std::uint16_t>(1, 2),
                             *rc::gen::inRange<std::uint16_t>(0, 46)};
        Bytes payload{1};
        payload.insert(payload.end(), noise.begin(), noise.end());
        const auto found = event_in(of, payload);
        if (const auto* event = std::get_if<Event>(&found)) {
            RC_ASSERT(frame_of(*event) == frame_around(of, payload));
        }
    }));
}

TEST_CASE(
    "Any one byte of a payload changed is another event or refused, and written back as read") {
    for (const Event& event : eave_record()) {
        const Bytes frame = frame_of(event);
        const PayloadKind of = header_at(frame).of;
        Bytes payload(frame.begin() + frame_header_size, frame.end());
        for (std::size_t i = 0; i < payload.size(); ++i) {
            for (const int value : {0, 1, 2, 9, 0x7F, 0x80, 0xFF}) {
                Bytes changed = payload;
                changed[i] = static_cast<std::uint8_t>(value);
                const auto found = event_in(of, changed);
                if (const auto* other = std::get_if<Event>(&found)) {
                    CHECK(frame_of(*other) == frame_around(of, changed));
                }
            }
        }
    }
}

}  // namespace
}  // namespace hemline
