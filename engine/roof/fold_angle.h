// The angle the metal is folded to at an edge, from the pitch behind it.
//
//   included: what a bevel gauge reads on the metal.   bend: what the brake turns, 180° − included.
#pragma once

#include "engine/measure/slope.h"
#include "engine/roof/edge.h"

namespace hemline {

struct FoldAngle {
    double included_degrees = 90;
    double bend_degrees = 90;
};

/// Between flange and face at an eave: 90° + θ before a plumb fascia, 90° before a square-cut one.
FoldAngle eave_fold(Slope pitch, Fascia fascia);

/// How far the corner of the flange is cut back from the corner line, along the eave, at an outside
/// corner of 90° with equal pitches: flange width × cosθ; so it is not 45°. Rounded to the nm.
Length flange_mitre_setback(Length flange, Slope pitch);

}  // namespace hemline
