// Going from screen to screen: what was keyed in waits where it was, and what the next screen shows
// is looked up.
#include <optional>
#include <utility>

#include "field/state/edge_view.h"
#include "field/store/clock.h"
#include "field/update/turn.h"

namespace hemline {

void tell(Turn turn, Text words) {
    turn.state.notice = std::move(words);
    turn.state.asks_first = false;
}

void refuse(Turn turn, Text words) {
    tell(turn, std::move(words));
    turn.state.asks_first = true;
}

void tell_more(Turn turn, const Text& words) {
    turn.state.notice = joined({turn.state.notice, words}, " ");
}

Aside aside_now(Turn turn) { return {turn.state.where, turn.session.drafts, turn.state.notice}; }

void go_back(Turn turn, const Aside& aside) {
    forget_draft_at(turn, aside.where);
    turn.state.where = aside.where;
    turn.session.drafts = aside.drafts;
    tell(turn, aside.notice);
}

void go(Turn turn, Where where) {
    State& state = turn.state;
    Drafts& drafts = turn.session.drafts;
    const bool naming_job = drafts.person.naming_job;
    const std::optional<EventId> entry = drafts.history.entry;
    PastedDraft pasted = drafts.pasted;
    lay_aside(turn);
    state.where = std::move(where);
    tell(turn, {});
    drafts.history.entry = state.where.screen == Screen::history ? entry : std::nullopt;
    drafts.person.naming_job = naming_job && state.where.screen == Screen::person;
    const EdgeWork* const there = edge_of(state, state.where.edge);
    if (there != nullptr && state.where.screen == Screen::add_edge) {
        drafts.edge.edge = there->edge;
        drafts.edge.asked.reset();
        drafts.edge.one_by_one = false;
    }
    take_up(turn);
    pasted.on_page = false;  // it goes along, whatever waited there
    drafts.pasted = state.where.screen == Screen::jobs ? PastedDraft{} : std::move(pasted);
    if (state.where.screen == Screen::jobs) {
        list_jobs(turn);
    } else if (state.where.screen == Screen::roof) {
        state.outside.crew_new = 0;
    }
    look_outside(turn);
    if (turn.session.open) {
        turn.want(deed::TellTime{});
    } else {
        state.backed_up = {};
    }
    if (state.where.screen == Screen::choices && state.choices.empty() && !state.looking) {
        look_for_choices(turn);
    }
}

void on(Turn turn, const Go& wish) {
    std::optional<Aside>& aside = turn.session.unsigned_;
    const auto is_of_person = [](Screen screen) {
        return screen == Screen::person || screen == Screen::tablet || screen == Screen::calibrate;
    };
    if (aside && is_of_person(turn.state.where.screen) && !is_of_person(wish.where.screen)) {
        go_back(turn, *aside);  // nobody said who holds it: nothing is lost, and nothing is written
        aside.reset();
    } else {
        go(turn, wish.where);
    }
}

void on(Turn turn, const news::Tilted& tilted) {
    turn.state.tilt_there = true;
    TiltDraft& draft = turn.session.drafts.tilt;
    if (turn.state.where.screen != Screen::tilt || !draft.taking) {
        return;
    }
    draft.coming.push_back(tilted.sample);
    if (draft.coming.size() == tilt_samples) {
        (draft.first.empty() ? draft.first : draft.turned) = draft.coming;
        draft.coming.clear();
        draft.taking = false;
    }
}

void on(Turn turn, const news::TimeIs& time) {
    turn.state.today = day_around(time.ms);
    if (turn.session.open) {
        turn.state.backed_up =
            words_on(turn.session.open->backup, time.ms, turn.state.events.size());
    }
}

}  // namespace hemline
