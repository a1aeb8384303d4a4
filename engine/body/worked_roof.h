// A roof worked out once, as its readings are: without names, and without how far they may be off.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "engine/body/joined_bodies.h"
#include "engine/body/placing.h"

namespace hemline {

struct WorkedRoof {
    bool closes = true;  ///< else nothing else is known but the miss
    Length miss;
    std::vector<LaidSide> walk;
    std::vector<BodyEdge> edges;
    std::optional<SolvedBody> alone;     ///< of one body
    std::optional<PlacedBodies> placed;  ///< of several
    std::optional<JoinedBodies> joined;
};

/// Problem: as work_out_roof().
Result<WorkedRoof> work_out(std::span<const RoofBody> bodies, Tape tape, WalkThatIsOpen open,
                            const std::optional<PitchChange>& change = {});

}  // namespace hemline
