// A joint bound shown by parts alone, however the planner came to it.
#include "engine/plan/joint_branch.h"

namespace hemline {

namespace {

/// A piece is worth its metal and its kerf: the metal in all, off by less than a grid step an edge.
JointPart metal_in_all(const JointJob& job, const JointNeeds& needs, const JointPlan& plan,
                       Effort& effort) {
    JointPart part{all_divisions(needs), {}};
    JointWorths& worths = part.worths;
    for (Length own = needs.grid; own <= needs.stick; own += needs.grid) {
        worths.from.push_back(own);
        worths.worth.push_back((own + job.kerf).nm());
    }
    for (const StockLength& stock : job.stock) {
        worths.stick_worth.push_back((stock.length + job.kerf).nm());
    }
    const LeastWorth least(needs, worths, effort);
    std::int64_t sum = 0;
    for (std::size_t e = 0; e < needs.edges.size(); ++e) {
        if (part.edges[e].classes != 0) {
            sum += cheapest(needs.edges[e], part.edges[e], worths, least, effort).cost;
        }
    }
    settle(job, sum, plan.extra_laps, plan.unbalanced, worths);
    return part;
}

}  // namespace

std::vector<JointPart> parts_of_bound(const JointJob& job, const JointPlan& plan,
                                      const CuttingEffort& effort) {
    if (!plan.parts.empty()) {
        return plan.parts;
    }
    const auto needs = needs_of(job, ways_of(job), plan.extra_laps);
    if (!needs) {
        return {};
    }
    Effort own(effort);
    JointPart metal = metal_in_all(job, *needs, plan, own);
    if (metal.worths.bound >= plan.lower_bound) {
        return {std::move(metal)};
    }
    const auto no_better = [&](const auto&) { return plan.sticks; };
    JointProgram program(job, *needs, lengths_told_apart(*needs));
    JointBranch branch(*needs, program, plan.extra_laps, plan.unbalanced, no_better, own);
    branch.close_gap(plan.lower_bound);
    return branch.bound() >= plan.lower_bound ? branch.parts() : std::vector<JointPart>();
}

}  // namespace hemline
