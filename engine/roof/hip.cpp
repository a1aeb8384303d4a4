#include "engine/roof/hip.h"

#include <cmath>

#include "engine/quantity/space.h"
#include "engine/roof/nearest.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

/// The sine, cosine and tangent of a roof's slope.
struct Rise {
    double tan, sin, cos;
};

Rise rise_of(Slope pitch) {
    const double tan = rise_in_12_of(pitch) / 12;
    const double factor = slope_factor_of(pitch);
    return {tan, tan / factor, 1 / factor};
}

}  // namespace

double bend_across_degrees(const RoofCorner& corner) {
    const Rise one = rise_of(corner.pitch1);
    const Rise two = rise_of(corner.pitch2);
    const double psi = radians_of(absolute(half_turn - corner.inside));
    const Space normal1{one.sin, 0, one.cos};
    const Space normal2{two.sin * std::cos(psi), two.sin * std::sin(psi), two.cos};
    // acos of the dot product would lose half its digits near 0°.
    return degrees_in(std::atan2(length_of(cross(normal1, normal2)), dot(normal1, normal2)));
}

Result<HipLine> hip_line(const RoofCorner& corner) {
    const Angle inside = corner.inside;
    if (inside <= Angle() || inside >= full_turn || inside == half_turn) {
        return Problem{
            say("At a corner of {1} two roofs meet in no line.", print_degrees(inside)),
            say("Give the plan angle inside the building: under 180 at an outside corner, "
                "over 180 at an inside one.")};
    }
    const Rise one = rise_of(corner.pitch1);
    const Rise two = rise_of(corner.pitch2);
    if (one.tan <= 0 || two.tan <= 0) {
        return Problem{say("A flat roof has no hip and no valley."),
                       say("Give both roofs a pitch above 0.")};
    }
    const double angle = radians_of(inside);
    // The line rises into the building: at an inside corner away from the eaves.
    const double way = inside < half_turn ? 1 : -1;
    const double along = way * (one.tan + two.tan * std::cos(angle));
    const double across = way * two.tan * std::sin(angle);
    const double from_eave1 = std::atan2(across, along);
    const double from_eave2 = angle - from_eave1;
    const double slope = std::atan(one.tan * std::sin(from_eave1));
    const auto backing = [&](double from_eave) {
        return degrees_in(std::atan(std::sin(slope) / std::tan(from_eave)));
    };
    HipLine line;
    line.from_eave1_degrees = degrees_in(from_eave1);
    line.from_eave2_degrees = degrees_in(from_eave2);
    line.slope_degrees = degrees_in(slope);
    line.backing1_degrees = backing(from_eave1);
    line.backing2_degrees = backing(from_eave2);
    line.dihedral_degrees = 180 - bend_across_degrees(corner);
    return line;
}

Result<Length> jack_difference(Length spacing, const RoofCorner& corner) {
    const Result<HipLine> line = hip_line(corner);
    if (!line) {
        return line.problem();
    }
    const double nm = static_cast<double>(spacing.nm()) * slope_factor_of(corner.pitch1) *
                      std::tan(radians_of(line->from_eave1_degrees));
    if (std::abs(nm) > static_cast<double>(longest_readable().nm())) {
        return Problem{say("The jacks of this corner are longer than any roof."),
                       say("Look at the pitches and the corner again.")};
    }
    return nearest_nm(nm);
}

}  // namespace hemline
