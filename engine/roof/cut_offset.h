// How far a cut runs aside over the width of a leg: the flange's mitre at an eave corner, and the
// plumb cut of a face.
//
//        flange of run 1, seen from above          face of a gable, seen from the side
//      back edge  ______________                          /|
//                |             /  <- setback               / | face·tanθ at the plumb foot
//            w   |            /      from the corner      /__|
//                |___________/       line, along eave
#pragma once

#include "engine/measure/slope.h"
#include "engine/quantity/length.h"
#include "engine/roof/hip.h"
#include "engine/words/result.h"

namespace hemline {

/// Setback of run 1's flange mitre from the corner line, at the flange's back edge, along the eave:
/// w·cosθ1·(tanθ1 + tanθ2·cosC)/(tanθ2·sinC). Equal pitches w·cosθ·cot(C/2), so it is not 45° save
/// on a flat roof. Negative: the flange runs past the corner line (inside corners; the flatter run
/// of a very unequal pair). To the nearest nanometre. Problem: as hip_line() (two flat roofs are
/// fine here), or a setback longer than any roof.
Result<Length> flange_mitre_setback(Length flange, const RoofCorner& corner);

/// How far a plumb cut at the foot of a gable's face runs along the slope: face·tanθ, to the
/// nearest nanometre. Problem: longer than any roof.
Result<Length> plumb_offset(Length face, Slope pitch);

}  // namespace hemline
