// How many choices of the nine generated roofs are proved, and how long that takes.
#pragma once

#include <cstdint>

namespace hemline {

/// Every edge may run out, on a grid of 1/16 in: from one new length, then from two and five
/// offcuts on hand. Prints the choices found within so many steps for each roof.
void time_roofs(std::int64_t steps);

}  // namespace hemline
