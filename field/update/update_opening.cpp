// Which job is open: one that was touched, a new job, one taken in, or one gone back to.
#include "engine/words/result.h"
#include "field/state/edge_view.h"
#include "field/store/disk_problem.h"
#include "field/store/writer.h"
#include "field/update/turn.h"

namespace hemline {

namespace {

/// The roof, with what was set aside of damaged files.
void show_roof(Turn turn, const JobRecord& record) {
    go(turn, {Screen::roof, {}});
    for (const FileSetAside& stretch : record.set_aside) {
        tell_more(turn, explain(stretch));
    }
}

/// After files were put in place: a browser page keeps them later.
void wait_for_whole(Turn turn) {
    if (turn.session.keeps_later) {
        turn.session.open->whole_under_way = true;
        turn.state.saving = Saving::under_way;
        turn.state.saved = say("saving");
    }
}

void on(Turn turn, const JobRecord& record, const opened_for::Touch& /*touch*/) {
    show_roof(turn, record);
}

void on(Turn turn, const JobRecord& /*record*/, const opened_for::NewJob& job) {
    keep_quietly(turn,
                 {JobStarted{job.name, phrase("common practice")}, Where{Screen::add_edge, {}}});
}

void on(Turn turn, const JobRecord& record, const opened_for::Demo& /*demo*/) {
    forget_drafts_of(turn, record.folder.string());
    show_roof(turn, record);
    wait_for_whole(turn);
}

void on(Turn turn, const JobRecord& /*record*/, const opened_for::NewNumber& /*number*/) {
    take_up(turn);
    tell_more(turn,
              say("This tablet was copied or put back from a backup: it writes on under a new "
                  "number."));
}

void on(Turn turn, const JobRecord& /*record*/, const opened_for::OtherFolder& other) {
    turn.state.outside.kept.jobs.push_back(other.went_on.job);
    leave_folder(turn);
    take_up(turn);
    if (turn.state.where.screen == Screen::jobs) {  // it could not be opened where it was
        go(turn, {Screen::roof, {}});
    }
    tell(turn, say("The job goes on in {1}. What was saved before stands in both. Keep again what "
                   "is on the screen.",
                   shown(other.went_on.job)));
    tell_more(turn, other.went_on.said);
    turn.want(deed::KeepFolders{turn.state.outside.kept});
}

void say_taken_by_hand(Turn turn, const TakenIn& taken) {
    Text done = taken.is_new ? say("{1} is on this tablet now, with {2}.", turn.state.job.name,
                                   count_of_events(taken.new_events))
                             : say("{1} took in {2} more.", turn.state.job.name,
                                   count_of_events(taken.new_events));
    turn.state.outside.done = joined({done, taken.said}, " ");
}

void on(Turn turn, const JobRecord& record, const opened_for::TakenIn& what) {
    if (what.file.empty()) {
        go(turn, {Screen::hand_over, {}});
        if (what.taken) {
            say_taken_by_hand(turn, *what.taken);
        } else {
            refuse(turn, said(what.taken.problem()));
        }
        return;
    }
    if (!what.taken) {
        go(turn, turn.state.where);
        refuse(turn, said(what.taken.problem()));
        return;
    }
    show_roof(turn, record);
    tell_more(turn,
              say_count("{2} is taken in: {1} new entry.", "{2} is taken in: {1} new entries.",
                        static_cast<std::int64_t>(what.taken->new_events), what.file));
    tell_more(turn, what.taken->is_new ? say("It was not on this tablet before.")
                                       : say("The rest was here already."));
    tell_more(turn, what.taken->said);
    wait_for_whole(turn);
}

/// If the edge is gone, go to the roof.
void on(Turn turn, const JobRecord& record, const opened_for::GoingBack& back) {
    show_roof(turn, record);
    const LeftAt& left = *back.left;
    const bool is_there =
        left.where.edge.empty() || edge_of(turn.state, left.where.edge) != nullptr;
    if (is_there && left.where.screen != Screen::folder) {
        const Text notice = turn.state.notice;  // a torn tail was set aside, …
        go(turn, left.where);
        tell(turn, notice);
        turn.session.drafts = left.drafts;
    }
}

void open_for(Turn turn, const JobRecord& record, const OpenedFor& what_for) {
    std::visit([&](const auto& one) { on(turn, record, one); }, what_for);
}

}  // namespace

void on(Turn turn, const OpenJob& wish) { turn.want(deed::Open{wish.folder}); }
void on(Turn turn, const StartJob& wish) { turn.want(deed::OpenNew{wish.name}); }
void on(Turn turn, const StartDemo& /*wish*/) { turn.want(deed::OpenDemo{turn.state.by}); }

void on(Turn turn, const news::Started& started) {
    list_jobs(turn);
    if (started.job) {
        turn.want(deed::Open{*started.job});
    }
}

void on(Turn turn, const news::Opened& opened) {
    const std::string folder = opened.record.folder.string();
    if (std::holds_alternative<opened_for::NewJob>(opened.what_for)) {
        forget_drafts_of(turn, folder);  // of a job that was there under its name
    } else {
        lay_aside(turn);
    }
    if (std::holds_alternative<opened_for::OtherFolder>(opened.what_for) &&
        turn.state.outside.stuck) {
        move_drafts(turn, turn.state.outside.stuck->string(), folder);
    }
    turn.session.open = OpenedJob{opened.job, opened.record.folder, {}, opened.backup};
    turn.session.handing.reset();
    turn.state.outside.stuck.reset();
    turn.state.writer = opened.writer;
    turn.state.events = opened.record.events;
    compute(turn);
    forget_withdrawn(turn);
    call_saved(turn);
    carry(turn);
    open_for(turn, opened.record, opened.what_for);
}

void on(Turn turn, const news::NotOpened& refused) {
    Text trouble = said(refused.problem);
    if (refused.stuck && turn.state.outside.there) {
        turn.state.outside.stuck = refused.stuck;
    }
    if (refused.closed) {
        turn.session.open.reset();
    }
    if (const auto* const back = std::get_if<opened_for::GoingBack>(&refused.what_for)) {
        wait(turn, *back->left);
    }
    if (const auto* const what = std::get_if<opened_for::TakenIn>(&refused.what_for)) {
        if (what->file.empty()) {
            go(turn, {Screen::hand_over, {}});
        }
        trouble = what->taken ? trouble : said(what->taken.problem());
    }
    refuse(turn, trouble);
}

void on(Turn turn, const news::OpenAlready& open) { open_for(turn, {}, open.what_for); }

void on(Turn turn, const news::NotWritten& refused) {
    turn.state.saving = Saving::failed;
    turn.state.saved = say("not saved");
    refuse(turn, said(refused.problem));
}

void on(Turn turn, const news::NotTakenIn& refused) {
    if (refused.by_hand) {
        go(turn, {Screen::hand_over, {}});
    }
    refuse(turn, said(refused.problem));
}

}  // namespace hemline
