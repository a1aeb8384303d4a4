// The parts of making a plan: an edge's problems, its runs, and the sticks of all runs.
#pragma once

#include "engine/plan/plan.h"

namespace hemline {

/// The edge's main trim; nullptr when the catalogue has none of that name, kind and part.
const Trim* main_trim(const Edge& edge, const Catalogue& catalogue);

/// Adds what keeps the edge from being planned well: readings that disagree, pitch, seam, trim.
void judge_edge(const EdgeWork& work, const Job& job, const Catalogue& catalogue, Plan& plan);

/// Adds the runs of one edge whose length is agreed, or the problems that keep them from being
/// made.
void plan_runs(const EdgeWork& work, const Job& job, const Catalogue& catalogue,
               const PlanOptions& options, Plan& plan);

/// Gives every uncut piece of the plan its stick, pool by pool, with a proof for each.
void plan_sticks(const Job& job, const Catalogue& catalogue, const CuttingEffort& effort,
                 Plan& plan);

}  // namespace hemline
