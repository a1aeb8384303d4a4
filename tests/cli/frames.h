// Frames of a journal laid out from docs/journal_format.md, without the program: what another
// program, or a malicious one, might have written.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace hemline::test {

/// CRC-32/ISO-HDLC bit by bit (from memory: reflected, polynomial EDB88320).
inline std::uint32_t crc_of(std::string_view bytes) {
    std::uint32_t crc = 0xFFFF'FFFFU;
    for (const char byte : bytes) {
        crc ^= static_cast<std::uint8_t>(byte);
        for (int bit = 0; bit < 8; ++bit) {
            crc = (crc >> 1U) ^ ((crc & 1U) != 0 ? 0xEDB8'8320U : 0U);
        }
    }
    return ~crc;
}

template <class T>
std::string little_endian(T value) {
    std::string bytes;
    for (std::size_t i = 0; i < sizeof(T); ++i) {
        bytes += static_cast<char>(static_cast<std::uint64_t>(value) >> (8 * i));
    }
    return bytes;
}

inline std::string text_field(std::string_view text) {
    return little_endian(static_cast<std::uint32_t>(text.size())) + std::string(text);
}

struct FrameId {
    std::uint64_t device = 0;
    std::uint32_t sequence = 0;
};

inline std::string id_field(FrameId id) {
    return little_endian(id.device) + little_endian(id.sequence);
}

/// What comes before the fields of an event's kind; with a clock it is version 2.
struct FrameHead {
    FrameId id;
    std::int64_t wall_ms = 0;
    std::uint32_t counter = 0;
    std::string by;
    std::optional<std::int64_t> clock_ms = {};
};

/// By that head, superseding nothing.
inline std::string frame(const FrameHead& head, std::uint16_t kind, const std::string& fields) {
    std::string payload =
        '\x01' + id_field(head.id) + little_endian(head.wall_ms) + little_endian(head.counter);
    if (head.clock_ms) {
        payload += little_endian(*head.clock_ms) + '\0';  // after nothing
    }
    payload += text_field(head.by) + little_endian(std::uint32_t{0}) + fields;
    const auto version = static_cast<std::uint16_t>(head.clock_ms ? 2 : 1);
    const std::string checked = little_endian(version) + little_endian(kind) +
                                little_endian(static_cast<std::uint32_t>(payload.size()));
    return "\xFEHEM" + checked + little_endian(crc_of(checked + payload)) + payload;
}

/// Edge A read: so many inches.
inline std::string reading_fields(std::int64_t inches) {
    return text_field("A") + '\0' + little_endian(inches * 25'400'000);
}

inline std::string strike_fields(FrameId target) { return id_field(target) + text_field("undone"); }

}  // namespace hemline::test
