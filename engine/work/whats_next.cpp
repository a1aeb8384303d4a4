// Where an edge stands, and the next cut of the whole job.
#include <algorithm>

#include "engine/plan/plan.h"
#include "engine/record/job.h"
#include "engine/roof/edge_shape.h"
#include "engine/roof/readings.h"
#include "engine/trim/practice.h"
#include "engine/work/order.h"
#include "engine/work/procedure.h"
#include "engine/work/readiness.h"

namespace hemline {
namespace {

/// Wrap and cleat come before the trim, but to be cut none of the three waits until another is
/// fitted.
constexpr TrimRole cutting_order[] = {TrimRole::wrap, TrimRole::cleat, TrimRole::main};

bool is_fitting(const Step& step) {
    return step.done && step.piece > 0 && step.rule->asks != Asks::cut;
}

}  // namespace

EdgeStatus status_of(const EdgeWork& work, const std::vector<Step>& steps,
                     const Practice& practice) {
    if (!work.undecided.empty()) {
        return EdgeStatus::undecided;
    }
    if (work.finished) {
        return EdgeStatus::finished;
    }
    if (held_step(steps)) {
        return EdgeStatus::held;
    }
    const std::optional<std::size_t> next = next_step(steps);
    const bool to_fix = std::any_of(steps.begin(), steps.end(), [](const Step& step) {
        return !step.done && step.rule->each == Each::sent_back;
    });
    if (to_fix) {
        return EdgeStatus::sent_back;
    }
    const bool left_to_tick = !steps.empty() && (!next || steps[*next].rule->asks == Asks::tick);
    if (!has_run(work.edge.kind)) {
        return left_to_tick ? EdgeStatus::to_tick : EdgeStatus::fitting;
    }
    switch (work.verdict(practice).agreement) {
        case Agreement::none:
            return EdgeStatus::no_reading;
        case Agreement::once:
            return EdgeStatus::one_reading;
        case Agreement::third:
        case Agreement::disagree:
            return EdgeStatus::readings_disagree;
        case Agreement::agree:
            break;
    }
    if (!work.edge.pitch) {
        return EdgeStatus::pitch_missing;
    }
    if (left_to_tick) {
        return EdgeStatus::to_tick;
    }
    if (std::any_of(steps.begin(), steps.end(), is_fitting)) {
        return EdgeStatus::fitting;
    }
    return work.cut.empty() ? EdgeStatus::ready : EdgeStatus::cutting;
}

Text spoken(EdgeStatus status) {
    switch (status) {
        case EdgeStatus::no_reading:
            return say("measure");
        case EdgeStatus::one_reading:
            return say("needs a second reading");
        case EdgeStatus::readings_disagree:
            return say("readings disagree");
        case EdgeStatus::pitch_missing:
            return say("take the pitch");
        case EdgeStatus::ready:
            return say("ready to cut");
        case EdgeStatus::cutting:
            return say("cutting");
        case EdgeStatus::fitting:
            return say("fitting");
        case EdgeStatus::to_tick:
            return say("foreman's sign-off");
        case EdgeStatus::undecided:
            return say("two tablets disagree: pick one");
        case EdgeStatus::held:
            return say("held: somebody said no");
        case EdgeStatus::sent_back:
            return say("sent back: fix it");
        case EdgeStatus::finished:
            break;
    }
    return say("finished");
}

std::optional<NextCut> next_cut(const Job& job, const Plan& plan) {
    // Edge by edge in the order they are fitted: the metal that goes on first is cut first.
    std::vector<const EdgeWork*> works;
    for (const EdgeWork& work : job.edges) {
        works.push_back(&work);
    }
    const auto turn = [&plan](const EdgeWork* work) {
        const Run* const run = find_run(plan, work->edge.id, TrimRole::main);
        return turn_of(work->edge.kind, run == nullptr ? Panels::over : run->panels);
    };
    std::stable_sort(works.begin(), works.end(),
                     [&](const EdgeWork* a, const EdgeWork* b) { return turn(a) < turn(b); });
    for (const EdgeWork* each : works) {
        const EdgeWork& work = *each;
        if (work.finished) {
            continue;
        }
        for (const TrimRole role : cutting_order) {
            const Run* run = find_run(plan, work.edge.id, role);
            if (run == nullptr) {
                continue;
            }
            const auto next = std::find_if(run->pieces.begin(), run->pieces.end(),
                                           [](const PlannedPiece& piece) { return !piece.is_cut; });
            if (next != run->pieces.end() &&
                cut_waits_for(work, *run, next->number, job.practice).empty()) {
                return NextCut{work.edge.id, role, next->number};
            }
        }
    }
    return {};
}

}  // namespace hemline
