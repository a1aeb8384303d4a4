// Products of two 64-bit integers, compared and divided without overflow.
#pragma once

#include <cstdint>

namespace hemline {

__extension__ using Wide = __int128;

/// Whether the product of any two numbers of which these are all the bits fits 64: far cheaper
/// where 128 are put together, as in a browser.
constexpr bool are_short(std::int64_t all_bits) {
    return static_cast<std::uint64_t>(all_bits) >> 31U == 0;
}

/// a·b > c·d, exactly.
constexpr bool product_exceeds(std::int64_t a, std::int64_t b, std::int64_t c, std::int64_t d) {
    return are_short(a | b | c | d) ? a * b > c * d
                                    : static_cast<Wide>(a) * b > static_cast<Wide>(c) * d;
}

/// ⌊a·b / c⌋ for a, b ≥ 0 and c > 0 where the result fits.
constexpr std::int64_t product_over(std::int64_t a, std::int64_t b, std::int64_t c) {
    return are_short(a | b) ? a * b / c : static_cast<std::int64_t>(static_cast<Wide>(a) * b / c);
}

}  // namespace hemline
