#include "engine/work/order.h"

#include <algorithm>
#include <map>
#include <string_view>
#include <utility>

#include "engine/plan/plan.h"
#include "engine/record/job.h"
#include "engine/roof/edge_shape.h"
#include "engine/work/readiness.h"
#include "engine/work/wall_corners.h"

namespace hemline {

namespace {

Panels panels_of(const Edge& edge, const Catalogue& catalogue) {
    const Trim* const trim = catalogue.of(edge);
    return trim == nullptr ? Panels::over : trim->panels;
}

/// An edge with where its trim lies.
struct Laid {
    const EdgeWork* work = nullptr;
    Panels panels = Panels::under;

    [[nodiscard]] int turn() const { return turn_of(work->edge.kind, panels); }
};

bool is_on_before(const Laid& other, const Laid& own) {
    if (other.turn() >= own.turn()) {
        return false;
    }
    const Edge& edge = own.work->edge;
    if (own.panels == Panels::over &&
        (other.panels == Panels::under || other.work->edge.kind == EdgeKind::panels)) {
        return true;
    }
    const KindOfEdge& facts = facts_of(other.work->edge.kind);
    return facts_of(edge.kind).after == facts.kind || facts.met_as == edge.left ||
           facts.met_as == edge.right;
}

Text named(const Edge& edge) { return joined({spoken(edge.kind), Text(edge.id)}, " "); }

/// What every edge of a roof may wait for, worked out once for all edges.
struct RoofWork {
    RoofWork(const Job& job, const Plan& plan, const Catalogue& catalogue);

    /// For each kind, under and over the panels, the first edge that is not finished.
    std::map<std::pair<EdgeKind, Panels>, Laid> unfinished;
    std::vector<Laid> walls;  ///< unfinished headwalls and sidewalls, as in the job
    std::map<std::string_view, const PlanProblem*> problems;  ///< the first of each edge
};

RoofWork::RoofWork(const Job& job, const Plan& plan, const Catalogue& catalogue) {
    for (const EdgeWork& work : job.edges) {
        if (!work.finished) {
            const Panels panels = panels_of(work.edge, catalogue);
            unfinished.emplace(std::pair(work.edge.kind, panels), Laid{&work, panels});
            if (work.edge.kind == EdgeKind::headwall || work.edge.kind == EdgeKind::sidewall) {
                walls.push_back({&work, panels});
            }
        }
    }
    for (const PlanProblem& problem : plan.problems) {
        if (problem.severity == Severity::problem) {
            problems.emplace(problem.edge, &problem);
        }
    }
}

/// The edge that goes on before this one: of the kind that comes first, the first in the job's
/// order.
Text fitting_waits_for(const Laid& own, const RoofWork& roof) {
    std::optional<Laid> before;
    for (const auto& [kind, other] : roof.unfinished) {
        // Edges lie one after another in the job.
        if (is_on_before(other, own) && (!before || std::pair(other.turn(), other.work) <
                                                        std::pair(before->turn(), before->work))) {
            before = other;
        }
    }
    if (!before) {
        const auto wall = std::find_if(roof.walls.begin(), roof.walls.end(), [&](const Laid& one) {
            return goes_first_at_corner(one.work->edge, own.work->edge);
        });
        if (wall != roof.walls.end()) {
            before = *wall;
        }
    }
    if (!before) {
        return {};
    }
    const Edge& edge = own.work->edge;
    const Edge& first = before->work->edge;
    if (edge.kind == EdgeKind::panels) {
        return say("Finish {1} first: the panels lie on it.", named(first));
    }
    if (first.kind == EdgeKind::panels) {
        return say("Finish {1} first: {2} goes over them.", named(first), named(edge));
    }
    return before->panels == own.panels
               ? say("Finish {1} first: {2} goes over it.", named(first), named(edge))
               : say("Finish {1} first: the panels lie on it, and {2} goes over the panels.",
                     named(first), named(edge));
}

EdgeNext next_on(const EdgeWork& work, const Job& job, const Plan& plan, const RoofWork& roof,
                 const Procedures& procedures, const Catalogue& catalogue) {
    EdgeNext next;
    next.edge = work.edge.id;
    const auto procedure = procedures.find(work.edge.kind);
    const std::vector<StepRule> none;
    const std::vector<StepRule>& rules = procedure == procedures.end() ? none : procedure->second;
    const std::vector<Step> steps =
        steps_of(work, plan, job.practice, rules, catalogue, corner_mates(work, plan, job));
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
    next.waits_for = fitting_waits_for(Laid{&work, panels_of(work.edge, catalogue)}, roof);
    if (next.waits_for.empty()) {
        next.waits_for = steps[*step].waits_for;
    }
    return next;
}

}  // namespace

int turn_of(EdgeKind kind, Panels panels) {
    constexpr int past_panels = 100;
    return facts_of(kind).turn + (panels == Panels::over ? past_panels : 0);
}

int turn_of(const Edge& edge, const Catalogue& catalogue) {
    return turn_of(edge.kind, panels_of(edge, catalogue));
}

Text fitting_waits_for(const EdgeWork& work, const Job& job, const Catalogue& catalogue) {
    return fitting_waits_for(Laid{&work, panels_of(work.edge, catalogue)},
                             RoofWork(job, {}, catalogue));
}

std::vector<EdgeNext> whats_next(const Job& job, const Plan& plan, const Procedures& procedures,
                                 const Catalogue& catalogue) {
    std::vector<const EdgeWork*> works;
    for (const EdgeWork& work : job.edges) {
        if (!work.finished) {
            works.push_back(&work);
        }
    }
    std::stable_sort(works.begin(), works.end(), [&](const EdgeWork* a, const EdgeWork* b) {
        return turn_of(a->edge, catalogue) < turn_of(b->edge, catalogue);
    });
    std::vector<EdgeNext> all;
    all.reserve(works.size());
    const RoofWork roof(job, plan, catalogue);
    for (const EdgeWork* work : works) {
        all.push_back(next_on(*work, job, plan, roof, procedures, catalogue));
    }
    std::stable_partition(all.begin(), all.end(),
                          [](const EdgeNext& next) { return next.waits_for.empty(); });
    return all;
}

}  // namespace hemline
