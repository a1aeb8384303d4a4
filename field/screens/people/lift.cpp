// The foreman lifts a no to a safety check: with the reason, under his name.
#include "field/screens/people/reason_page.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"

namespace hemline {

Wished draw_lift(Ui& ui, const State& state, Drafts& drafts) {
    const EdgeWork* const work = edge_of(state, state.where.edge);
    const std::vector<Step> steps = work == nullptr ? std::vector<Step>() : steps_on(state, *work);
    const std::optional<std::size_t> held = held_step(steps);
    if (!held) {
        return Go{{Screen::roof, {}}};
    }
    // Common practice, no published source.
    const ReasonAsked asked = {
        say("{1} · why is it safe now?", title_of(work->edge)),
        say("Lift it, signed {1}", state.by),
        {phrase("power is off"), phrase("ice is gone"), phrase("wind is down"),
         phrase("more hands"), phrase("anchor or ladder put right")}};
    const ReasonGiven given = ask_reason(ui, state, asked, drafts.send_back.reason);
    const Where steps_of_edge{Screen::steps, work->edge.id};
    if (given.leave) {
        return Go{steps_of_edge};
    }
    if (!given.reason.empty()) {
        const std::vector<EventId> noes = noes_on(state.job, work->edge.id);
        return noes.empty()
                   ? Keep{StepLifted{work->edge.id, steps[*held].rule->id, given.reason, state.by},
                          steps_of_edge}
                   : Keep{GateLifted{work->edge.id, noes, given.reason}, steps_of_edge};
    }
    return given.wish;
}

}  // namespace hemline
