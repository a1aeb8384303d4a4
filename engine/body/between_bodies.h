// The edges between two bodies: where their planes meet, and where one stands on a plane of the
// other.
#pragma once

#include "engine/body/placed_body.h"
#include "engine/body/roof.h"

namespace hemline {

/// The ends of a straight line; heights nearer than `near` are one height.
struct BetweenEnds {
    Space from, to;
    double near = 0;
};

/// A valley, or a transition with the lower roof first; `in` lies on the left of from → to.
/// Problem: both fall toward a level line.
Result<BodyEdge> where_they_meet(const PlacedPlane& in, const PlacedPlane& host, BetweenEnds ends,
                                 const SidesOfRoof& sides);

/// A headwall, sidewall or curb head of `under`, which lies on the left of from → to, at what
/// stands on it along `side`. Problem: a sloped line toward which `under` falls.
Result<BodyEdge> where_it_stands(std::size_t side, const PlacedPlane& under, BetweenEnds ends,
                                 const SidesOfRoof& sides);

}  // namespace hemline
