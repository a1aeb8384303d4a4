// The angle the metal is folded to at an edge, from the pitch behind it.
//
//   included: what a bevel gauge reads on the metal.   bend: what the brake turns, 180° − included.
//
//   down, as an eave:  ____         up, as a sidewall:  |
//                          |                        ____|
#pragma once

#include <optional>

#include "engine/measure/slope.h"
#include "engine/roof/edge.h"
#include "engine/words/result_declared.h"

namespace hemline {

struct FoldAngle {
    double included_degrees = 90;
    double bend_degrees = 90;
    Toward toward = Toward::down;
};

/// What decides a fold. Each kind reads what it needs and ignores the rest.
struct FoldAsked {
    EdgeKind kind = EdgeKind::eave;
    Slope pitch;                    ///< the roof behind the edge; at a transition the lower roof
    std::optional<Slope> pitch2;    ///< ridge, hip, valley: the other roof (none: the same pitch);
                                    ///< transition: the upper roof, which must be given
    std::optional<Angle> corner;    ///< hip, valley: plan angle inside the building
    Fascia fascia = Fascia::plumb;  ///< eave, high eave
};

/// Between flange and face at an eave: 90° + θ before a plumb fascia, 90° before a square-cut
/// fascia.
FoldAngle eave_fold(Slope pitch, Fascia fascia);

/// The main fold of any kind of edge; angles in double, good to 1e-9 degrees.
///   eave, plumb 90 + θ · high eave, plumb 90 − θ · either square-cut, gable, sidewall 90 ·
///   headwall 90 + θ · ridge 180 − θ1 − θ2 · hip, valley 180 − δ (bend_across_degrees) ·
///   transition 180 − |θ1 − θ2|, up where the upper roof is not the flatter.
/// A valley's corner under 180 is taken as the angle outside the building, which folds the same.
/// Problem: a transition without its upper roof; a hip whose corner is not above 0 and below 180; a
/// valley whose corner is 0 or 180.
Result<FoldAngle> fold_of(const FoldAsked& asked);

}  // namespace hemline
