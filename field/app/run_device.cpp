// The device's settings and clock, where the program was left, and the search for better plans on a
// separate thread.
#include "engine/words/result.h"
#include "field/app/app.h"
#include "field/app/left_off_text.h"

namespace hemline {

void App::run(const deed::KeepSettings& deed) {
    if (options_.keep_scale) {
        if (const std::optional<Problem> problem = options_.keep_scale(deed.screen)) {
            tell(news::Told{said(*problem)});
        }
    }
}

/// Choosing a folder and saying who one is are ways to a place, not places.
LeftOff App::left_off() const {
    const Screen screen = state().where.screen;
    const bool names = screen == Screen::person || screen == Screen::tablet;
    const std::optional<Aside>& aside = screen == Screen::folder ? session_.choosing
                                        : names                  ? session_.unsigned_
                                                                 : std::nullopt;
    LeftOff left{
        {"", aside ? aside->where : state().where, aside ? aside->drafts : session_.drafts},
        session_.laid_aside};
    if (session_.open && left.where.screen != Screen::jobs) {
        left.job = session_.open->folder.string();
    }
    return left;
}

void App::keep_left_off() {
    if (!options_.keep_left_off) {
        return;
    }
    std::string text = print_left_off(left_off());
    if (text == left_) {
        return;
    }
    left_ = std::move(text);
    if (const std::optional<Problem> problem = options_.keep_left_off(left_)) {
        tell(news::Added{say("What is half keyed in cannot be kept: {1}", said(*problem))});
    }
}

void App::go_back_to(const std::string& text) {
    if (const std::optional<LeftOff> left = left_off_in(text)) {
        tell(news::LeftThere{std::make_shared<const LeftOff>(*left)});
    } else if (!text.empty()) {
        tell(
            news::Added{say("What was half keyed in cannot be read back: key it in again. All that "
                            "was saved is there.")});
    }
}

void App::run(const deed::TellTime& /*deed*/) { tell(news::TimeIs{options_.wall_ms()}); }

void App::run(const deed::LookForChoices& deed) {
    search_number_ = deed.search;
    search_.start(state().job, state().events, state().catalogue);
    hear_search();
}

void App::run(const deed::StopSearch& /*deed*/) { search_.cancel(); }

void App::hear_search() {
    std::optional<std::vector<PlanChoice>> found = search_.found();
    const bool under_way = search_.is_under_way();
    if (found || under_way != state().looking) {
        tell(news::ChoicesFound{search_number_, std::move(found), under_way});
    }
}

}  // namespace hemline
