// The frame around a payload: what is checked before any of the payload is trusted.
//
//   | magic 4 | version 2 | kind 2 | length 4 | crc 4 | payload (length bytes) |
#pragma once

#include <array>
#include <cstdint>
#include <span>

#include "engine/record/event_bytes.h"

namespace hemline {

/// 0xFE occurs in no UTF-8 text, so no text inside an event can pass for a frame.
constexpr std::array<std::uint8_t, 4> frame_magic{0xFE, 'H', 'E', 'M'};
/// The frame version of events that save their moment, and the version before it.
constexpr std::uint16_t frame_version = 2, frame_version_before = 1;

struct FrameHeader {
    PayloadKind of;
    std::uint32_t length = 0;
    std::uint32_t crc = 0;
};

/// Whether this program reads payloads of that version.
constexpr bool is_version_known(std::uint16_t version) {
    return version == frame_version || version == frame_version_before;
}

/// The payload with its header before it.
Bytes frame_around(PayloadKind of, std::span<const std::uint8_t> payload);

/// True when the bytes begin with the magic; false where fewer than four are left.
bool has_magic(std::span<const std::uint8_t> bytes);

/// The header at the beginning of at least frame_header_size bytes.
FrameHeader header_at(std::span<const std::uint8_t> bytes);

/// The CRC of the header (version to length), to be continued over the payload.
std::uint32_t header_crc(std::span<const std::uint8_t> bytes);

}  // namespace hemline
