// Labels beside a line moved apart, so that none lies on another.
#pragma once

#include <cstdint>
#include <vector>

namespace hemline {

/// A label as it lies along the line: its middle is wanted at `at`.
struct Spread {
    std::int64_t at = 0, wide = 0;
};

/// Middles for the labels, in the order given (`at` never falls): no two overlap, and the squares
/// of how far they are moved are the least there are, to the rounding. With low < high they lie
/// between the two as far as they have room there.
std::vector<std::int64_t> spread_out(const std::vector<Spread>& labels, std::int64_t low,
                                     std::int64_t high);

}  // namespace hemline
