// The planes of a roof, put together from its eaves and the lines between them.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "engine/body/inner_lines.h"

namespace hemline {

/// The surface that rises from an eave; in one piece, or in several where two eaves share it.
struct Plane {
    std::size_t side = 0;  ///< its first side
    std::vector<std::vector<std::size_t>>
        pieces;  ///< walks round it: places, the plane on the left
};

/// Of every side that is not upright, and not the same plane as one before it.
std::vector<Plane> planes_of(std::span<const MovingSide> sides, const InnerLines& lines);

/// In plan.
double area_of(const Plane& plane, const InnerLines& lines);

}  // namespace hemline
