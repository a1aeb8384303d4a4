// Everything that follows from the events: the job, its trims, its plan, and the search for better
// plans.
#include <algorithm>

#include "engine/plan/make_plan.h"
#include "engine/work/job_sections.h"
#include "engine/work/plane_panels.h"
#include "engine/work/procedure_words.h"
#include "field/update/turn.h"

namespace hemline {

void look_for_choices(Turn turn) {
    turn.state.looking = true;
    turn.want(deed::LookForChoices{++turn.session.search});
}

void compute(Turn turn) {
    State& state = turn.state;
    const Assets& assets = *state.assets;
    state.job = replay(state.events, assets.practice);
    state.marks = marks_of(state.job.practice);
    state.catalogue = catalogue_on(assets.catalogue, assets.sections, state.job);
    state.sections = sections_on(assets.sections, state.job);
    state.plan = make_plan(state.job, state.catalogue);
    state.outline = outline_of(state.job);
    state.bodies = roof_bodies(state.job);
    plan_panels(state.plan, state.job, state.bodies);
    state.undo_target = undo_target(state.events, state.job.struck, state.writer);
    state.clocks = clock_doubts(state.events);
    state.choices.clear();
    state.looking = false;
    ++turn.session.search;
    turn.want(deed::StopSearch{});
    const std::vector<Proof>& proofs = state.plan.proofs;
    if (!std::all_of(proofs.begin(), proofs.end(), [](const Proof& p) { return p.proved; })) {
        look_for_choices(turn);
    }
}

void on(Turn turn, const news::ChoicesFound& found) {
    if (found.search != turn.session.search) {
        return;  // the job has changed since
    }
    if (found.choices) {
        turn.state.choices = *found.choices;
    }
    turn.state.looking = found.under_way;
}

}  // namespace hemline
