#include "engine/work/order.h"

#include <algorithm>
#include <map>
#include <string_view>

#include "engine/plan/plan.h"
#include "engine/record/job.h"
#include "engine/roof/edge_shape.h"
#include "engine/work/readiness.h"

namespace hemline {

namespace {

bool lies_under_panels(EdgeKind kind) { return facts_of(kind).under_panels; }

bool is_on_before(const Edge& other, const Edge& edge) {
    if (turn_of(other.kind) >= turn_of(edge.kind)) {
        return false;
    }
    if (!lies_under_panels(edge.kind) && lies_under_panels(other.kind)) {
        return true;
    }
    if (facts_of(edge.kind).after == other.kind) {
        return true;
    }
    for (const End end : {edge.left, edge.right}) {
        if (facts_of(other.kind).met_as == end) {
            return true;
        }
    }
    return false;
}

Text named(const Edge& edge) { return joined({spoken(edge.kind), Text(edge.id)}, " "); }

/// What every edge of a roof may wait for, worked out once for all.
struct Roof {
    Roof(const Job& job, const Plan& plan);

    /// Of each kind the first edge that is not finished.
    std::map<EdgeKind, const EdgeWork*> unfinished;
    std::map<std::string_view, const PlanProblem*> problems;  ///< the first of each edge
};

Roof::Roof(const Job& job, const Plan& plan) {
    for (const EdgeWork& work : job.edges) {
        if (!work.finished) {
            unfinished.emplace(work.edge.kind, &work);
        }
    }
    for (const PlanProblem& problem : plan.problems) {
        if (problem.severity == Severity::problem) {
            problems.emplace(problem.edge, &problem);
        }
    }
}

/// The first edge in the job's order, of the kind that comes first, that goes on before this one.
Text fitting_waits_for(const EdgeWork& work, const Roof& roof) {
    const EdgeWork* before = nullptr;
    for (const auto& [kind, other] : roof.unfinished) {
        if (!is_on_before(other->edge, work.edge)) {
            continue;
        }
        const int own = turn_of(kind);
        const int found = before == nullptr ? own + 1 : turn_of(before->edge.kind);
        // Edges lie one after another in the job.
        if (own < found || (own == found && other < before)) {
            before = other;
        }
    }
    if (before == nullptr) {
        return {};
    }
    const bool panels = lies_under_panels(before->edge.kind) && !lies_under_panels(work.edge.kind);
    return panels
               ? say("Finish {1} first: the panels lie on it, and {2} goes over the panels.",
                     named(before->edge), named(work.edge))
               : say("Finish {1} first: {2} goes over it.", named(before->edge), named(work.edge));
}

EdgeNext next_on(const EdgeWork& work, const Job& job, const Plan& plan, const Roof& roof,
                 const Procedures& procedures, const Catalogue& catalogue) {
    EdgeNext next;
    next.edge = work.edge.id;
    const auto procedure = procedures.find(work.edge.kind);
    const std::vector<StepRule> none;
    const std::vector<StepRule>& rules = procedure == procedures.end() ? none : procedure->second;
    const std::vector<Step> steps = steps_of(work, plan, job.practice, rules, catalogue);
    next.status = status_of(work, steps, job.practice);
    next.what = reading_missing(work, job.practice);
    if (!next.what.empty()) {
        return next;
    }
    const std::optional<std::size_t> step = next_step(steps);
    if (!step) {
        next.what = say("Fix the plan of edge {1} first.", work.edge.id);
        const auto problem = roof.problems.find(work.edge.id);
        next.waits_for = problem != roof.problems.end()
                             ? said(*problem->second)
                             : say("There are no steps for it: {1}.", spoken(work.edge.kind));
        return next;
    }
    next.what = steps[*step].action;
    next.waits_for = fitting_waits_for(work, roof);
    if (next.waits_for.empty()) {
        next.waits_for = steps[*step].waits_for;
    }
    return next;
}

}  // namespace

int turn_of(EdgeKind kind) { return facts_of(kind).turn; }

Text fitting_waits_for(const EdgeWork& work, const Job& job) {
    return fitting_waits_for(work, Roof(job, {}));
}

std::vector<EdgeNext> whats_next(const Job& job, const Plan& plan, const Procedures& procedures,
                                 const Catalogue& catalogue) {
    std::vector<const EdgeWork*> works;
    for (const EdgeWork& work : job.edges) {
        if (!work.finished) {
            works.push_back(&work);
        }
    }
    std::stable_sort(works.begin(), works.end(), [](const EdgeWork* a, const EdgeWork* b) {
        return turn_of(a->edge.kind) < turn_of(b->edge.kind);
    });
    std::vector<EdgeNext> all;
    all.reserve(works.size());
    const Roof roof(job, plan);
    for (const EdgeWork* work : works) {
        all.push_back(next_on(*work, job, plan, roof, procedures, catalogue));
    }
    std::stable_partition(all.begin(), all.end(),
                          [](const EdgeNext& next) { return next.waits_for.empty(); });
    return all;
}

}  // namespace hemline
