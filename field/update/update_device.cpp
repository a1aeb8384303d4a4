// This device: who holds it, how it is set, and what it does with files and paper.
#include <algorithm>

#include "field/update/held_by.h"
#include "field/update/turn.h"

namespace hemline {

namespace {

/// The backup that was given is one only now.
void note_backup(Turn turn) {
    if (turn.session.open && turn.session.being_given) {
        turn.session.open->backup = std::exchange(turn.session.being_given, std::nullopt);
        turn.want(deed::NoteBackup{*turn.session.open->backup});
        turn.want(deed::TellTime{});
    }
}

}  // namespace

void held_by(Session& session, const Person& person) {
    session.state.by = person.name;
    session.state.way = person.way;
    session.state.people = session.screen.people;
}

void ask_who(Turn turn) {
    turn.session.unsigned_ = aside_now(turn);
    turn.session.drafts.person.naming_job = false;
    go(turn, {Screen::person, {}});
    tell(turn, say("Say who holds the tablet first: that name stands on what is written."));
}

void on(Turn turn, const HoldTablet& wish) {
    hold(turn.session.screen.people, wish.person);
    held_by(turn.session, wish.person);
    if (std::optional<Aside>& aside = turn.session.unsigned_) {
        go_back(turn, *aside);  // to what was to be written, as it was keyed in
        aside.reset();
        tell(turn, {});
    } else {
        go(turn, {turn.state.job.name.empty() ? Screen::jobs : Screen::roof, {}});
    }
    turn.want(deed::KeepSettings{turn.session.screen});
}

void on(Turn turn, Toggle toggle) {
    ScreenScale& screen = turn.session.screen;
    State& state = turn.state;
    switch (toggle) {
        case Toggle::light:
            turn.session.night = !turn.session.night;
            screen.night = turn.session.night;
            break;
        case Toggle::hand:
            screen.left_hand = !screen.left_hand;
            state.hand = screen.left_hand ? Hand::left : Hand::right;
            break;
        case Toggle::language:
            screen.spanish = !screen.spanish;
            state.language = screen.spanish ? Language::spanish : Language::english;
            break;
        case Toggle::units:
            screen.both_units = !screen.both_units;
            state.both_units = screen.both_units;
            break;
    }
    turn.want(deed::KeepSettings{screen});
}

void on(Turn turn, const ScaleScreen& wish) {
    Session& session = turn.session;
    session.px_per_mm = std::clamp(session.px_per_mm * wish.by, px_per_mm_least, px_per_mm_most);
    session.screen.px_per_mm = session.px_per_mm;
    session.screen.put_off = false;
    turn.state.ask_scale = false;
    go(turn, {Screen::jobs, {}});
    turn.want(deed::KeepSettings{session.screen});
}

void on(Turn turn, const PutOffScale& /*wish*/) {
    turn.session.screen.put_off = true;
    turn.state.ask_scale = false;
    go(turn, {Screen::jobs, {}});
    turn.want(deed::KeepSettings{turn.session.screen});
}

void on(Turn turn, Errand errand) {
    if (errand == Errand::back_up) {
        turn.want(deed::BackUp{});
    } else {
        turn.want(deed::RunErrand{errand});
    }
}

void on(Turn turn, const news::Given& given) {
    turn.session.being_given = given.backup;
    tell(turn, given.words);
    if (!given.later) {
        note_backup(turn);
    }
}

void on(Turn turn, const news::Taken& taken) {
    if (taken.problem) {
        turn.session.being_given.reset();
        tell(turn, said(*taken.problem));
    } else {
        tell(turn, say("Handed over."));
        note_backup(turn);
    }
}

void on(Turn turn, const news::PromiseAnswered& answered) {
    turn.state.promised = answered.promised;
}

}  // namespace hemline
