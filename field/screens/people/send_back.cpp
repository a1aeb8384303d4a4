// The foreman sends an edge back: one of the usual reasons, or his own words. It becomes the
// installer's next step.
#include "field/screens/people/reason_page.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"

namespace hemline {

Wished draw_send_back(Ui& ui, const State& state, Drafts& drafts) {
    const EdgeWork* const work = edge_of(state, state.where.edge);
    if (work == nullptr) {
        return Go{{Screen::roof, {}}};
    }
    // What a foreman looks for. Common practice, no published source.
    const ReasonAsked asked = {
        say("{1} · what is to fix?", title_of(work->edge)),
        say("Send it back"),
        {phrase("lap too short"), phrase("hem not hooked"), phrase("bead missing"),
         phrase("screw missing"), phrase("face not straight"), phrase("metal scratched")}};
    const ReasonGiven given = ask_reason(ui, state, asked, drafts.send_back.reason);
    if (given.leave) {
        return Go{state.way == Way::tick_off ? opened(state, *work)
                                             : Where{Screen::steps, work->edge.id}};
    }
    if (!given.reason.empty()) {
        return Keep{EdgeSentBack{work->edge.id, given.reason}, Where{Screen::roof, {}}};
    }
    return given.wish;
}

}  // namespace hemline
