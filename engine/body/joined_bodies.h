// The planes and edges of a roof of several bodies: what is seen of each body's own, and what is
// between them.
#pragma once

#include <span>
#include <vector>

#include "engine/body/overlay.h"
#include "engine/body/placed_body.h"
#include "engine/body/roof.h"

namespace hemline {

/// Where a plane is as high as another; none: as the endless plane of its host.
struct PlanesCross {
    std::size_t plane = 0;
    std::optional<std::size_t> other;
};

/// Bodies over one another. The overlay's lines are, in this order: every edge, every open top,
/// where planes come to their hosts', where they cross other planes.
struct JoinedBodies {
    std::vector<PlacedPlane> planes;
    std::vector<BodyEdge> edges;  ///< as each body has them by itself
    std::vector<OpenTop> open;
    std::vector<PlanesCross> crossings;
    std::size_t host_crossings = 0;  ///< how many of them, the first ones
    Overlay overlay;
};
JoinedBodies join_bodies(std::span<const PlacedBody> bodies);

/// As far as they are seen, with holes.
std::vector<BodyPlane> planes_of_roof(const JoinedBodies& joined);

/// Without names and without how far they may be off. `sides`: of all bodies. Problem: a body that
/// runs in and whose planes end in the air, or are not seen at all; a plane that falls toward a
/// body standing on it, or toward a level line with another.
Result<std::vector<BodyEdge>> edges_of_roof(const JoinedBodies& joined,
                                            std::span<const RoofBody> bodies);

}  // namespace hemline
