// What a plan is chosen from: the ways found to divide and cut each pool.
#pragma once

#include <string>
#include <vector>

#include "engine/joint/joint.h"
#include "engine/plan/make_plan.h"

namespace hemline {

struct Job;

struct PoolRun {
    std::string edge;
    TrimRole role = TrimRole::main;
};

/// A pool divided and cut as a single problem, and the plans found for it.
struct PoolChoices {
    std::string pool, trim;
    std::vector<PoolRun> runs;  ///< main trims and wraps; one for each edge of the job
    JointJob job;
    std::vector<JointPlan> plans;
};

/// What make_plan() chooses from with the same options.
std::vector<PoolChoices> choices_by_pool(const Job& job, const Catalogue& catalogue,
                                         const PlanOptions& options);

}  // namespace hemline
