// Checks of a roof's shape by the tape: square corners by 3-4-5 and by diagonals, a gable's slope
// against its run and pitch.
//
//      +-----------+       d1 = d2: square
//      | \ d1  / d2|       else one end lies aside of the other by
//      |   \ /     |         skew = (d1² − d2²) / (4a)
//      |   / \     |
//      +-----------+ a
#pragma once

#include <optional>
#include <string>

#include "engine/measure/slope.h"
#include "engine/measure/tape.h"
#include "engine/quantity/length.h"
#include "engine/roof/readings.h"
#include "engine/words/result_declared.h"

namespace hemline {

/// A check: what was read, what it should be, and how far off it may be.
struct ShapeCheck {
    Length off;      ///< read less expected
    Length allowed;  ///< how far off tape errors alone could make it
    LikelyCause cause = LikelyCause::unknown;

    [[nodiscard]] bool holds() const { return absolute(off) <= allowed; }
};

/// How far the far side of a rectangle of side `a` lies aside: (d1² − d2²)/(4a), to the nearest
/// nanometer; positive where d1 is the longer. a > 0.
Length skew_of(Length a, Length diagonal1, Length diagonal2);

/// Equal diagonals, within what two readings of a length may differ by; `off` is their difference.
/// Source of the check: 3-4-5 or equal diagonals, Army carpentry texts.
ShapeCheck check_diagonals(Length diagonal1, Length diagonal2, Tape tape);

/// The plan angle, in degrees, between sides a and b whose far ends are `across` apart (law of
/// cosines). Problem: no triangle has these sides.
Result<double> corner_of(Length a, Length b, Length across);

/// Legs and diagonal of a 3-4-5 triangle.
struct ThreeFourFive {
    Length three, four, five;
};

/// The largest 3-4-5 in whole multiples of `unit` (a foot, 100 mm) that fits on two sides, the
/// longer leg on the longer side; none where not even the smallest fits.
std::optional<ThreeFourFive> three_four_five(Length side1, Length side2, Length unit);

/// A gable's slope length against its level run and pitch: run / cosθ expected; allowed: the error
/// of the tape on both and of the pitch reading.
ShapeCheck check_gable(Length slope, Length run, Slope pitch, Tape tape);

/// The pitch, in degrees, that a slope length and its run imply: acos(run/slope). Problem: a slope
/// shorter than its run.
Result<double> implied_pitch_degrees(Length slope, Length run);

}  // namespace hemline
