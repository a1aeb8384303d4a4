// Readings teach the roof: where inner edges agree with one another and not with the roof, the one
// pitch or side that, said otherwise, explains them all.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "engine/body/roof.h"

namespace hemline {

/// An agreed reading of an edge that was worked out.
struct EdgeRead {
    BodyEdge edge;  ///< as work_out_roof() has it
    Length length;
};

struct Explanation {
    std::optional<Slope> pitch;      ///< as it was said, of every side in `sides`; none: a length
    std::vector<std::size_t> sides;  ///< through all bodies
    Slope pitch_instead;             ///< on the marks that its reading has
    Length length_instead;
    double misfit = 0;  ///< of what is left, in what readings may be off: below 1 for each
};

/// Every single pitch or side's length that explains all readings, each within what it and its edge
/// may be off; what fits best goes first. None where the roof as it is explains them, and where
/// fewer than two disagree with it: a single one is that edge's. A side counts where the walk
/// closes with it changed. By least squares over the readings (Gauss's method, from memory).
std::vector<Explanation> what_explains(std::span<const RoofBody> bodies, Tape tape,
                                       std::span<const EdgeRead> readings);

}  // namespace hemline
