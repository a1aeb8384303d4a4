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
    state.language = options.screen.spanish ? Language::spanish : Language::english;
    state.both_units = options.screen.both_units;
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

/// A deed may have its own news, which is told before the next deed is done.
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
    ui.speak(phrases(), state().marks);
    if (const Wished wish = draw_screen(ui, state(), session_.drafts)) {
        tell(*wish);
    }
}

bool App::reads_tilt() const {
    return state().where.screen == Screen::tilt && session_.drafts.tilt.taking;
}

const Phrases& App::phrases() const {
    return state().language == Language::spanish ? state().assets->spanish : english_;
}

LeftOff App::left_off() const {
    LeftOff left{"", options_.wall_ms(), state().where, session_.drafts};
    const Screen screen = state().where.screen;
    if (session_.open && screen != Screen::jobs && screen != Screen::folder) {
        left.job = session_.open->folder.filename().string();
    }
    return left;
}

void App::go_back_to(const LeftOff& left) {
    tell(news::LeftThere{left.job, left.wall_ms, options_.wall_ms(), left.where,
                         std::make_shared<const Drafts>(left.drafts)});
}

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
