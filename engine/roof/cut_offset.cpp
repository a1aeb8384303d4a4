#include "engine/roof/cut_offset.h"

#include <algorithm>
#include <cmath>

#include "engine/roof/nearest.h"
#include "engine/words/result.h"

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
    if (flat) {  // no hip line rises, but the miter still halves the corner
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

Result<Length> square_face_setback(Length face, const RoofCorner& corner) {
    const double sine = std::sin(radians_of(corner.inside));
    if (std::abs(sine) < 1e-6) {
        return Problem{say("Along a straight wall there is no corner."),
                       say("Say the angle of the corner again.")};
    }
    const double tan1 = rise_in_12_of(corner.pitch1) / 12, tan2 = rise_in_12_of(corner.pitch2) / 12;
    const double cos1 = 1 / slope_factor_of(corner.pitch1);
    return on_a_roof(static_cast<double>(face.nm()) * cos1 *
                     (tan1 * std::cos(radians_of(corner.inside)) + tan2) / sine);
}

double square_faces_bend_degrees(const RoofCorner& corner) {
    const double t1 = radians_of(degrees_of(corner.pitch1)),
                 t2 = radians_of(degrees_of(corner.pitch2));
    const double cosine = std::sin(t1) * std::sin(t2) -
                          std::cos(t1) * std::cos(t2) * std::cos(radians_of(corner.inside));
    return degrees_in(std::acos(std::clamp(cosine, -1.0, 1.0)));
}

}  // namespace hemline
