// Every relaxation within some laps and unbalanced edges, alike edges told apart only by how many.
#pragma once

#include <functional>

#include "engine/joint/relax.h"

namespace hemline {

/// At most so many laps beyond the fewest, and so many unbalanced edges.
struct Allowed {
    std::int64_t extra_laps = 0, unbalanced = 0;
};

/// Edges whose rules and looks are the same, in the order of the first of each.
std::vector<std::vector<std::size_t>> alike_edges(const JointJob& job);

/// Asks `visit` to look at each, until it answers false. Together they leave out no lawful plan
/// within what is allowed (`laps_least`: laps that slivers force on every plan): an edge that runs
/// out without a lap more is unbalanced, and each lap more that is not of small ends
/// may excuse one. False when there
/// are more than `most`, or when stopped.
bool every_relaxation(const std::vector<EdgeWays>& ways,
                      const std::vector<std::vector<std::size_t>>& alike, Allowed allowed,
                      std::int64_t laps_least, std::int64_t most,
                      const std::function<bool(const Relaxation&)>& visit);

}  // namespace hemline
