// This device: who holds it, its settings, and what it does with files and paper.
#include <algorithm>

#include "field/update/held_by.h"
#include "field/update/turn.h"

namespace hemline {

namespace {

/// The file that was given counts as a backup only now.
void note_backup(Turn turn) {
    if (turn.session.open && turn.session.being_given) {
        turn.session.open->backup = std::exchange(turn.session.being_given, std::nullopt);
        turn.want(deed::NoteBackup{*turn.session.open->backup});
        turn.want(deed::TellTime{});
    }
}

/// What was to be written waits until somebody has said who he is.
void ask_for_name(Turn turn, const Text& words) {
    turn.session.unsigned_ = aside_now(turn);
    turn.session.drafts.person = {};
    go(turn, {Screen::person, {}});
    tell(turn, words);
}

}  // namespace

void held_by(Session& session, const Person& person) {
    session.state.by = person.name;
    session.state.way = person.way;
    session.state.people = session.screen.people;
}

void ask_who(Turn turn) {
    ask_for_name(turn, say("Say who holds the tablet first: that name stands on what is written."));
}

void ask_foreman(Turn turn) {
    const auto& people = turn.state.people;
    const auto foreman = std::find_if(people.rbegin(), people.rend(),
                                      [](const Person& one) { return one.way == Way::tick_off; });
    ask_for_name(turn,
                 foreman == people.rend()
                     ? say("Hand the tablet to the foreman. He says who he is first.")
                     : say("Hand the tablet to {1}. He says who he is first.", foreman->name));
}

void on(Turn turn, const HoldTablet& wish) {
    hold(turn.session.screen.people, wish.person);
    held_by(turn.session, wish.person);
    turn.session.drafts = {};
    if (std::optional<Aside>& aside = turn.session.unsigned_) {
        go_back(turn, *aside);  // back to what was to be written, as it was keyed in
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
            state.language = next_language(*state.assets, state.language).tag();
            screen.language = state.language;
            break;
        case Toggle::units:
            screen.both_units = !screen.both_units;
            state.both_units = screen.both_units;
            break;
    }
    turn.want(deed::KeepSettings{screen});
}

void on(Turn turn, const SayWord& wish) {
    for (const CrewThing& thing : crew_things) {
        if (thing.language == turn.state.language && thing.thing == wish.thing) {
            choose_word(turn.session.screen.crew_words, thing, wish.word);
        }
    }
    turn.state.crew_words = turn.session.screen.crew_words;
    turn.want(deed::KeepSettings{turn.session.screen});
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
        refuse(turn, said(*taken.problem));
    } else {
        tell(turn, say("Handed over."));
        note_backup(turn);
    }
}

void on(Turn turn, const news::PromiseAnswered& answered) {
    turn.state.promised = answered.promised;
}

}  // namespace hemline
