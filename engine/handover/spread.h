// Moves labels beside a line apart, so that none lies on another.
#pragma once

#include <cstdint>
#include <vector>

namespace hemline {

/// A label along the line: its middle is wanted at `at`.
struct Spread {
    std::int64_t at = 0, wide = 0;
};

/// Middles for the labels, in the order given (`at` never falls): no two overlap, and the sum of
/// the squares of their moves is the least possible, up to rounding. With low < high they lie
/// between the two as far as there is room.
std::vector<std::int64_t> spread_out(const std::vector<Spread>& labels, std::int64_t low,
                                     std::int64_t high);

}  // namespace hemline
