// Where the bodies of a roof lie: from what each one runs into, and from the eaves that lie on
// transitions.
#pragma once

#include "engine/body/body_ties.h"
#include "engine/body/placed_body.h"
#include "engine/body/roof.h"
#include "engine/body/running_in.h"

namespace hemline {

/// What a body's place follows from.
struct BodyTie {
    enum class How : std::uint8_t { stands, runs_in, transition } how = How::stands;
    std::size_t body = 0;
    SideOfRoof low = {};   ///< the transition under the eave
    SideOfRoof eave = {};  ///< into whose plane it runs, or what lies on the transition
};

struct PlacedBodies {
    bool closes = true;  ///< else the first that does not, and nothing is placed
    Length miss;
    std::size_t open_body = 0;
    std::vector<PlacedBody> bodies;
    std::vector<RunIn> lain;    ///< each body by itself, and where it lies
    std::vector<BodyTie> ties;  ///< each after what it is tied to
};

enum class WalkThatIsOpen { is_said, is_forced };

/// Problem: as work_out_roof(), save what shows only once the bodies lie over one another.
Result<PlacedBodies> place_bodies(std::span<const RoofBody> bodies, Tape tape, WalkThatIsOpen open,
                                  const std::optional<PitchChange>& change = {});

}  // namespace hemline
