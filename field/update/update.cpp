#include "field/update/update.h"

#include <algorithm>

#include "engine/record/about_thing.h"
#include "field/state/edge_view.h"
#include "field/state/gate_view.h"
#include "field/update/turn.h"

namespace hemline {

namespace {

/// What is written is signed with a name, and it must be the right name.
bool writes(const Wish& wish) {
    return std::holds_alternative<Keep>(wish) || std::holds_alternative<KeepAll>(wish) ||
           std::holds_alternative<UndoLast>(wish) || std::holds_alternative<PickSide>(wish) ||
           std::holds_alternative<StartJob>(wish) || std::holds_alternative<StartDemo>(wish);
}

bool takes_tick_back(Turn turn, const Fact& fact) {
    const std::optional<EventId> target = struck_by(fact);
    const std::vector<Event>& events = turn.state.events;
    return target && std::any_of(events.begin(), events.end(), [&](const Event& event) {
               return event.id == *target && std::holds_alternative<EdgeFinished>(event.fact);
           });
}

/// Who holds the tablet to check off, and nobody else, checks an edge off and lifts a no.
bool is_for_foreman(Turn turn, const Wish& wish) {
    const Keep* const keep = std::get_if<Keep>(&wish);
    return keep != nullptr && turn.state.way != Way::tick_off &&
           (std::holds_alternative<EdgeFinished>(keep->fact) ||
            std::holds_alternative<StepLifted>(keep->fact) ||
            std::holds_alternative<GateLifted>(keep->fact) || takes_tick_back(turn, keep->fact) ||
            std::holds_alternative<ValueAccepted>(keep->fact));
}

/// The day began anew since the screen was drawn.
bool is_before_gate(Turn turn, const Wish& wish) {
    const Keep* const keep = std::get_if<Keep>(&wish);
    const KeepAll* const all = std::get_if<KeepAll>(&wish);
    return ((keep != nullptr && is_roof_work(keep->fact)) ||
            (all != nullptr && std::any_of(all->facts.begin(), all->facts.end(), is_roof_work))) &&
           !has_passed_gate(turn.state);
}

/// An edge is not checked off past what the foreman has not let stand.
bool passes_exceptions(Turn turn, const Wish& wish) {
    const Keep* const keep = std::get_if<Keep>(&wish);
    const auto* const tick = keep == nullptr ? nullptr : std::get_if<EdgeFinished>(&keep->fact);
    const EdgeWork* const work = tick == nullptr ? nullptr : edge_of(turn.state, tick->edge);
    return work != nullptr && !not_accepted(values_on(turn.state, *work)).empty();
}

void on(Turn turn, const Wish& wish) {
    if (writes(wish) && turn.state.by.empty()) {
        ask_who(turn);
    } else if (is_for_foreman(turn, wish)) {
        ask_foreman(turn);
    } else if (passes_exceptions(turn, wish)) {
        go(turn, {Screen::look, edge_in(std::get<Keep>(wish).fact)});
        refuse(turn, say("Look at each exception first: let it stand, or send the edge back."));
    } else if (is_before_gate(turn, wish)) {
        go(turn, {Screen::gate, turn.state.where.edge});
        refuse(turn, say("A new day: look first. What is keyed in waits."));
    } else {
        std::visit([turn](const auto& one) { on(turn, one); }, wish);
    }
}

void on(Turn turn, const news::Told& told) { tell(turn, told.words); }
void on(Turn turn, const news::Added& added) { tell_more(turn, added.words); }

}  // namespace

Updated update(Session session, const News& what) {
    Updated now{std::move(session), {}};
    const Turn turn{now.session, now.session.state, now.deeds};
    std::visit([turn](const auto& one) { on(turn, one); }, what);
    return now;
}

}  // namespace hemline
