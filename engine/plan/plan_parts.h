// The parts of making a plan: an edge's problems, its runs, and the sticks of all runs.
#pragma once

#include "engine/plan/plan.h"

namespace hemline {

/// The edge's main trim; nullptr when the catalogue has none of that name, kind and part.
const Trim* main_trim(const Edge& edge, const Catalogue& catalogue);

/// Adds what keeps the edge from being planned well: readings that disagree, pitch, seam, trim.
void judge_edge(const EdgeWork& work, const Job& job, const Catalogue& catalogue, Plan& plan);

/// The division that was chosen for a run together with the others of its pool.
struct ChosenDivision {
    std::string edge;
    TrimRole role = TrimRole::main;
    std::vector<Division> pieces;
};

/// Divides the main and wrap runs of a draft, pool by pool, as one problem each, and adds the
/// choices of each pool to the plan. A run with a piece cut keeps its division.
std::vector<ChosenDivision> divide_jointly(const Job& job, const Catalogue& catalogue,
                                           const PlanOptions& options, const Plan& draft,
                                           Plan& plan);

/// Adds the runs of one edge whose length is agreed, or the problems that keep them from being
/// made.
void plan_runs(const EdgeWork& work, const Job& job, const Catalogue& catalogue,
               const PlanOptions& options, std::span<const ChosenDivision> chosen, Plan& plan);

/// The offcuts of one pool, shortest first so that the longer ones stay whole.
std::vector<const Offcut*> offcuts_in(const std::string& pool, const Job& job,
                                      const Catalogue& catalogue);

/// Gives every uncut piece of the plan its stick, pool by pool, with a proof for each.
void plan_sticks(const Job& job, const Catalogue& catalogue, const CuttingEffort& effort,
                 Plan& plan);

}  // namespace hemline
