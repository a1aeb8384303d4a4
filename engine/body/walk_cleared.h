// A walk at the height where something happens to it, made simple again: what has become one place
// is one place, what lies back to back is taken out, and what touches itself falls into walks of
// their own.
//
//     +-----+                 +-----+
//     |     |__ side of        |     |    two walks, and a level line where
//     |      __ no width  →    |     |    both sides of the neck met
//     |     |                 |     |
//     +-----+                 +-----+
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "engine/body/moving_side.h"

namespace hemline {

/// A stretch of a side, from its place to that of the next stretch of the walk.
struct WalkStretch {
    std::size_t side = 0;
    std::size_t place = 0;  ///< where it begins: index into the places
};
using WalkAround = std::vector<WalkStretch>;  ///< closed, the inside on the left

/// Where two sides lie back to back.
struct BackToBack {
    std::size_t one = 0, other = 0;  ///< sides; `one` runs from → to, `other` back
    std::size_t from = 0, to = 0;    ///< places
};

struct ClearedWalk {
    std::vector<PlanVector> places;
    std::vector<std::size_t> place_of;  ///< of each corner handed in: its place
    std::vector<WalkAround> walks;
    std::vector<BackToBack> met;
};

/// `corners[i]` is where the stretch of `sides[i]` begins; all within size 1. O(n²).
ClearedWalk clear_walk(std::span<const PlanVector> corners, std::span<const std::size_t> sides);

/// Twice the area inside, negative where it is walked the other way.
double doubled_area(const WalkAround& walk, std::span<const PlanVector> places);

}  // namespace hemline
