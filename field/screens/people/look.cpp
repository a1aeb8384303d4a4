// The foreman looks at an edge: its values against practice; from there he signs it off or sends it
// back.
#include <algorithm>

#include "engine/work/order.h"
#include "field/screens/page/frame.h"
#include "field/screens/people/values.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"
#include "field/state/record_view.h"

namespace hemline {

namespace {

/// Where the edge stands, and what it waits for.
Text standing(const State& state, const EdgeWork& work, EdgeStatus status) {
    if (status == EdgeStatus::finished) {
        return say("Finished, checked off by {1} at {2}", work.finished_by,
                   day_and_time(work.finished_clock));
    }
    if (status == EdgeStatus::undecided) {
        return work.undecided.empty() ? Text() : work.undecided.front().why;
    }
    if (status == EdgeStatus::to_tick) {
        return say("Fitted. It waits for you to check it off.");
    }
    const std::vector<EdgeNext> all =
        whats_next(state.job, state.plan, state.assets->procedures, state.catalogue);
    const auto next = std::find_if(all.begin(), all.end(),
                                   [&](const EdgeNext& one) { return one.edge == work.edge.id; });
    if (next == all.end()) {
        return spoken(status);
    }
    return joined({say("Not ready to check off."), next->what, next->waits_for}, " ");
}

std::vector<Action> actions_on(const State& state, const EdgeWork& work, EdgeStatus status) {
    std::vector<Action> actions = {{"leave", say("Roof")}};
    if (status == EdgeStatus::finished || status == EdgeStatus::to_tick) {
        actions.push_back({"send back", say("Send it back")});
    }
    if (status == EdgeStatus::finished) {
        actions.insert(actions.begin(), {"untick", say("Take the check back")});
        std::swap(actions[1], actions.back());
        actions.back().label = say("Back to the roof");
        actions.back().look = Look::primary;
        return actions;
    }
    if (status != EdgeStatus::to_tick) {
        actions.push_back({"work", say("The work")});
    }
    if (status == EdgeStatus::undecided) {
        actions.push_back({"apart", say("Pick one"), Look::primary});
        return actions;
    }
    actions.push_back(status == EdgeStatus::to_tick
                          ? tick_action(state, work)
                          : Action{"tick", say("Not ready to check off"), Look::off});
    return actions;
}

}  // namespace

Wished draw_look(Ui& ui, const State& state, Drafts& drafts) {
    const EdgeWork* const work = edge_of(state, state.where.edge);
    if (work == nullptr) {
        return Go{{Screen::roof, {}}};
    }
    const std::string& id = work->edge.id;
    const EdgeStatus status = status_on(state, *work);
    const Frame frame = open_frame(ui, state, say("{1} · its values", title_of(work->edge)),
                                   actions_on(state, *work, status));
    Wished wish = frame.wish;
    Box body = frame.body;
    take_top(body,
             ui.paragraph(body.x, body.y, body.w, standing(state, *work, status), Size::bold) +
                 ui.mm(3));
    if (Wished accepted = draw_values(ui, state, *work, drafts.values, body)) {
        wish = std::move(accepted);
    }
    if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    } else if (frame.tapped == "send back") {
        wish = Go{{Screen::send_back, id}};
    } else if (frame.tapped == "tick") {
        wish = Keep{EdgeFinished{id, ""}};
    } else if (frame.tapped == "untick") {
        const Event* const tick = tick_on(state, id);
        wish = tick == nullptr ? Wished() : undo_of(undoing_of(state, *tick), state.where);
    } else if (frame.tapped == "apart") {
        wish = Go{{Screen::apart, id}};
    } else if (frame.tapped == "work") {
        wish = Go{next_work_on(state, *work).where};
    }
    return wish;
}

}  // namespace hemline
