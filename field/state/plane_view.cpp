#include "field/state/plane_view.h"

#include <algorithm>

#include "engine/words/result.h"

namespace hemline {

const PlannedPanels* panels_at(const State& state) {
    return find_panels(state.plan, state.where.edge);
}

bool may_lay_panels(const State& state) {
    return state.plan.panels.empty() &&
           std::any_of(state.bodies.begin(), state.bodies.end(),
                       [](const BodyOnJob& body) { return body.worked.has_value(); });
}

std::vector<PansAlike> pans_alike(const PanelLayout& layout) {
    std::vector<PansAlike> all;
    for (const LaidPan& pan : layout.pans) {
        const bool again = !all.empty() && all.back().width == pan.width &&
                           all.back().length == pan.length && all.back().kind == pan.kind;
        if (again) {
            all.back().last = pan.number;
        } else {
            all.push_back({pan.number, pan.number, pan.width, pan.length, pan.kind});
        }
    }
    return all;
}

const LaidPan* find_pan(const PanelLayout& layout, int number) {
    const auto pan = std::find_if(layout.pans.begin(), layout.pans.end(),
                                  [&](const LaidPan& one) { return one.number == number; });
    return pan == layout.pans.end() ? nullptr : &*pan;
}

std::vector<Text> doubts_on(const State& state, std::string_view panels) {
    std::vector<Text> doubts;
    for (const PlanProblem& problem : state.plan.problems) {
        if (problem.edge == panels) {
            doubts.push_back(glued(problem.what, " ", problem.mend));
        }
    }
    return doubts;
}

}  // namespace hemline
