#include "engine/roof/fold_angle.h"

#include <cmath>

#include "engine/roof/edge_shape.h"
#include "engine/roof/hip.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

FoldAngle bent(double bend_degrees, Toward toward) {
    return {180 - bend_degrees, bend_degrees, toward};
}

FoldAngle one_roof_fold(const FoldAsked& asked) {
    const KindOfEdge& facts = facts_of(asked.kind);
    const bool square = facts.ends == EndsLike::eave && asked.fascia == Fascia::square_cut;
    return bent(90 + (square ? 0 : facts.tilt * degrees_of(asked.pitch)), facts.toward);
}

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
    const bool hip = turns_out(asked.kind);
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
    return bent(bend_across_degrees(corner), facts_of(asked.kind).toward);
}

}  // namespace

FoldAngle eave_fold(Slope pitch, Fascia fascia) {
    return one_roof_fold({EdgeKind::eave, pitch, {}, {}, fascia});
}

Result<FoldAngle> fold_of(const FoldAsked& asked) {
    switch (facts_of(asked.kind).fold) {
        case FoldFrom::one_roof:
            return one_roof_fold(asked);
        case FoldFrom::both_roofs:
            return bent(degrees_of(asked.pitch) + degrees_of(asked.pitch2.value_or(asked.pitch)),
                        facts_of(asked.kind).toward);
        case FoldFrom::change_of_pitch:
            return transition_fold(asked);
        case FoldFrom::eaves_at_foot:
            return hip_or_valley_fold(asked);
        case FoldFrom::nothing:
            return Problem{say("A penetration has no fold along it."),
                           say("Ask for the fold of an edge.")};
    }
    stop("an edge kind without its fold");
}

}  // namespace hemline
