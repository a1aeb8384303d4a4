#include "engine/roof/cut_offset.h"

#include <cmath>

#include "engine/roof/nearest.h"

namespace hemline {

namespace {

Result<Length> on_a_roof(double nm) {
    if (!(std::abs(nm) <= static_cast<double>(longest_readable().nm()))) {
        return Problem{say("This cut would be longer than any roof."),
                       say("Look at the pitches and the corner again.")};
    }
    return nearest_nm(nm);
}

/// Setback for a flange of one unit.
Result<double> setback_of_one(const RoofCorner& corner) {
    const double cos = 1 / slope_factor_of(corner.pitch1);
    const bool flat = rise_in_12_of(corner.pitch1) <= 0 && rise_in_12_of(corner.pitch2) <= 0;
    if (flat) {  // no line rises, but the mitre halves the corner all the same
        const RoofCorner tilted{rise_in_12(12), rise_in_12(12), corner.inside};
        const Result<HipLine> line = hip_line(tilted);
        if (!line) {
            return line.problem();
        }
        return 1 / std::tan(radians_of(line->from_eave1_degrees));
    }
    const Result<HipLine> line = hip_line(corner);
    if (!line) {
        return line.problem();
    }
    return cos / std::tan(radians_of(line->from_eave1_degrees));
}

}  // namespace

Result<Length> flange_mitre_setback(Length flange, const RoofCorner& corner) {
    const Result<double> one = setback_of_one(corner);
    if (!one) {
        return one.problem();
    }
    return on_a_roof(static_cast<double>(flange.nm()) * *one);
}

Result<Length> plumb_offset(Length face, Slope pitch) {
    return on_a_roof(static_cast<double>(face.nm()) * rise_in_12_of(pitch) / 12);
}
}  // namespace hemline
