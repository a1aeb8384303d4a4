// The pairing of most weight: no one is in two pairs, and not everybody need be in one.
#pragma once

#include <cstddef>
#include <cstdint>
#include <optional>
#include <span>
#include <vector>

namespace hemline {

/// Two that can be paired, and what that is worth (> 0).
struct Match {
    std::size_t a = 0, b = 0;
    std::int64_t worth = 0;
};

/// Who is paired with whom, of `count`. Exact: Edmonds's blossoms with prices (1965), in O(n³), in
/// whole numbers; worth up to 2^60. The same on every platform.
std::vector<std::optional<std::size_t>> most_weight_matching(std::size_t count,
                                                             std::span<const Match> matches);

}  // namespace hemline
