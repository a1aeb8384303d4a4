// How far a slanted cut shifts over the width of a leg: the flange's miter at an eave corner, and
// the plumb cut of a face.
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
#include "engine/words/result_declared.h"

namespace hemline {

/// Setback of run 1's flange miter from the corner line, at the flange's back edge, along the eave:
/// w·cosθ1·(tanθ1 + tanθ2·cosC)/(tanθ2·sinC). Equal pitches w·cosθ·cot(C/2), so it is 45° only on a
/// flat roof. Negative: the flange runs past the corner line (inside corners; the flatter run where
/// the pitches are very unequal). To the nearest nanometer. Problem: as hip_line() (two flat roofs
/// are fine here), or a setback longer than any roof.
Result<Length> flange_mitre_setback(Length flange, const RoofCorner& corner);

/// How far a plumb cut at the foot of a gable's face runs along the slope: face·tanθ, to the
/// nearest nanometer. Problem: longer than any roof.
Result<Length> plumb_offset(Length face, Slope pitch);

/// Two square-cut fascias meet along a line that leans into the corner: at the lower edge of run
/// 1's face it lies this far back from the corner along the eave, face·cosθ1·(tanθ1·cosC +
/// tanθ2)/sinC; at a square corner face·sinθ for equal pitches. Negative: past the corner (inside
/// corners). To the nearest nanometer. Source: the intersection of the two faces' planes. Problem:
/// a straight corner, or longer than any roof.
Result<Length> square_face_setback(Length face, const RoofCorner& corner);
/// How far the metal that lies on both square-cut faces is bent:
/// acos(sinθ1·sinθ2 − cosθ1·cosθ2·cosC), 90° only where the roofs are flat or the fascias plumb.
double square_faces_bend_degrees(const RoofCorner& corner);

}  // namespace hemline
