// The line where two roofs meet over a corner of their eaves: a hip outside, a valley inside.
//
//      plan, C = 90°          eave 2           C    inside the building, between the eaves
//        ________________________              α1   between eave 1 and the line, in plan
//       |\ α2                                  α2   = C − α1
//       |   \  hip
//       | α1   \              height along the line: s·sin α1·tan θ1 = s·sin α2·tan θ2
//       |         \           so cot α1 = (tan θ1 + tan θ2·cos C) / (tan θ2·sin C)
//     eave 1
#pragma once

#include "engine/measure/slope.h"
#include "engine/quantity/angle.h"
#include "engine/quantity/length.h"
#include "engine/words/result_declared.h"

namespace hemline {

constexpr Angle square_out = degrees(90);
constexpr Angle square_in = degrees(270);

/// Two eaves at the same height that meet: the pitch behind each, and the plan angle inside the
/// building (90° at a square outside corner, 270° at a square inside corner).
struct RoofCorner {
    Slope pitch1, pitch2;
    Angle inside = square_out;
};

struct HipLine {
    double from_eave1_degrees = 0;  ///< α1: between eave 1 and the line, in plan
    double from_eave2_degrees = 0;  ///< α2
    double slope_degrees = 0;       ///< of the line itself against the level
    /// Of each roof against the level, in the plane square to the line: the angle planed off a hip
    /// rafter's edge. Negative at a valley, where the roofs rise from the line.
    double backing1_degrees = 0, backing2_degrees = 0;
    double dihedral_degrees = 180;  ///< between the roofs, under a hip or above a valley
};

/// Angles in double, good to 1e-9 degrees for pitches from 1/2 to 24 in 12. Problem: an angle of 0,
/// 180 or past 360, a pitch of nothing on one side (no line rises from the corner).
Result<HipLine> hip_line(const RoofCorner& corner);

/// δ from cos δ = cosθ1·cosθ2 + sinθ1·sinθ2·cosψ, ψ = |180° − C|: how far the metal that lies on
/// both roofs is bent. Any C from 0 to 360. Source: the dot product of the two planes' normals.
double bend_across_degrees(const RoofCorner& corner);

/// How much longer each jack of roof 1 is than the last, `spacing` apart along eave 1:
/// spacing·tan α1 / cos θ1, to the nearest nanometer. Problem: as hip_line(), or longer than any
/// roof.
Result<Length> jack_difference(Length spacing, const RoofCorner& corner);

}  // namespace hemline
