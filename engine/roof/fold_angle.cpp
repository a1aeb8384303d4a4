#include "engine/roof/fold_angle.h"

#include <cmath>

#include "engine/roof/hip.h"

namespace hemline {

namespace {

FoldAngle bent(double bend_degrees, Toward toward) {
    return {180 - bend_degrees, bend_degrees, toward};
}

/// A face below the roof, `tilt` degrees past the square to it.
FoldAngle face_down(double tilt_degrees) { return bent(90 - tilt_degrees, Toward::down); }

Result<FoldAngle> transition_fold(const FoldAsked& asked) {
    if (!asked.pitch2) {
        return Problem{
            say("A transition lies between two pitches, and the upper roof's is missing."),
            say("Give the lower roof's pitch first and the upper roof's as the second.")};
    }
    const double turn = degrees_of(*asked.pitch2) - degrees_of(asked.pitch);
    return bent(std::abs(turn), turn < 0 ? Toward::down : Toward::up);
}

Result<FoldAngle> hip_or_valley_fold(const FoldAsked& asked) {
    const bool hip = asked.kind == EdgeKind::hip;
    const RoofCorner corner{asked.pitch, asked.pitch2.value_or(asked.pitch),
                            asked.corner.value_or(hip ? square_out : square_in)};
    const Angle inside = corner.inside;
    if (inside <= Angle() || inside >= full_turn || inside == half_turn ||
        (hip && inside > half_turn)) {
        return Problem{
            hip ? say("A hip does not stand at a corner of {1}.", print_degrees(inside))
                : say("A valley does not stand at a corner of {1}.", print_degrees(inside)),
            hip ? say("Give the plan angle inside the building, above 0 and below 180: 90 at a "
                      "square corner.")
                : say("Give the plan angle inside the building, above 180 and below 360: 270 at a "
                      "square corner.")};
    }
    return bent(bend_across_degrees(corner), hip ? Toward::down : Toward::up);
}

}  // namespace

FoldAngle eave_fold(Slope pitch, Fascia fascia) {
    return face_down(fascia == Fascia::square_cut ? 0 : degrees_of(pitch));
}

Result<FoldAngle> fold_of(const FoldAsked& asked) {
    const double slope = degrees_of(asked.pitch);
    switch (asked.kind) {
        case EdgeKind::eave:
            return eave_fold(asked.pitch, asked.fascia);
        case EdgeKind::high_eave:
            return face_down(asked.fascia == Fascia::square_cut ? 0 : -slope);
        case EdgeKind::gable:
            return face_down(0);
        case EdgeKind::sidewall:
            return bent(90, Toward::up);
        case EdgeKind::headwall:
            return bent(90 - slope, Toward::up);
        case EdgeKind::ridge:
            return bent(slope + degrees_of(asked.pitch2.value_or(asked.pitch)), Toward::down);
        case EdgeKind::transition:
            return transition_fold(asked);
        case EdgeKind::hip:
        case EdgeKind::valley:
            return hip_or_valley_fold(asked);
        case EdgeKind::penetration:
            return Problem{say("A penetration has no fold along it."),
                           say("Ask for the fold of an edge.")};
    }
    stop("an edge kind without its fold");
}

std::string_view word_of(Toward toward) { return toward == Toward::up ? "up" : "down"; }
Text spoken(Toward toward) {
    return toward == Toward::up ? say_of("fold", "up") : say_of("fold", "down");
}

}  // namespace hemline
