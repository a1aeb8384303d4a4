// Eaves that lie in one line but for what their readings may be off are put in one line: a hair
// between two planes would else reach as far as the ridge.
//
//     A      +--+      H          A and H were read 1/4 in apart: each goes by its share
//     -------+  +--------
#pragma once

#include <vector>

#include "engine/body/moving_side.h"

namespace hemline {

/// What may be off of a side, in nm along it, and of the corner after it, in radians.
struct SideWithin {
    double along = 0, corner = 0;
};

/// Sides of one way and one pitch whose lines lie within what may be off between them. Lengths of
/// the sides between change by as much. O(n³) at worst.
std::vector<MovingSide> put_in_line(std::vector<MovingSide> sides,
                                    const std::vector<SideWithin>& within);

}  // namespace hemline
