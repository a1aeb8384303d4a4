// The CRC of any stretch of a long row of bytes in constant time, so that the search for the next
// whole event after damage stays fast however many false beginnings the damage holds.
//
//   so far + stretch = (so far + all before the stretch), moved on over its length, + all up to its
//   end; + over GF(2), where all before it, added twice, is gone
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <vector>

namespace hemline {

class StretchCrc {
  public:
    /// Reads the bytes once; keeps four bytes for each.
    explicit StretchCrc(std::span<const std::uint8_t> bytes);

    /// The same as crc32_of(bytes.subspan(from, size), so_far).
    [[nodiscard]] std::uint32_t of(std::size_t from, std::size_t size, std::uint32_t so_far) const;

  private:
    std::vector<std::uint32_t> prefix_;  ///< of the first i bytes
};

}  // namespace hemline
