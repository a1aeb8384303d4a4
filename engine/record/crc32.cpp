// CRC-32/ISO-HDLC: reflected polynomial 0xEDB88320, start and end inverted.
#include "engine/record/crc32.h"

#include <array>

#include "engine/record/event_bytes.h"

namespace hemline {
namespace {

constexpr std::uint32_t polynomial = 0xEDB88320U;

constexpr std::array<std::uint32_t, 256> make_table() {
    std::array<std::uint32_t, 256> table{};
    for (std::uint32_t i = 0; i < 256; ++i) {
        std::uint32_t crc = i;
        for (int bit = 0; bit < 8; ++bit) {
            crc = (crc >> 1U) ^ ((crc & 1U) != 0 ? polynomial : 0U);
        }
        table[i] = crc;
    }
    return table;
}

constexpr std::array<std::uint32_t, 256> table = make_table();

std::uint32_t after(std::uint32_t crc, std::uint8_t byte) {
    return (crc >> 8U) ^ table[(crc ^ byte) & 0xFFU];
}

/// Product of two polynomials modulo the CRC's; reflected: bit 31 is x^0.
std::uint32_t times(std::uint32_t a, std::uint32_t b) {
    std::uint32_t product = 0;
    for (std::uint32_t bit = 0x8000'0000U; bit != 0; bit >>= 1U) {
        product ^= (a & bit) != 0 ? b : 0U;
        b = (b >> 1U) ^ ((b & 1U) != 0 ? polynomial : 0U);
    }
    return product;
}

/// x^(8·bytes): what that many zero bytes do to the register.
std::uint32_t shift_over(std::size_t bytes) {
    std::uint32_t power = 0x8000'0000U;
    for (std::uint32_t square = 0x0080'0000U; bytes != 0; bytes >>= 1U) {
        power = (bytes & 1U) != 0 ? times(power, square) : power;
        square = times(square, square);
    }
    return power;
}

}  // namespace

std::uint32_t crc32_of(std::span<const std::uint8_t> bytes, std::uint32_t so_far) {
    std::uint32_t crc = ~so_far;
    for (const std::uint8_t byte : bytes) {
        crc = after(crc, byte);
    }
    return ~crc;
}

StretchCrc::StretchCrc(std::span<const std::uint8_t> bytes) : prefix_(bytes.size() + 1) {
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        prefix_[i + 1] = after(prefix_[i], bytes[i]);
    }
}

std::uint32_t StretchCrc::of(std::size_t from, std::size_t size, std::uint32_t so_far) const {
    return ~(times(shift_over(size), ~so_far ^ prefix_[from]) ^ prefix_[from + size]);
}

}  // namespace hemline
