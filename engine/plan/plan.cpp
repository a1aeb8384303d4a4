#include "engine/plan/plan.h"

#include <algorithm>
#include <utility>

#include "engine/measure/length_text.h"
#include "engine/plan/plan_parts.h"
#include "engine/roof/edge_shape.h"
#include "engine/trim/end_metal.h"

namespace hemline {

namespace {

/// As people read it, and exact: a length that is not on a 1/16 in mark is printed in nanometers.
std::string exactly(Length length) {
    return length.nm() % sixteenths(1).nm() == 0 ? print_length(length)
                                                 : std::to_string(length.nm()) + " nm";
}

/// Every run but the cleats, each from its edge alone. Cleats come later, because they follow the
/// laps of their edge.
Plan draft_runs(const Job& job, const Catalogue& catalogue, PlanOptions options) {
    options.cleat = false;
    Plan draft;
    draft.corner_tabs = corner_tabs_of(job);
    for (const EdgeWork& work : job.edges) {
        plan_runs(work, job, catalogue, options, {}, draft);
    }
    return draft;
}

}  // namespace

RunRule run_rule(const Edge& edge, const Trim& trim, Length length, const Practice& practice,
                 const CornerTabs& tabs) {
    RunRule rule;
    rule.edge = length;
    rule.stock = practice.stock;
    rule.sliver = practice.sliver;
    rule.grid = practice.cut_grid;
    if (trim.role != TrimRole::cleat) {
        const Side first = first_fitted(edge);
        rule.lap = lap_on(edge, practice);
        rule.allowance_first = end_metal(edge, first, trim, practice, tabs).added();
        rule.allowance_last = end_metal(edge, other(first), trim, practice, tabs).added();
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
    plan.corner_tabs = corner_tabs_of(job);
    plan.corner_neighbors = corner_neighbors_of(job);
    ChosenRuns chosen;
    for (ChosenDivision& own : first_choices(choices_by_pool(job, catalogue, options),
                                             options.prefer.value_or(job.prefer), plan)) {
        chosen.emplace(std::pair(own.edge, own.role), std::move(own.pieces));
    }
    for (const EdgeWork& work : job.edges) {
        judge_edge(work, job, catalogue, plan);
        plan_runs(work, job, catalogue, options, chosen, plan);
    }
    judge_metals(job, plan);
    judge_wall_corners(job, catalogue, plan);
    judge_wind(job, plan);
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
    const auto first = plan.first_runs.find(edge);
    if (first == plan.first_runs.end() && !plan.first_runs.empty()) {
        return nullptr;
    }
    // A plan made by hand, as in a test, has no index: search it.
    const std::size_t from = first == plan.first_runs.end() ? 0 : first->second;
    for (std::size_t r = from; r < plan.runs.size(); ++r) {
        if (plan.runs[r].edge == edge && plan.runs[r].role == role) {
            return &plan.runs[r];
        }
        if (!plan.first_runs.empty() && plan.runs[r].edge != edge) {
            return nullptr;
        }
    }
    return nullptr;
}

const PlannedStick* find_stick(const Plan& plan, int number) {
    // Numbered as they lie there, from 1 on.
    const auto place = static_cast<std::size_t>(number) - 1;
    return number < 1 || place >= plan.sticks.size() ? nullptr : &plan.sticks[place];
}

const PlannedPanels* find_panels(const Plan& plan, std::string_view panels) {
    const auto known = plan.panels.find(panels);
    return known == plan.panels.end() ? nullptr : &known->second;
}

}  // namespace hemline
