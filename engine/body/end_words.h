// What meets the ends of edges that bodies share or cut short.
#pragma once

#include <vector>

#include "engine/body/body.h"

namespace hemline {

/// An edge, and which of its ends have their word already.
struct WordedEdge {
    BodyEdge edge;
    bool left_said = false, right_said = false;
};

/// A corner of a body's walk where an eave begins or ends.
struct WalkedCorner {
    Space at;
    Angle inside;
};

/// The others get, of what is at the same place within `near`, the first that their kind can have:
/// an eave's end at a roof is a wall, or an inside corner with that roof's eave.
std::vector<BodyEdge> with_end_words(std::vector<WordedEdge> edges,
                                     const std::vector<WalkedCorner>& corners, double near);

}  // namespace hemline
