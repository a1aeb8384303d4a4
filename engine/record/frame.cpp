#include "engine/record/frame.h"

#include <algorithm>

namespace hemline {
namespace {

constexpr std::size_t version_at = 4, kind_at = 6, length_at = 8, crc_at = 12;

template <class T>
void put(Bytes& bytes, T value) {
    for (std::size_t i = 0; i < sizeof(T); ++i) {
        bytes.push_back(static_cast<std::uint8_t>(value >> (8 * i)));
    }
}

std::uint32_t get(std::span<const std::uint8_t> bytes, std::size_t at, std::size_t size) {
    std::uint32_t value = 0;
    for (std::size_t i = 0; i < size; ++i) {
        value |= static_cast<std::uint32_t>(bytes[at + i]) << (8 * i);
    }
    return value;
}

}  // namespace

Bytes frame_around(PayloadKind of, std::span<const std::uint8_t> payload) {
    Bytes frame(frame_magic.begin(), frame_magic.end());
    put(frame, of.version);
    put(frame, of.kind);
    put(frame, static_cast<std::uint32_t>(payload.size()));
    put(frame, crc32_of(payload, header_crc(frame)));
    frame.insert(frame.end(), payload.begin(), payload.end());
    return frame;
}

bool has_magic(std::span<const std::uint8_t> bytes) {
    return bytes.size() >= frame_magic.size() &&
           std::equal(frame_magic.begin(), frame_magic.end(), bytes.begin());
}

FrameHeader header_at(std::span<const std::uint8_t> bytes) {
    return {{static_cast<std::uint16_t>(get(bytes, version_at, 2)),
             static_cast<std::uint16_t>(get(bytes, kind_at, 2))},
            get(bytes, length_at, 4),
            get(bytes, crc_at, 4)};
}

std::uint32_t header_crc(std::span<const std::uint8_t> bytes) {
    return crc32_of(bytes.subspan(version_at, crc_at - version_at));
}

}  // namespace hemline
