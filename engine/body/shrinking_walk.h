// A closed walk that shrinks as its sides move inward: where its corners are, and when something
// happens to it next.
#pragma once

#include <cstddef>
#include <limits>
#include <span>
#include <vector>

#include "engine/body/moving_side.h"

namespace hemline {

/// A corner, where the side begins that it is listed with.
struct ShrinkingCorner {
    std::size_t side = 0;   ///< that begins here
    std::size_t begun = 0;  ///< the place where this corner came to be
    MovingPlace place;
    bool inside = false;  ///< an inside corner
};
using ShrinkingWalk = std::vector<ShrinkingCorner>;

constexpr double never = std::numeric_limits<double>::infinity();

/// The first height above `height` at which a side has shrunk to nothing or an inside corner
/// reaches another side; never where there is none.
double next_height(const ShrinkingWalk& walk, std::span<const MovingLine> lines, double height);

}  // namespace hemline
