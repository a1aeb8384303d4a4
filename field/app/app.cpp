#include "field/app/app.h"

#include "field/screens/screens.h"
#include "field/update/held_by.h"

namespace hemline {

namespace {

Session session_at_start(const AppOptions& options, Assets assets) {
    Session session;
    State& state = session.state;
    const Platform& platform = options.platform;
    state.catalogue = assets.catalogue;
    state.sections = assets.sections;
    state.assets = std::make_shared<const Assets>(std::move(assets));
    state.outside.there = static_cast<bool>(options.hand_over.put_into_file);
    state.outside.kept = options.folders;
    state.ask_scale = options.ask_scale;
    state.hand = options.screen.left_hand ? Hand::left : Hand::right;
    state.language = language_of(*state.assets, options.screen.language).tag();
    state.both_units = options.screen.both_units;
    state.crew_words = options.screen.crew_words;
    state.promised = options.promised;
    state.can = {platform.give != nullptr, platform.choose != nullptr, platform.print != nullptr};
    session.screen = options.screen;
    session.night = options.light == Light::night;
    session.px_per_mm = options.px_per_mm;
    session.keeps_later = platform.keeps_later;
    if (!options.screen.people.empty()) {
        held_by(session, options.screen.people.back());
    }
    return session;
}

}  // namespace

App::App(Assets assets, AppOptions options)
    : options_(std::move(options)),
      session_(session_at_start(options_, std::move(assets))),
      search_(options_.wake),
      crew_(options_.wake) {
    tell(news::Started{options_.job});
}

void App::press(Key key) {
    if (key == Key::copy) {
        copy_table();
    } else {
        tell(news::KeyPressed{key});
    }
}

/// A deed may produce news, which update() gets before the next deed is done.
void App::tell(const News& what) {
    Updated now = update(std::move(session_), what);
    session_ = std::move(now.session);
    for (const Deed& deed : now.deeds) {
        std::visit([this](const auto& one) { run(one); }, deed);
    }
}

void App::draw(Ui& ui) {
    hear_saves();
    hear_search();
    hear_crew();
    ui.set_hand(state().hand);
    ui.speak(phrases(), state().marks, state().crew_words);
    ui.lists_of(state().events.empty() ? "" : print_event_id(state().events.front().id));
    if (ui.keyboard().shows_sheet()) {
        if (draw_keys(ui, state())) {
            ui.keyboard().put_sheet_away();
        }
        return;
    }
    const Where before = state().where;
    if (const Wished wish = draw_screen(ui, state(), session_.drafts)) {
        tell(news::TimeIs{options_.wall_ms()});  // a new day may have begun since the last touch
        tell(*wish);
    }
    if (state().where != before) {
        ui.keyboard().forget();
    }
    keep_left_off();
}

bool App::reads_tilt() const {
    return state().where.screen == Screen::tilt && session_.drafts.tilt.taking;
}

const Phrases& App::phrases() const { return language_of(*state().assets, state().language); }

bool App::close() {
    if (!settle()) {
        return false;
    }
    hear_crew();
    crew_.settle();
    crew_.stop();
    search_.cancel();
    return true;
}

}  // namespace hemline
