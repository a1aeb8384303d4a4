// Products of two 64-bit integers, compared and divided without overflow.
#pragma once

#include <cstdint>

namespace hemline {

__extension__ using Wide = __int128;

/// a·b > c·d, exactly.
constexpr bool product_exceeds(std::int64_t a, std::int64_t b, std::int64_t c, std::int64_t d) {
    return static_cast<Wide>(a) * b > static_cast<Wide>(c) * d;
}

/// ⌊a·b / c⌋ for a, b ≥ 0 and c > 0 where the result fits.
constexpr std::int64_t product_over(std::int64_t a, std::int64_t b, std::int64_t c) {
    return static_cast<std::int64_t>(static_cast<Wide>(a) * b / c);
}

}  // namespace hemline
