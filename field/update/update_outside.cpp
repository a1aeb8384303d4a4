// What lies outside the open job: the crew folder, job files, another folder to go on in.
#include "engine/plan/plan_changes.h"
#include "engine/words/result.h"
#include "field/state/plan_news.h"
#include "field/store/clock.h"
#include "field/store/disk_problem.h"
#include "field/update/turn.h"

namespace hemline {

Text count_of_events(std::size_t n) {
    return say_count("{1} event", "{1} events", static_cast<std::int64_t>(n));
}

void list_jobs(Turn turn) { turn.want(deed::ListJobs{turn.state.outside.kept.jobs}); }

/// What the hand-over screen lists.
void look_outside(Turn turn) {
    Outside& outside = turn.state.outside;
    if (turn.state.where.screen != Screen::hand_over) {
        outside.done = {};
        return;
    }
    outside.files.clear();
    outside.in_crew.clear();
    turn.want(deed::LookOutside{outside.kept});
}

void leave_folder(Turn turn) {
    std::optional<Aside>& aside = turn.session.choosing;
    if (!aside) {
        go(turn, {Screen::jobs, {}});
        return;
    }
    const Aside back = *std::exchange(aside, std::nullopt);
    go(turn, back.where);
    go_back(turn, back);
}

/// The draft on the screen is put aside, not dropped, so that a crew can leave a full disk without
/// losing it.
void on(Turn turn, const ChooseFolder& wish) {
    Outside& outside = turn.state.outside;
    if (!outside.there) {
        return;
    }
    turn.session.choosing = aside_now(turn);
    outside.choosing = wish.choosing;
    turn.state.where = {Screen::folder, {}};
    tell(turn, {});
    turn.want(deed::FindFolders{wish.choosing == Choosing::crew        ? outside.kept.crew
                                : wish.choosing == Choosing::hand_over ? outside.kept.hand_over
                                                                       : std::nullopt});
}

void on(Turn turn, const LookInto& wish) { turn.want(deed::LookIntoFolder{wish.folder}); }

void on(Turn turn, const LeaveFolder& /*wish*/) { leave_folder(turn); }

void on(Turn turn, const UseFolder& wish) {
    Outside& outside = turn.state.outside;
    if (outside.choosing == Choosing::go_on) {
        if (outside.stuck) {
            turn.want(deed::GoOnIn{*outside.stuck, wish.folder});
        } else {
            leave_folder(turn);
        }
        return;
    }
    if (outside.choosing == Choosing::crew) {
        turn.want(deed::StopCarrying{});
        outside.kept.crew = wish.folder;
        outside.crew_said = {};
    } else {
        outside.kept.hand_over = wish.folder;
    }
    leave_folder(turn);
    tell(turn, {});
    turn.want(deed::KeepFolders{outside.kept});
    carry(turn);
}

void on(Turn turn, const ForgetCrew& /*wish*/) {
    Outside& outside = turn.state.outside;
    turn.want(deed::StopCarrying{});
    outside.kept.crew.reset();
    outside.crew_said = {};
    go(turn, {Screen::hand_over, {}});
    turn.want(deed::KeepFolders{outside.kept});
}

void on(Turn turn, const PutIntoFile& /*wish*/) {
    if (turn.session.open && turn.state.outside.kept.hand_over) {
        turn.want(deed::PutJobIntoFile{*turn.state.outside.kept.hand_over});
    }
}

void on(Turn turn, const TakeFile& wish) {
    turn.want(deed::TakeIn{turn.state.outside.kept.jobs, wish.file, {}, {}, true});
}

void on(Turn turn, const JoinCrewJob& wish) {
    const KeptFolders& kept = turn.state.outside.kept;
    turn.want(deed::TakeIn{kept.jobs, {}, kept.crew.value_or(""), wish.job, true});
}

void on(Turn turn, const news::FileChosen& chosen) {
    turn.want(deed::TakeIn{turn.state.outside.kept.jobs, chosen.file, {}, {}, false});
}

void on(Turn turn, const news::CrewCarried& carried) {
    State& state = turn.state;
    Outside& outside = state.outside;
    if (!is_of_open_job(turn, carried.job)) {
        return;
    }
    outside.crew_failed = carried.problem.has_value();
    outside.crew_said = carried.problem ? said(*carried.problem)
                                        : say("Took in {1}, gave out {2}, at {3}.",
                                              count_of_events(carried.taken_in), carried.given_out,
                                              clock_time({carried.now_ms}));
    if (carried.taken_in > 0) {
        const Plan before = state.plan;
        const std::int64_t sticks_before = sticks_in_all(state.job, before);
        state.events = carried.events;
        compute(turn);
        outside.crew_new += static_cast<std::int64_t>(carried.taken_in);
        // Somebody may be measuring from a card that has just changed.
        tell_more(turn, plan_news(state, Unknown{}, before, sticks_before));
    }
    if (carried.number_used_elsewhere) {
        turn.want(deed::TakeNewNumber{});
    }
}

void on(Turn turn, const news::NumberRefused& refused) {
    turn.state.outside.crew_failed = true;
    turn.state.outside.crew_said = said(refused.problem);
}

void on(Turn turn, const news::JobsListed& listed) {
    turn.state.jobs = listed.jobs;
    if (listed.problem) {
        tell_more(turn, said(*listed.problem));
    }
}

void on(Turn turn, const news::OutsideSeen& seen) {
    turn.state.outside.files = seen.files;
    turn.state.outside.in_crew = seen.in_crew;
    for (const Problem& problem : seen.problems) {
        tell_more(turn, said(problem));
    }
}

void on(Turn turn, const news::FoldersFound& found) {
    turn.state.outside.places = found.begin;
    turn.state.outside.view = found.view;
    if (found.problem) {
        refuse(turn, said(*found.problem));
    }
}

void on(Turn turn, const news::FolderSeen& seen) { turn.state.outside.view = seen.view; }

void on(Turn turn, const news::PutIntoFileDone& done) {
    go(turn, {Screen::hand_over, {}});
    if (!done.put) {
        refuse(turn, said(done.put.problem()));
        return;
    }
    const FilePut& put = *done.put;
    turn.state.outside.done =
        say("{1} lies there now: {2}, {3} kB. It opens as a zip anywhere: read job.html in it.",
            shown(put.file.filename()), count_of_events(put.events), (put.bytes + 1023) / 1024);
}

}  // namespace hemline
