#include "engine/work/order.h"

#include <algorithm>

#include "engine/roof/edge_shape.h"
#include "engine/work/readiness.h"

namespace hemline {

namespace {

/// The kinds whose trim is on before that of an edge that ends there.
std::vector<EdgeKind> kinds_at(End end) {
    switch (end) {
        case End::gable:
            return {EdgeKind::gable};
        case End::wall:
            return {EdgeKind::sidewall, EdgeKind::headwall};
        case End::eave:
            return {EdgeKind::eave, EdgeKind::high_eave};
        case End::ridge:
            return {EdgeKind::ridge};
        case End::hip:
            return {EdgeKind::hip};
        case End::valley:
            return {EdgeKind::valley};
        case End::corner_out:
        case End::corner_in:
        case End::open:
            break;
    }
    return {};
}

bool carries_panels(EdgeKind kind) { return turn_of(kind) <= turn_of(EdgeKind::valley); }

bool is_on_before(const Edge& other, const Edge& edge) {
    if (turn_of(other.kind) >= turn_of(edge.kind)) {
        return false;
    }
    if (!carries_panels(edge.kind) && carries_panels(other.kind)) {
        return true;
    }
    for (const End end : {edge.left, edge.right}) {
        const auto kinds = kinds_at(end);
        if (std::find(kinds.begin(), kinds.end(), other.kind) != kinds.end()) {
            return true;
        }
    }
    return false;
}

Text named(const Edge& edge) { return joined({spoken(edge.kind), edge.id}, " "); }

EdgeNext next_on(const EdgeWork& work, const Job& job, const Plan& plan,
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
        next.what = say("Mend the plan of edge {1} first.", work.edge.id);
        for (const PlanProblem& problem : plan.problems) {
            if (problem.edge == work.edge.id && problem.severity == Severity::problem) {
                next.waits_for = joined({problem.what, problem.mend}, " ");
                return next;
            }
        }
        next.waits_for = say("There are no steps for it: {1}.", spoken(work.edge.kind));
        return next;
    }
    next.what = steps[*step].action;
    next.waits_for = fitting_waits_for(work, job);
    if (next.waits_for.empty()) {
        next.waits_for = steps[*step].waits_for;
    }
    return next;
}

}  // namespace

int turn_of(EdgeKind kind) {
    switch (kind) {
        case EdgeKind::eave:
            return 0;
        case EdgeKind::valley:
            return 1;
        case EdgeKind::sidewall:
        case EdgeKind::headwall:
        case EdgeKind::transition:
        case EdgeKind::penetration:
            return 2;
        case EdgeKind::gable:
            return 3;
        case EdgeKind::high_eave:
            return 4;
        case EdgeKind::hip:
            return 5;
        case EdgeKind::ridge:
            break;
    }
    return 6;
}

Text fitting_waits_for(const EdgeWork& work, const Job& job) {
    const EdgeWork* before = nullptr;
    for (const EdgeWork& other : job.edges) {
        const bool in_the_way = !other.finished && is_on_before(other.edge, work.edge);
        if (in_the_way &&
            (before == nullptr || turn_of(other.edge.kind) < turn_of(before->edge.kind))) {
            before = &other;
        }
    }
    if (before == nullptr) {
        return {};
    }
    const bool panels = carries_panels(before->edge.kind) && !carries_panels(work.edge.kind);
    return panels
               ? say("Finish {1} first: the panels lie on it, and {2} goes over the panels.",
                     named(before->edge), named(work.edge))
               : say("Finish {1} first: {2} goes over it.", named(before->edge), named(work.edge));
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
    for (const EdgeWork* work : works) {
        all.push_back(next_on(*work, job, plan, procedures, catalogue));
    }
    std::stable_partition(all.begin(), all.end(),
                          [](const EdgeNext& next) { return next.waits_for.empty(); });
    return all;
}

}  // namespace hemline
