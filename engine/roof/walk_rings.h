// The edges around houses, in the job's order, as walks that each come full circle: the house, then
// a dormer or a lean-to that was added after it.
//
//   job's edges:  A B C D E   F G H      the turns after A … E add up to 360°, and so do those of
//                 └────────┘  └───┘      F … H
#pragma once

#include <span>
#include <vector>

#include "engine/roof/outline_walk.h"

namespace hemline {

/// How many of the edges, from the first on, make a walk that comes full circle: the most that do,
/// else 0. O(n²).
std::size_t full_circle(std::span<const WalkedEdge> edges, Tape tape);

struct WalkRing {
    std::vector<std::size_t> edges;  ///< indices into what was given
    bool closed = false;
};

/// All edges around houses in rings; the last may not come full circle. O(n²) a ring.
std::vector<WalkRing> rings_of(std::span<const WalkedEdge> edges, Tape tape);

/// Where one edge along the house ends and the next begins: the right end of `before`, the left end
/// of `after`, indices into what was given.
struct WalkPair {
    std::size_t before = 0, after = 0;
};
/// The corners between two level edges, both of which end there at the same corner, outside or
/// inside.
std::vector<WalkPair> corner_pairs(std::span<const WalkedEdge> edges, Tape tape);

}  // namespace hemline
