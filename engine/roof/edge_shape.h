// How each kind of edge lies: level or sloped, between which roofs, and which ends it can have.
//
//   level   eave, ridge, headwall, transition, high eave      ________
//   sloped  gable, hip, valley, sidewall: left is the foot   /  the upper piece laps over the lower
#pragma once

#include <span>
#include <string>
#include <string_view>

#include "engine/roof/edge.h"
#include "engine/roof/fold_angle.h"
#include "engine/roof/hip.h"

namespace hemline {

/// Gable, hip, valley and sidewall run up the roof.
inline bool is_sloped(EdgeKind kind) { return facts_of(kind).lies == Lies::sloped; }

/// A penetration has steps, and nothing is read along it, divided or cut from sticks.
inline bool has_run(EdgeKind kind) { return facts_of(kind).lies != Lies::on_no_line; }

/// Their words in files: "eave, gable, ridge or hip".
std::string words_of_kinds_with_run();
/// "gable, wall or open".
std::string either_of(std::span<const std::string_view> words);

/// Along the outline of the house, before a fascia or barge: eave, gable, high eave.
inline bool is_around_house(EdgeKind kind) {
    const EndsLike ends = facts_of(kind).ends;
    return ends == EndsLike::eave || ends == EndsLike::gable;
}

/// Hip and valley rise from the corner of two eaves.
inline bool stands_over_corner(EdgeKind kind) {
    return facts_of(kind).fold == FoldFrom::eaves_at_foot;
}

/// For kinds that stand over a corner: whether it is an outside corner, as for a hip; a valley's is
/// inside.
inline bool turns_out(EdgeKind kind) { return facts_of(kind).toward == Toward::down; }

/// Ridge and hip lie as a cap over the panels of both roofs.
inline bool is_cap(EdgeKind kind) { return facts_of(kind).closed == Closed::both_sides; }

/// The side fitted first. A sloped edge is fitted from its foot whatever was stated, so that each
/// piece laps over the piece below it and the laps shed water (common practice, no published
/// source).
inline Side first_fitted(const Edge& edge) {
    return is_sloped(edge.kind) ? Side::left : edge.first;
}

/// Two roofs meet at it and its metal has a leg on each: ridge, hip, valley, transition.
inline bool joins_two_roofs(EdgeKind kind) { return facts_of(kind).roofs == 2; }

/// The pitch of the other roof: as stated, else the same as this roof's.
constexpr std::optional<Slope> other_pitch(const Edge& edge) {
    return edge.pitch2 ? edge.pitch2 : edge.pitch;
}

/// The metal has a hand: its legs lie on roofs of different pitch, and which is this roof must be
/// known.
inline bool has_two_pitches(const Edge& edge) {
    return joins_two_roofs(edge.kind) && edge.pitch && edge.pitch2 && *edge.pitch != *edge.pitch2;
}

/// The ends that make sense on that side of an edge of the kind, in the order of the file's words.
std::span<const End> ends_of(EdgeKind kind, Side side);
bool can_end_at(EdgeKind kind, Side side, End end);

/// The two roofs at a corner: at an eave's end, or at the foot of a hip or valley. The angle as
/// stated, else square: 90 outside, 270 inside; a valley's under 180 is taken from outside. The
/// other pitch is other_pitch(). None without a pitch, or at an end without a corner.
std::optional<RoofCorner> roof_corner(const Edge& edge, Side side);

/// The main fold of the edge's metal, on the metal and on the brake. None without a pitch, and
/// where fold_of() has a problem.
std::optional<FoldAngle> fold_at(const Edge& edge);

}  // namespace hemline
