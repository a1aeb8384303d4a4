// How each kind of edge lies: level or sloped, between which roofs, and which ends it can have.
//
//   level   eave, ridge, headwall, transition, high eave      ________
//   sloped  gable, hip, valley, sidewall: left is the foot   /  the upper piece laps over the lower
#pragma once

#include <span>

#include "engine/roof/edge.h"
#include "engine/roof/fold_angle.h"
#include "engine/roof/hip.h"

namespace hemline {

/// Gable, hip, valley and sidewall run up the roof.
constexpr bool is_sloped(EdgeKind kind) {
    return kind == EdgeKind::gable || kind == EdgeKind::hip || kind == EdgeKind::valley ||
           kind == EdgeKind::sidewall;
}

/// A penetration has steps, and nothing is read along it, divided or cut from sticks.
constexpr bool has_run(EdgeKind kind) { return kind != EdgeKind::penetration; }

/// The side fitted first. A sloped edge is fitted from its foot whatever was stated, so that each
/// piece laps over the one below it and the laps shed water (common practice, no published source).
constexpr Side first_fitted(const Edge& edge) {
    return is_sloped(edge.kind) ? Side::left : edge.first;
}

/// Two roofs meet at it, so that its metal has a leg on each: ridge, hip, valley, transition.
constexpr bool joins_two_roofs(EdgeKind kind) {
    return kind == EdgeKind::ridge || kind == EdgeKind::hip || kind == EdgeKind::valley ||
           kind == EdgeKind::transition;
}

/// The pitch of the other roof: as stated, else the same as this one's.
constexpr std::optional<Slope> other_pitch(const Edge& edge) {
    return edge.pitch2 ? edge.pitch2 : edge.pitch;
}

/// The ends that make sense on that side of an edge of the kind, in the order of the file's words.
std::span<const End> ends_of(EdgeKind kind, Side side);
bool can_end_at(EdgeKind kind, Side side, End end);

/// The two roofs at a corner: at an eave's end, or at the foot of a hip or valley. The angle as
/// stated, else square: 90 outside, 270 inside; a valley's under 180 is taken from outside. The
/// other pitch is other_pitch(). None without a pitch, or where the end has no corner.
std::optional<RoofCorner> roof_corner(const Edge& edge, Side side);

/// The main fold of the edge's metal, on the metal and on the brake. None without a pitch, and
/// where fold_of() has a problem.
std::optional<FoldAngle> fold_at(const Edge& edge);

}  // namespace hemline
