// Bytes as files and journals hold them.
#pragma once

#include <cstdint>
#include <span>
#include <vector>

namespace hemline {

using Bytes = std::vector<std::uint8_t>;

/// CRC-32/ISO-HDLC (the CRC of zip and PNG); check value of "123456789" is 0xCBF43926.
std::uint32_t crc32_of(std::span<const std::uint8_t> bytes, std::uint32_t so_far = 0);

}  // namespace hemline
