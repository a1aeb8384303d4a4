#include "engine/plan/cutting.h"

#include "engine/plan/cutting_fill.h"
#include "engine/plan/worth_bound.h"

namespace hemline {

CuttingPlan plan_cutting(const CuttingJob& job) {
    const CuttingTask task = task_of(job);
    const Cutting cutting = filled(task);
    const Worths volume = volume_bound(task);
    Worths worths = l2_bound(task);
    CuttingPlan plan = plan_of(task, job, cutting);
    plan.certificate = certificate_of(task, job, worths);
    plan.lower_bound = worths.bound;
    plan.proved = plan.missing.empty() && plan.sticks == plan.lower_bound;
    plan.bound_from = worths.bound > volume.bound ? "long pieces share no stick" : "metal in all";
    return plan;
}

}  // namespace hemline
