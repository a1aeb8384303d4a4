// Events as bytes: a checked frame around a cereal payload. docs/journal_format.md describes it.
//
//   | magic 4 | version 2 | kind 2 | length 4 | crc 4 | payload (length bytes) |
//   all little endian; crc: CRC-32 (ISO-HDLC) over version…length and the payload; length ≤ 1 MiB
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <variant>
#include <vector>

#include "engine/record/bytes.h"
#include "engine/record/event.h"
#include "engine/words/result_declared.h"
#include "engine/words/text.h"

namespace hemline {

constexpr std::size_t frame_header_size = 16;
constexpr std::uint32_t frame_payload_most = 1U << 20U;

/// What a frame says of its payload: 2 with the writer's moment, 1 without.
struct PayloadKind {
    std::uint16_t version = 0;
    std::uint16_t kind = 0;
};

/// The whole frame of an event, of the version it was read from. What the format cannot hold (a
/// text over 4 KiB or not UTF-8, a length past longest_readable(), a list longer than its most) is
/// written and would be refused on reading: read it back before it is kept.
Bytes frame_of(const Event& event);

/// The event in a payload whose frame has checked out and whose version is known, or why it is not
/// an event: "edge: not UTF-8 text".
std::variant<Event, std::string> event_in(PayloadKind of, std::span<const std::uint8_t> payload);

/// Stretch of a journal that holds no event this program can read: kept aside, never dropped.
struct SetAside {
    std::size_t offset = 0;
    std::size_t size = 0;
    Text why;
    std::int64_t count = 1;  ///< whole events in it, or places that it stands for
};

/// After so many damaged stretches of a journal, the rest are reported as a single stretch: it
/// begins at the first of them and has the bytes of all. A torn tail always comes last, by itself.
constexpr std::size_t set_aside_most = 100;

struct JournalRead {
    std::vector<Event> events;        ///< every whole event, in file order
    std::vector<SetAside> set_aside;  ///< damage in the middle, events not known, a torn tail
    std::size_t whole_size = 0;       ///< bytes up to the end of the last frame that checks out
};

/// Accepts any bytes, never throws, allocates no more than a small multiple of the input. After
/// damage it looks for the next frame that checks out.
JournalRead read_journal(std::span<const std::uint8_t> bytes);

}  // namespace hemline
