#include "engine/plan/plan.h"

#include <algorithm>

#include "engine/measure/length_text.h"
#include "engine/plan/plan_parts.h"
#include "engine/roof/edge_shape.h"
#include "engine/trim/end_metal.h"

namespace hemline {

namespace {

/// As people read it, and exact: what does not lie on a 1/16 in is said in nanometres.
std::string exactly(Length length) {
    return length.nm() % sixteenths(1).nm() == 0 ? print_length(length)
                                                 : std::to_string(length.nm()) + " nm";
}

/// Every run but the cleats as its edge alone has it: a cleat follows the laps of its edge,
/// whatever they come to be.
Plan draft_runs(const Job& job, const Catalogue& catalogue, PlanOptions options) {
    options.cleat = false;
    Plan draft;
    for (const EdgeWork& work : job.edges) {
        plan_runs(work, job, catalogue, options, {}, draft);
    }
    return draft;
}

}  // namespace

RunRule run_rule(const Edge& edge, const Trim& trim, Length length, const Practice& practice) {
    RunRule rule;
    rule.edge = length;
    rule.stock = practice.stock;
    rule.sliver = practice.sliver;
    rule.grid = practice.cut_grid;
    if (trim.role != TrimRole::cleat) {
        const Side first = first_fitted(edge);
        rule.lap = lap_on(edge, practice);
        rule.allowance_first = end_metal(edge, first, trim, practice).added();
        rule.allowance_last = end_metal(edge, other(first), trim, practice).added();
    }
    return rule;
}

std::string pool_of(const Edge& edge, const Trim& trim) {
    std::string pool = trim.id;
    for (const Leg& leg : fitted_to(trim, edge).legs) {
        if (leg.name == LegName::face || leg.name == LegName::flange) {
            pool += ", " + std::string(word_of(leg.name)) + " " + exactly(leg.width);
        }
    }
    if (!edge.metal.empty()) {
        pool += ", metal " + edge.metal;
    }
    if (edge.thickness) {
        pool += ", thickness " + exactly(*edge.thickness);
    }
    if (!edge.colour.empty()) {
        pool += ", colour " + edge.colour;
    }
    return pool;
}

Plan make_plan(const Job& job, const Catalogue& catalogue, const PlanOptions& options) {
    Plan plan;
    const auto chosen = first_choices(choices_by_pool(job, catalogue, options),
                                      options.prefer.value_or(job.prefer), plan);
    for (const EdgeWork& work : job.edges) {
        judge_edge(work, job, catalogue, plan);
        plan_runs(work, job, catalogue, options, chosen, plan);
    }
    plan_sticks(job, catalogue, options.effort, plan);
    return plan;
}

std::vector<PlanChoice> find_choices(const Job& job, const Catalogue& catalogue,
                                     const CuttingEffort& effort) {
    Job open = job;
    open.prefer = Prefer::looks;
    for (EdgeWork& work : open.edges) {
        Looks& looks = work.edge.looks;
        looks = looks == Looks::by_preference ? Looks::free : looks;
        const auto is_begun = [&](const RunChosen& run) {
            return std::any_of(work.cut.begin(), work.cut.end(),
                               [&](const CutPiece& piece) { return piece.role == run.role; });
        };
        work.chosen.erase(std::stable_partition(work.chosen.begin(), work.chosen.end(), is_begun),
                          work.chosen.end());
    }
    PlanOptions options;
    options.effort = effort;
    options.choices = ListedChoices::all;
    Plan plan;
    first_choices(choices_by_pool(open, catalogue, options), open.prefer, plan);
    return plan.choices;
}

std::vector<PoolChoices> choices_by_pool(const Job& job, const Catalogue& catalogue,
                                         const PlanOptions& options) {
    return divide_pools(job, catalogue, options, draft_runs(job, catalogue, options));
}

const Run* find_run(const Plan& plan, std::string_view edge, TrimRole role) {
    const auto found = std::find_if(plan.runs.begin(), plan.runs.end(), [&](const Run& run) {
        return run.edge == edge && run.role == role;
    });
    return found == plan.runs.end() ? nullptr : &*found;
}

const PlannedStick* find_stick(const Plan& plan, int number) {
    const auto found = std::find_if(plan.sticks.begin(), plan.sticks.end(),
                                    [&](const PlannedStick& s) { return s.number == number; });
    return found == plan.sticks.end() ? nullptr : &*found;
}

}  // namespace hemline
