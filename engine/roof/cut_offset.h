// How far a cut runs aside over the width of a leg: the flange's mitre at an eave corner, the plumb
// cut and the lean of a face.
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

/// The same for a square outside corner of equal pitches: w·cosθ; the framing square's side cut of
/// jacks where w is 12 in.
Length flange_mitre_setback(Length flange, Slope pitch);

/// Angle of that mitre cut from the eave, on the metal, 0 to 180: atan2(w, setback).
Result<double> flange_mitre_degrees(const RoofCorner& corner);

/// How far a plumb cut at the foot of a gable's face runs along the slope: face·tanθ, to the
/// nearest nanometre. Problem: longer than any roof.
Result<Length> plumb_offset(Length face, Slope pitch);

/// How far a face square to the rafter leans in under the eave, level: face·sinθ, to the nearest
/// nanometre.
Length square_cut_lean(Length face, Slope pitch);

}  // namespace hemline
