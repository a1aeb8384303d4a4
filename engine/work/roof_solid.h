// A job's roofs as solids, to look at from a corner: planes, the walls under them and their gable
// ends.
#pragma once

#include <span>
#include <vector>

#include "engine/trim/solid.h"
#include "engine/work/roof_body.h"

namespace hemline {

/// Roofs that are worked out, beside one another, 1:20 in mm; planes lie leg 0, walls leg 1.
std::vector<Facet> roof_solid(std::span<const BodyOnJob> bodies);

}  // namespace hemline
