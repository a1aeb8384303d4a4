// What a piece of a run may cover, from the stick above and the sliver limit below.
#pragma once

#include <algorithm>
#include <cstdint>

#include "engine/dividing/run.h"

namespace hemline {

/// More pieces on an edge come from a wrong rule, not from a real run (1 km in sticks of 10 ft
/// takes 345).
constexpr std::int64_t pieces_most = 1000;

/// Limits of a piece's visible length. `extra`: metal it needs besides (end allowances, lap).
struct PieceBounds {
    Length extra;
    Length least;
    Length most;
};

/// Bounds of piece `index` (0…) of `count`. A single piece may be as short as its edge.
inline PieceBounds bounds_of(const RunRule& rule, std::int64_t index, std::int64_t count) {
    const bool last = index == count - 1;
    Length extra;
    if (index == 0) {
        extra += rule.allowance_first;
    }
    extra += last ? rule.allowance_last : rule.lap;
    const Length shortest = count == 1 ? Length() : rule.sliver;
    return {extra, std::max(shortest - extra, nanometres(1)), rule.stock - extra};
}

}  // namespace hemline
