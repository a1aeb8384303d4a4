// What was said of the roof as one body: the walk round it, and where an edge lies on it. What
// follows (planes, expected lengths) is worked out and never said.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "engine/record/kinds.h"
#include "engine/record/said_values.h"

namespace hemline {

/// The sides of a body as far as they are walked, the building on the left; a later walk replaces
/// it, one without sides takes the body off the job.
struct BodyWalked {
    static constexpr std::uint16_t kind_number = 57;
    std::string body;
    std::vector<SideWalked> sides;
    bool closed = false;           ///< the walk came back to where it began
    std::optional<HostSaid> host;  ///< the roof that this body runs into

    bool operator==(const BodyWalked&) const = default;
};
/// The edge is the one where those two sides' planes meet, or that an upright side gives a plane.
/// It keeps its name for ever, whatever the walk becomes.
struct EdgePlaced {
    static constexpr std::uint16_t kind_number = 58;
    std::string edge;
    PlaceOnBody at;

    bool operator==(const EdgePlaced&) const = default;
};

using BodyFacts = Kinds<BodyWalked, EdgePlaced>;

}  // namespace hemline
