// A plane as it is read before its panels are ordered: slope length at both ends, both diagonals.
//
//       ______________ top           rising: from the eave's left end to the top's right end
//      |\  falling  / |              falling: from the top's left end to the eave's right end
//  left|  \      /    |right
//      |____rising____|              seen from outside
//             eave
#pragma once

#include <optional>
#include <vector>

#include "engine/measure/tape.h"
#include "engine/panels/deck_plane.h"
#include "engine/words/result.h"

namespace hemline {

struct PlaneReadings {
    std::optional<Length> left, right;  ///< from eave to top: along a gable or wall, else square
    std::optional<Length> rising, falling;

    bool operator==(const PlaneReadings&) const = default;
};

struct ReadPlane {
    DeckPlane plane;  ///< as read: its heights, `lean`, `top_rise`
    std::vector<Problem> doubts;
};

/// `plane` as worked out, put right by what was read. One slope length counts for both ends. Two
/// that differ by no more than two readings may are one, their mean to the 1/16 in; else heights
/// lie between them along the eave. Skew: (d1² − d2² + left² − right²)/(4 · eave), which for a
/// level top is the usual (d1² − d2²)/(4 · eave); what the tape may be off by is none. Doubts: a
/// slope length that the walk does not bear out, one diagonal alone, gables that are not parallel,
/// nothing read. Problem: diagonals of a plane that has no square sides, or that no plane has.
Result<ReadPlane> read_plane(const DeckPlane& plane, const PlaneReadings& read, Tape tape);

}  // namespace hemline
