// Which kind of edge each line of a roof is, and what is at its ends.
#pragma once

#include <span>
#include <vector>

#include "engine/body/body.h"

namespace hemline {

/// The edges of a walk that closes, without names and without how far they may be off. Problem: a
/// plane that falls toward an upright side, or meets a high eave on a slope.
Result<std::vector<BodyEdge>> edges_of_body(std::span<const BodySide> sides,
                                            std::span<const MovingSide> moving,
                                            const InnerLines& lines);

}  // namespace hemline
