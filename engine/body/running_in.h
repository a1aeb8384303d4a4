// A body that runs into a plane: its sides beside an open one go on until they lie under the plane.
#pragma once

#include "engine/body/body_places.h"

namespace hemline {

struct RunIn {
    ClosedSides closed;
    SolvedBody body;
    BodyPlace place;
    std::optional<EndlessPlane> host;
    std::optional<double> longer;  ///< the sides beside an open one, for that
};

/// The sides beside every open one, longer by `by`. Where neither has a length the first one's is
/// `by`.
std::vector<BodySide> lengthened(std::vector<BodySide> sides, double by);

/// Problem: nothing the body goes on to lies under the plane; as close_sides() and solve_body().
Result<RunIn> run_into(const RoofBody& body, const HostPlane& host, Tape tape,
                       const std::optional<PitchChange>& change);

}  // namespace hemline
