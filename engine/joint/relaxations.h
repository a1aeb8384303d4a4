// Every relaxation within so many laps and unbalanced edges. Of edges that are alike only the
// number counts.
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

/// Calls `visit` with each, until it returns false. Together they leave out no permitted plan
/// within what is allowed (`laps_least`: laps that slivers force on every plan): an edge that runs
/// out without an extra lap is unbalanced, and each extra lap that is not used for small ends may
/// excuse one. False when there are more than `most`, or when stopped.
bool every_relaxation(const std::vector<EdgeWays>& ways,
                      const std::vector<std::vector<std::size_t>>& alike, Allowed allowed,
                      std::int64_t laps_least, std::int64_t most,
                      const std::function<bool(const Relaxation&)>& visit);

}  // namespace hemline
