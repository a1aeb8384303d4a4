// Courses between places, put together into closed walks with their inside on the left: where walks
// touch at a place, each takes the sharpest turn to its left.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

#include "engine/body/moving_side.h"

namespace hemline {

/// A straight way from a place to a place, along a side.
struct Course {
    std::size_t from = 0, to = 0;
    std::size_t side = 0;
};

/// Every course in one walk; courses that come back to no beginning are left out. O(n²).
std::vector<std::vector<Course>> walks_of(std::vector<Course> courses,
                                          std::span<const PlanVector> places);

}  // namespace hemline
