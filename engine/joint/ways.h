// The permitted divisions of each edge, and what it takes to cut a choice of one for each edge.
#pragma once

#include <vector>

#include "engine/cutting/effort.h"
#include "engine/joint/joint.h"

namespace hemline {

/// What an edge may do, and what any division of it into the fewest pieces takes at least.
struct EdgeWays {
    std::vector<EdgeOption> options;     ///< permitted by the edge's looks; splits are added
    std::vector<std::size_t> even;       ///< options that are balanced, or as near as they can be
    std::vector<std::size_t> even_more;  ///< the same with laps more
    std::vector<std::size_t> run_out;    ///< options that run out, fewest pieces
    std::int64_t fulls = 0;              ///< full sticks of a division that runs out
    Length rest;                         ///< and what is left over, > 0
    bool is_free = false;                ///< may run out
    bool counts = false;                 ///< unbalanced when it does, at the fewest pieces
    bool is_fixed = false;               ///< a piece is cut, or the fewest pieces cannot balance
};

/// One option for each edge.
using Chosen = std::vector<std::size_t>;

std::vector<EdgeWays> ways_of(const JointJob& job);

/// The option whose pieces are cut to these lengths, in fitting order.
EdgeOption option_of_cuts(const RunRule& rule, const std::vector<Length>& cuts);

/// The place of this option among the edge's, added where it is new.
std::size_t add_option(EdgeWays& ways, EdgeOption option);

/// Cuts every piece of the chosen divisions with at most `steps` of the effort. Does not set lower
/// bound and proof.
JointPlan cut_chosen(const JointJob& job, const std::vector<EdgeWays>& ways, const Chosen& chosen,
                     std::int64_t steps, Effort& effort);

/// Plans a cutting job with at most `steps` of the effort.
CuttingPlan cut_within(const CuttingJob& job, std::int64_t steps, Effort& effort);

/// True when a is at least as good as b in laps, unbalanced edges, sticks and missing pieces.
bool as_good(const JointPlan& a, const JointPlan& b);

}  // namespace hemline
