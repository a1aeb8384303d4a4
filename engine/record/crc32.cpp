// CRC-32/ISO-HDLC: reflected polynomial 0xEDB88320, start and end inverted.
#include <array>

#include "engine/record/event_bytes.h"

namespace hemline {
namespace {

constexpr std::array<std::uint32_t, 256> make_table() {
    std::array<std::uint32_t, 256> table{};
    for (std::uint32_t i = 0; i < 256; ++i) {
        std::uint32_t crc = i;
        for (int bit = 0; bit < 8; ++bit) {
            crc = (crc >> 1U) ^ ((crc & 1U) != 0 ? 0xEDB88320U : 0U);
        }
        table[i] = crc;
    }
    return table;
}

constexpr std::array<std::uint32_t, 256> table = make_table();

}  // namespace

std::uint32_t crc32_of(std::span<const std::uint8_t> bytes, std::uint32_t so_far) {
    std::uint32_t crc = ~so_far;
    for (const std::uint8_t byte : bytes) {
        crc = (crc >> 8U) ^ table[(crc ^ byte) & 0xFFU];
    }
    return ~crc;
}

}  // namespace hemline
