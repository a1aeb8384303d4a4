// Saving a fact: it is shown at once, called saved when the disk has confirmed it, and put back
// into its draft when it could not be saved.
#include <algorithm>

#include "engine/plan/plan_changes.h"
#include "engine/record/about_thing.h"
#include "engine/record/pick.h"
#include "engine/words/result.h"
#include "field/state/edge_view.h"
#include "field/state/plan_news.h"
#include "field/state/told.h"
#include "field/store/clock.h"
#include "field/update/turn.h"

namespace hemline {

namespace {

void hand_over(Turn turn, const Keep& wish, bool tells_plan, std::vector<Fact> rest = {}) {
    if (!turn.session.open) {
        refuse(turn, say("No job is open. Open or start one first."));
        return;
    }
    turn.session.handing = UnderWay{wish.fact,  turn.state.where, turn.session.drafts, wish.then,
                                    tells_plan, std::move(rest),  wish.leaves_draft};
    turn.want(deed::Append{wish.fact, turn.state.by, wish.supersedes});
}

void go_after(Turn turn, const UnderWay& kept) {
    const EdgeWork* const work = edge_of(turn.state, edge_in(kept.fact));
    if (kept.then) {
        go(turn, *kept.then);
    } else if (struck_by(kept.fact)) {
        go(turn, turn.state.where);
    } else if (work == nullptr || std::holds_alternative<EdgeFinished>(kept.fact)) {
        go(turn, {Screen::roof, {}});
    } else {
        go(turn, next_work_on(turn.state, *work).where);
    }
}

/// Back to where the event was keyed in, with its draft and the reason. What was entered after it
/// is not saved either, and is named, so that nobody goes on as if it were.
void take_back(Turn turn, const UnderWay& from, const Problem& problem,
               const std::vector<Event>& events) {
    State& state = turn.state;
    OpenedJob& open = *turn.session.open;
    turn.session.handing.reset();
    lay_aside(turn);  // what was keyed in since then
    state.events = events;
    state.where = from.where;
    turn.session.drafts = from.drafts;
    compute(turn);
    state.saving = Saving::failed;
    state.saved = say("not saved");
    refuse(turn, said(problem));
    if (std::holds_alternative<JobStarted>(from.fact)) {
        turn.session.open.reset();  // a job with nothing saved does not exist
        turn.want(deed::Close{});
        list_jobs(turn);
        return;
    }
    if (state.outside.there) {
        state.outside.stuck = open.folder;
    }
    for (const UnderWay& later : open.under_way) {
        tell_more(turn, say("Not saved either: {1}.", told(state, later.fact)));
    }
    open.under_way.clear();
}

}  // namespace

bool is_of_open_job(Turn turn, int job) {
    return turn.session.open && turn.session.open->number == job;
}

void call_saved(Turn turn) {
    State& state = turn.state;
    state.saving = state.events.empty() ? Saving::nothing : Saving::saved;
    state.saved = state.events.empty()
                      ? say("nothing to save yet")
                      : say("saved {1}", clock_time(wall_time(state.events.back())));
}

/// Only what is saved is sent to the crew.
void carry(Turn turn) {
    const std::optional<OpenedJob>& open = turn.session.open;
    const auto& crew = turn.state.outside.kept.crew;
    if (open && open->under_way.empty() && crew && !turn.state.events.empty()) {
        turn.want(deed::Carry{*crew});
    }
}

void on(Turn turn, const Keep& wish) { hand_over(turn, wish, true); }

void on(Turn turn, const KeepAll& wish) {
    if (!wish.facts.empty()) {
        hand_over(turn, {wish.facts.front(), wish.then}, true,
                  {wish.facts.begin() + 1, wish.facts.end()});
    }
}

void keep_quietly(Turn turn, const Keep& wish) { hand_over(turn, wish, false); }

void on(Turn turn, const PickSide& wish) {
    const Result<ToWrite> picked = pick(turn.state.job, turn.state.events, wish.chosen);
    if (picked) {
        keep_quietly(turn, {picked->fact, turn.state.where, picked->supersedes});
    } else {
        refuse(turn, said(picked.problem()));
    }
}

void on(Turn turn, const UndoLast& /*wish*/) {
    if (const std::optional<EventId> target = turn.state.undo_target) {
        keep_quietly(
            turn,
            {StruckFor{*target, StrikeReason::undone}, Where{Screen::history, {}}, {*target}});
    }
}

void on(Turn turn, const news::HandedOver& handed) {
    State& state = turn.state;
    if (!is_of_open_job(turn, handed.job) || !turn.session.handing) {
        return;
    }
    const UnderWay kept = *std::exchange(turn.session.handing, std::nullopt);
    const Plan before = state.plan;
    const std::int64_t sticks_before = sticks_in_all(state.job, before);
    state.events.insert(state.events.end(), handed.added.begin(), handed.added.end());
    turn.session.open->under_way.push_back(kept);
    state.saving = Saving::under_way;
    state.saved = say("saving");
    compute(turn);
    if (!kept.rest.empty()) {
        hand_over(turn, {kept.rest.front(), kept.then}, kept.tells_plan,
                  {kept.rest.begin() + 1, kept.rest.end()});
        return;
    }
    if (!kept.leaves_draft) {
        Drafts& drafts = turn.session.drafts;
        PastedDraft pasted = std::move(drafts.pasted);
        const HistoryDraft history = drafts.history;
        drafts = {};
        drafts.pasted = std::move(pasted);
        drafts.history = history;
    }
    go_after(turn, kept);
    if (kept.tells_plan) {
        tell_more(turn, plan_news(state, kept.fact, before, sticks_before));
    }
}

void on(Turn turn, const news::NotHandedOver& refused) {
    if (is_of_open_job(turn, refused.job) && turn.session.handing) {
        take_back(turn, *std::exchange(turn.session.handing, std::nullopt), refused.problem,
                  refused.events);
    }
}

void on(Turn turn, const news::SavesReturned& returned) {
    if (!is_of_open_job(turn, returned.job) || turn.session.open->under_way.empty()) {
        return;
    }
    std::deque<UnderWay>& under_way = turn.session.open->under_way;
    for (std::size_t i = 0; i < returned.saved && !under_way.empty(); ++i) {
        under_way.pop_front();
    }
    if (returned.problem && !under_way.empty()) {
        const UnderWay from = std::move(under_way.front());
        under_way.pop_front();
        take_back(turn, from, *returned.problem, returned.events);
    } else if (under_way.empty()) {
        call_saved(turn);
        turn.state.outside.stuck.reset();
        carry(turn);
    }
}

void on(Turn turn, const news::KeptWhole& kept) {
    State& state = turn.state;
    std::optional<OpenedJob>& open = turn.session.open;
    if (!open || !std::exchange(open->whole_under_way, false)) {
        if (kept.problem) {
            refuse(turn, said(*kept.problem));
        }
        return;
    }
    if (!kept.problem) {
        if (open->under_way.empty()) {
            call_saved(turn);
        }
        return;
    }
    open.reset();
    turn.want(deed::Close{});
    state.events.clear();
    compute(turn);
    go(turn, {Screen::jobs, {}});
    state.saving = Saving::failed;
    state.saved = say("not saved");
    refuse(turn, say("The job file is not taken in. {1}", said(*kept.problem)));
}

}  // namespace hemline
