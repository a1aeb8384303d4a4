// How far the lengths of a roof's edges may be off: by each reading, each pitch, each stated
// corner.
#pragma once

#include <span>
#include <vector>

#include "engine/body/roof.h"
#include "engine/body/worked_roof.h"

namespace hemline {

/// Of each edge, by what may be off: each reading, corner and pitch changed both ways, the larger
/// change of the length, all the same way at once; nm. The same edge is the nearest of those from
/// the same sides; one that is not there any more has length 0.
std::vector<double> off_of_edges(std::span<const RoofBody> bodies, Tape tape,
                                 const WorkedRoof& expected);

}  // namespace hemline
