// The runs of each pool divided together, in the order of what counts on this job.
#include <algorithm>
#include <map>

#include "engine/joint/joint.h"
#include "engine/plan/plan_parts.h"

namespace hemline {

namespace {

/// After every event the plan must be there before the finger lifts. Four times as many steps find
/// at most a few more edges that can be balanced, and plan_search looks for a better plan in
/// another thread.
constexpr std::int64_t steps_of_planned_most = 600'000;

Looks looks_of(const Edge& edge, Prefer prefer) {
    if (edge.looks != Looks::by_preference) {
        return edge.looks;
    }
    return prefer == Prefer::sticks ? Looks::free : Looks::balanced;
}

void add_run(PoolChoices& pool, const Run& run, const Edge& edge, const Trim& trim,
             const Practice& practice, Prefer prefer) {
    Length length;
    std::vector<std::optional<Length>> cut;
    std::vector<Division> laid;
    bool is_settled = run.by != DividedBy::together;
    for (const PlannedPiece& piece : run.pieces) {
        length += piece.covers;
        laid.push_back({piece.cut, piece.covers});
        cut.push_back(piece.is_cut ? std::optional(piece.cut) : std::nullopt);
        is_settled = is_settled || piece.is_cut;
    }
    if (!is_settled) {
        laid.clear();
        cut.clear();
    }
    const RunRule rule = run_rule(edge, trim, length, practice, run.tabs);
    pool.job.edges.push_back({rule, looks_of(edge, prefer), std::move(laid), std::move(cut)});
    pool.runs.push_back({run.edge, run.role});
}

std::vector<PoolChoices> joint_pools(const Job& job, const Catalogue& catalogue, const Plan& draft,
                                     Prefer prefer) {
    std::vector<PoolChoices> pools;
    std::map<std::string, std::size_t> known;
    const Stocks stocks(job, catalogue);
    for (const Run& run : draft.runs) {
        const EdgeWork* work = job.find(run.edge);
        const Trim* trim = catalogue.find(run.trim);
        require(work != nullptr && trim != nullptr, "a run has its edge and its trim");
        const std::string name = pool_of(work->edge, *trim);
        const auto [place, is_new] = known.emplace(name, pools.size());
        if (is_new) {
            pools.push_back({name, run.trim, {}, {}, {}});
            pools.back().job.kerf = job.practice.kerf;
            pools.back().job.stock = stocks.of(name).lengths;
        }
        add_run(pools[place->second], run, work->edge, *trim, job.practice, prefer);
    }
    return pools;
}

std::vector<ChosenDivision> divisions_in(const JointPlan& plan, const PoolChoices& pool) {
    std::vector<ChosenDivision> divisions;
    for (std::size_t e = 0; e < pool.runs.size() && e < plan.divisions.size(); ++e) {
        if (!plan.divisions[e].pieces.empty()) {
            divisions.push_back({pool.runs[e].edge, pool.runs[e].role, plan.divisions[e].pieces});
        }
    }
    return divisions;
}

PlanChoice choice_of(const JointPlan& plan, const PoolChoices& pool) {
    return {pool.trim,        pool.pool,       plan.extra_laps,
            plan.unbalanced,  plan.sticks,     plan.lower_bound,
            plan.proved,      plan.bound_from, divisions_in(plan, pool),
            plan.is_too_large};
}

}  // namespace

std::vector<PoolChoices> divide_pools(const Job& job, const Catalogue& catalogue,
                                      const PlanOptions& options, const Plan& draft) {
    const Prefer prefer = options.prefer.value_or(job.prefer);
    std::vector<PoolChoices> pools = joint_pools(job, catalogue, draft, prefer);
    for (PoolChoices& pool : pools) {
        if (options.choices == ListedChoices::all) {
            pool.plans = choices(pool.job, prefer, options.effort);
        } else {
            CuttingEffort effort = options.effort;
            effort.steps = std::min(effort.steps, steps_of_planned_most);
            pool.plans.push_back(plan_joint(pool.job, prefer, effort));
        }
    }
    return pools;
}

std::vector<ChosenDivision> first_choices(const std::vector<PoolChoices>& pools, Prefer prefer,
                                          Plan& plan) {
    std::vector<ChosenDivision> chosen;
    for (const PoolChoices& pool : pools) {
        for (const JointPlan& own : pool.plans) {
            plan.choices.push_back(choice_of(own, pool));
        }
        if (const JointPlan* first = first_choice(pool.plans, prefer)) {
            const auto divisions = divisions_in(*first, pool);
            chosen.insert(chosen.end(), divisions.begin(), divisions.end());
        }
    }
    return chosen;
}

}  // namespace hemline
