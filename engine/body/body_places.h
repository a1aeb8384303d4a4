// Where a body lies, from where what it is tied to lies: in the roof's plan, and how high.
#pragma once

#include <span>
#include <vector>

#include "engine/body/inner_lines.h"
#include "engine/body/placed_body.h"
#include "engine/body/roof.h"

namespace hemline {

/// The plane over an eave into which a body runs.
struct HostPlane : EndlessPlane {
    PlanVector along, begins;  ///< where the eave begins
    double top = 0;            ///< the height of the plane's highest place
};
/// A body by itself, and `places` of its lines.
struct BodyAlone {
    const std::vector<BodySide>& said;
    std::span<const MovingSide> sides;
    const InnerLines& lines;
    std::span<const Space> places;
};
/// `under`: the plane into which the host runs itself; its eave begins where that covers it no
/// more.
HostPlane host_plane_of(const BodyAlone& host, std::size_t eave, const BodyPlace& place,
                        const std::optional<EndlessPlane>& under);

/// Of a body that runs into a plane. Tops that are as high within what their pitches may be off are
/// put at one height.
BodyPlace place_running_in(const BodyAlone& body, const RunsInto& said, const HostPlane& host);

/// A transition has its host's eave on it: its body only lies along that, and runs into nothing.
bool lies_under_host(const RoofBody& body);

/// Of a lower body in the plan of the upper one, whose eave lies on its transition; `rise`: of the
/// transition over the lower one's eave.
BodyPlace place_under_eave(const RoofBody& low, std::span<const MovingSide> sides,
                           std::size_t transition, double rise, const MovingSide& eave);

BodyPlace turned_back(const BodyPlace& place);
BodyPlace one_in_other(const BodyPlace& outer, const BodyPlace& inner);
EndlessPlane seen_from(const BodyPlace& place, const EndlessPlane& plane);

/// The side opposite the first open one; else the first.
std::size_t front_of(std::span<const BodySide> sides, std::span<const MovingSide> moving);

}  // namespace hemline
