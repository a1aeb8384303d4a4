#include "engine/body/between_bodies.h"
#include "engine/words/result.h"

#include <cmath>

namespace hemline {

namespace {

/// A plane may fall toward what stands on it by this (the sine of 10°), as in body_edges.cpp.
constexpr double falls_most = 0.17;

PlanVector way_of(const BetweenEnds& ends) {
    const PlanVector way = {ends.to.x - ends.from.x, ends.to.y - ends.from.y};
    return way * (1 / length_of(way));
}
bool is_level(const BetweenEnds& ends) { return std::abs(ends.to.z - ends.from.z) < ends.near; }
/// How the plane on the left rises away from the line.
double rises_to_left(const EndlessPlane& plane, PlanVector way) {
    return dot(plane.inside, PlanVector{-way.y, way.x});
}

/// Its foot first; a level one as seen from the plane.
BodyEdge edge_between(const PlacedPlane& seen_from, const BetweenEnds& ends) {
    BodyEdge edge;
    edge.from = ends.from;
    edge.to = ends.to;
    edge.length = length_of(edge.to - edge.from);
    if (is_level(ends) ? dot(way_of(ends), seen_from.along) < 0 : edge.from.z > edge.to.z) {
        std::swap(edge.from, edge.to);
    }
    return edge;
}

}  // namespace

Result<BodyEdge> where_they_meet(const PlacedPlane& in, const PlacedPlane& host, BetweenEnds ends,
                                 const SidesOfRoof& sides) {
    BodyEdge edge = edge_between(in, ends);
    edge.sides = edge.planes = {in.side, host.side};
    if (!is_level(ends)) {
        edge.kind = EdgeKind::valley;
        const bool turned_round = edge.from.z != ends.from.z;
        const PlanVector left = turned_round ? host.along : in.along;
        const PlanVector right = turned_round ? in.along : host.along;
        const double turned = degrees_in(std::atan2(turn(left, right), dot(left, right)));
        edge.corner_degrees = turned > 0 ? 360 - turned : 180 - turned;
        return edge;
    }
    edge.kind = EdgeKind::transition;
    const PlanVector way = way_of(ends);
    const double in_rises = rises_to_left(in, way), host_rises = rises_to_left(host, way * -1);
    if (in_rises > 0 && host_rises > 0) {
        return Problem{
            say("The roofs above {1} and {2} fall toward one another and meet in a level "
                "line.",
                sides[in.side]->id, sides[host.side]->id),
            say("No water runs along it: look at where the body lies.")};
    }
    if (in_rises > 0) {
        edge.planes = {host.side, in.side};
    }
    return edge;
}

Result<BodyEdge> where_it_stands(std::size_t side, const PlacedPlane& under, BetweenEnds ends,
                                 const SidesOfRoof& sides) {
    BodyEdge edge = edge_between(under, ends);
    edge.sides = {side, under.side};
    edge.planes = {under.side};
    if (rises_to_left(under, way_of(ends)) <= falls_most) {
        edge.kind = is_level(ends) ? EdgeKind::headwall : EdgeKind::sidewall;
        return edge;
    }
    if (!is_level(ends)) {
        return Problem{say("The roof above side {1} falls toward side {2}, which stands on it.",
                           sides[under.side]->id, sides[side]->id),
                       say("Turn the body square to the roof that it stands on.")};
    }
    edge.kind = EdgeKind::curb_head;
    return edge;
}

}  // namespace hemline
