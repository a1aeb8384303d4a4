// A roof of several bodies: each is worked out by itself and put where it lies; where one runs into
// another, the higher of the two is the roof.
//
//        host's ridge                 front: the body's side opposite its open one
//     ------------------              along: from the host eave's left end to the front's left end
//           /\  valleys               up:    in plan, from the host's eave to the front
//          /  \ and the ridge's end   rise:  of the body's eave over the host's
//         |    |
//         +----+ front
//     ------------------ host's eave
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/body/body.h"

namespace hemline {

/// Where a body runs into a plane of another.
struct RunsInto {
    std::string eave;  ///< of the host, by its id
    Length along, up;  ///< in plan; up is negative outside the eave
    Length rise;
};

/// A body as it is said. Sides have names that are unique on the roof; `meets` of a transition says
/// which other body's eave lies on it, left ends together.
struct RoofBody {
    std::string name;
    std::vector<BodySide> sides;
    std::optional<RunsInto> host;
};

/// Every side, through all bodies, as planes and edges count them.
using SidesOfRoof = std::vector<const BodySide*>;
SidesOfRoof sides_of(std::span<const RoofBody> bodies);

/// Of several bodies as of one; sides and planes are counted through all bodies in their order, and
/// x and y are those of the first. A body that nothing ties to the others lies to their right.
using Roof = Body;

/// Sides beside an open one go on until they lie under the host. Where planes of two bodies meet
/// there is a valley, or a transition where they meet in a level line; where a body stands on
/// another, the lower roof has a headwall, sidewalls, a curb head. An edge between two bodies
/// belongs to the one that runs in. Problem: as work_out_body(); bodies that run into no eave that
/// there is, or into one another in a circle; planes that never meet the host.
Result<Roof> work_out_roof(std::span<const RoofBody> bodies, Tape tape);

}  // namespace hemline
