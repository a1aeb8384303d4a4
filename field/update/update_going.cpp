// Going from screen to screen: what was keyed in is dropped, and what the next one shows is looked
// up.
#include <algorithm>

#include "field/state/edge_view.h"
#include "field/store/clock.h"
#include "field/update/turn.h"

namespace hemline {

void tell(Turn turn, Text words) { turn.state.notice = std::move(words); }

void tell_more(Turn turn, const Text& words) {
    turn.state.notice = joined({turn.state.notice, words}, " ");
}

Aside aside_now(Turn turn) { return {turn.state.where, turn.session.drafts, turn.state.notice}; }

void go_back(Turn turn, const Aside& aside) {
    turn.state.where = aside.where;
    turn.session.drafts = aside.drafts;
    turn.state.notice = aside.notice;
}

void go(Turn turn, Where where) {
    State& state = turn.state;
    Drafts& drafts = turn.session.drafts;
    state.where = std::move(where);
    state.notice = {};
    const bool naming_job = drafts.person.naming_job;
    drafts = {};
    drafts.person.naming_job = naming_job && state.where.screen == Screen::person;
    if (const EdgeWork* const there = edge_of(state, state.where.edge)) {
        drafts.edge.edge = there->edge;
        drafts.edge.asked.reset();
        drafts.edge.one_by_one = false;
    }
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
    if (aside && turn.state.where.screen == Screen::person) {
        go_back(turn, *aside);  // nobody said it: nothing is lost, and nothing written
        aside.reset();
    } else {
        go(turn, wish.where);
    }
}

void on(Turn turn, const news::LeftThere& left) {
    const std::vector<std::filesystem::path>& jobs = turn.state.jobs;
    const auto job = std::find_if(jobs.begin(), jobs.end(), [&](const auto& folder) {
        return folder.filename().string() == left.job;
    });
    if (!left.job.empty() && job != jobs.end() && day_around(left.now_ms).holds({left.left_ms})) {
        turn.want(deed::Open{*job, left.where, left.drafts});
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
    if (turn.session.open) {
        turn.state.backed_up =
            words_on(turn.session.open->backup, time.ms, turn.state.events.size());
    }
}

}  // namespace hemline
