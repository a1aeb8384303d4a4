#include "engine/roof/square_check.h"

#include <algorithm>
#include <cmath>

#include "engine/quantity/angle.h"
#include "engine/roof/nearest.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

double nm_of(Length length) { return static_cast<double>(length.nm()); }

/// Two lengths that should be equal: compared with what two readings of a length may differ by.
ShapeCheck check_alike(Length first, Length second, Tape tape) {
    const Length readings[] = {first, second};
    ShapeCheck check;
    check.off = first - second;
    check.allowed = allowed_difference(std::max(first, second), tape);
    check.cause = judge_readings(readings, tape, sixteenths(1)).cause;
    return check;
}

}  // namespace

Length skew_of(Length a, Length diagonal1, Length diagonal2) {
    // (d1 − d2)(d1 + d2) keeps digits that d1² − d2² would lose.
    return nearest_nm(nm_of(diagonal1 - diagonal2) * nm_of(diagonal1 + diagonal2) / (4 * nm_of(a)));
}

ShapeCheck check_diagonals(Length diagonal1, Length diagonal2, Tape tape) {
    return check_alike(diagonal1, diagonal2, tape);
}

Result<double> corner_of(Length a, Length b, Length across) {
    const bool sides = a > Length() && b > Length() && across > Length();
    if (!sides || across > a + b || a > b + across || b > a + across) {
        return Problem{
            say("No triangle has these three sides."),
            say("Read both sides from the corner, and the distance between their ends.")};
    }
    const double cos = (nm_of(a) * nm_of(a) + nm_of(b) * nm_of(b) - nm_of(across) * nm_of(across)) /
                       (2 * nm_of(a) * nm_of(b));
    return degrees_in(std::acos(std::clamp(cos, -1.0, 1.0)));
}

std::optional<ThreeFourFive> three_four_five(Length side1, Length side2, Length unit) {
    const Length shorter = std::min(side1, side2);
    const Length longer = std::max(side1, side2);
    const std::int64_t units =
        std::min(shorter.nm() / (3 * unit).nm(), longer.nm() / (4 * unit).nm());
    if (units < 1) {
        return {};
    }
    return ThreeFourFive{3 * units * unit, 4 * units * unit, 5 * units * unit};
}

ShapeCheck check_gable(Length slope, Length run, Slope pitch, Tape tape) {
    const double factor = slope_factor_of(pitch);
    const double tan = rise_in_12_of(pitch) / 12;
    const double turn = radians_of(reading_error_degrees(pitch));
    ShapeCheck check;
    check.off = slope - nearest_nm(nm_of(run) * factor);
    // d(run/cosθ) = run·tanθ/cosθ·dθ
    check.allowed = nearest_nm(nm_of(allowed_difference(slope, tape)) / 2 +
                               nm_of(allowed_difference(run, tape)) / 2 * factor +
                               nm_of(run) * factor * tan * turn);
    const Length odd = absolute(check.off);
    const Length near = allowed_difference(slope, tape);
    if (check.holds()) {
        return check;
    }
    if (absolute(odd - inches(1)) <= near) {
        check.cause = LikelyCause::burnt_inch;
    } else if (absolute(odd - feet(1)) <= near) {
        check.cause = LikelyCause::misread_foot;
    }
    return check;
}

Result<double> implied_pitch_degrees(Length slope, Length run) {
    if (slope < run || run <= Length()) {
        return Problem{
            say("A slope cannot be shorter than its run."),
            say("Read the slope along the roof and the run level, from the same two ends.")};
    }
    return degrees_in(std::acos(nm_of(run) / nm_of(slope)));
}

}  // namespace hemline
