// The lines in which the planes of a roof meet: the sides of its walk move inward as the height
// grows, and the corners between them trace the lines in plan; the height is the height.
//
//     +-----------------+     Every side's line moves inward; when a side has shrunk to
//     | \             / |     nothing, or an inside corner has reached another side, what is
//     |  o-----------o  |     left is walked anew, until nothing is left.
//     | /             \ |     (The straight skeleton of Aichholzer, Aurenhammer, Alberts and
//     +-----------------+     Gärtner 1995; with speeds, Eppstein and Erickson 1999. From memory.)
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "engine/body/moving_side.h"

namespace hemline {

struct LinePlace {
    PlanVector at;
    double height = 0;
};

/// A line between two sides' planes, from the corner up, or level. Sides are the first ones of
/// their planes.
struct InnerLine {
    std::size_t left = 0, right = 0;  ///< the planes on its left and right, seen along from → to
    std::size_t from = 0, to = 0;     ///< places
    bool inside_corner = false;       ///< traced by an inside corner: water gathers along it
};

struct InnerLines {
    std::vector<LinePlace> places;  ///< first the walk's own corners: i is where side i begins
    std::vector<InnerLine> lines;
    /// Of each side the first side that has the same plane: sides of one line and pitch are one
    /// plane.
    std::vector<std::size_t> plane_of;
    /// What does not make a roof: sides that come to lie on one line with other pitches, or a walk
    /// that never closes. Empty: all is well, else the lines are not complete.
    std::vector<std::size_t> stuck;
};

/// A simple closed walk, the building on the left, of at most 60 or so sides; all in any single
/// unit. Places are good to 1e-9 of the size of the house. O(n³) at worst.
InnerLines trace_inner_lines(std::span<const MovingSide> sides);

}  // namespace hemline
