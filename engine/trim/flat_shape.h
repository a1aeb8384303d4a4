// Polygons of flat metal in whole nanometers: cutting out notches, taking parts, comparing.
//
//   x along the piece, y across it from the first leg's free edge (down the page).
#pragma once

#include <cstdint>
#include <vector>

namespace hemline {

struct FlatPoint {
    std::int64_t x = 0, y = 0;  ///< nm

    bool operator==(const FlatPoint&) const = default;
};

/// A closed line, its last point joined to its first; the metal lies to its left as one walks down
/// the left end first (counter-clockwise on the page).
using FlatOutline = std::vector<FlatPoint>;

struct FlatBox {
    std::int64_t x0 = 0, y0 = 0, x1 = 0, y1 = 0;
};

/// What is left of the box when all notches are cut out of it, to the nanometer; notches may
/// overlap and reach beyond the box.
std::vector<FlatOutline> cut_out(const FlatBox& box, const std::vector<FlatOutline>& notches);

/// The parts of the outline inside the other outline.
std::vector<FlatOutline> parts_in(const FlatOutline& outline, const FlatOutline& inside);

/// Area in mm² that both outlines cover.
double shared_mm2(const FlatOutline& a, const FlatOutline& b);

/// Area in mm², whichever way round the outline runs.
double area_mm2(const FlatOutline& outline);

/// The same outline without double points and points in the middle of an upright or level line, in
/// the direction of FlatOutline, from its least point (by x, then y).
FlatOutline tidy(FlatOutline outline);

}  // namespace hemline
