#include "engine/quantity/slope_print.h"

#include <cstdint>

#include "engine/require.h"

namespace hemline {

std::string print_slope(Slope slope) {
    const bool negative = slope.millionths < 0;
    const auto size = negative ? 0 - static_cast<std::uint64_t>(slope.millionths)
                               : static_cast<std::uint64_t>(slope.millionths);
    std::string out = (negative ? "-" : "") + std::to_string(size / 1'000'000);
    std::string decimals = std::to_string(1'000'000 + size % 1'000'000).substr(1);
    decimals.resize(decimals.find_last_not_of('0') + 1);  // npos + 1 is 0: nothing but zeros
    out += (decimals.empty() ? "" : ".") + decimals;
    switch (slope.notation) {
        case SlopeNotation::rise_in_12:
            return out + "/12";
        case SlopeNotation::degrees:
            return out + " deg";
        case SlopeNotation::percent:
            return out + " %";
    }
    stop("a slope without its notation");
}

}  // namespace hemline
