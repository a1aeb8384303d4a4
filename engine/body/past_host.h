// Bodies that hang past the roof into which they run:
//
//          host                     Where the body is lower than the host's eave it must end there,
//     +-----------+                 at a stretch of that eave. Past the eave's end nothing is
//     |           |  past it        there to end at.
//     +--+-----------+
//        |  body     |
//        +-----------+
#pragma once

#include <optional>
#include <span>

#include "engine/body/joined_bodies.h"

namespace hemline {

struct Problem;

/// The first body that goes on, lower than its host's eave and seen from above, past an end of that
/// eave; it names the host's side that lies there.
std::optional<Problem> past_host(const JoinedBodies& joined, std::span<const RoofBody> bodies);

}  // namespace hemline
