// A flat shape, inside corners and all, cut into triangles: what a screen and a solid are drawn of.
#pragma once

#include <array>
#include <cstddef>
#include <vector>

#include "engine/trim/flat_shape.h"

namespace hemline {

/// Twice the area of a triangle, + where it turns as FlatOutline does on the page.
double turn(const FlatPoint& a, const FlatPoint& b, const FlatPoint& c);

/// Triangles of a shape that does not cross itself, walked round either way, as indices of its
/// corners; it may touch itself, as round a hole. By cutting off ears one by one. O(n³).
std::vector<std::array<std::size_t, 3>> triangles_of(const FlatOutline& outline);

}  // namespace hemline
