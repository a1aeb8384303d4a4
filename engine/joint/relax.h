// Simpler cutting jobs that no permitted joint plan can beat: an edge that runs out leaves a single
// rest, and edges that share laps share a long stick.
//
//   y sticks joined by y − 1 laps:   |-----stick-----|
//                                               |lap|-----stick-----|   holds y·stick − (y − 1)·lap
#pragma once

#include "engine/joint/ways.h"

namespace hemline {

/// What is asked of an edge: balanced with the fewest pieces, balanced with one more lap, or
/// anything.
enum class Ask : std::uint8_t { even, even_more, anything };

/// A relaxed job: what is asked of each edge, and how many sticks each group joined by laps takes
/// (≥ 2; groups of one stick are not listed).
struct Relaxation {
    std::vector<Ask> ask;
    std::vector<std::int64_t> groups;
};

/// Where a piece of a relaxed job comes from: an edge's rest (may be split), or a fixed piece.
struct RelaxedPiece {
    std::size_t edge = 0;
    bool is_rest = false;
};

struct Relaxed {
    Relaxation of;
    CuttingJob job;
    std::vector<RelaxedPiece> from;  ///< one for each demand of the job
    CuttingPlan plan;
    JointBound bound;
};

/// True where rests and groups give a bound: new stock has a single unlimited length, which is the
/// stick of every edge, and all laps are the same. Otherwise only edges that are asked to be even
/// can be relaxed.
bool can_relax(const JointJob& job, const std::vector<EdgeWays>& ways);

Relaxed relax(const JointJob& job, const std::vector<EdgeWays>& ways, const Relaxation& relaxation,
              std::int64_t steps, Effort& effort);

/// The ways to share so many laps out over groups: {} for none, {3} and {2, 2} for two.
std::vector<std::vector<std::int64_t>> groups_of(std::int64_t laps);

/// The total metal against the sticks, with `extra_laps` laps more than the fewest.
std::int64_t metal_bound(const JointJob& job, const std::vector<EdgeWays>& ways,
                         std::int64_t extra_laps);

}  // namespace hemline
