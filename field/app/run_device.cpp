// The device's settings and clock, and the search for better plans beside the hand.
#include "field/app/app.h"

namespace hemline {

void App::run(const deed::KeepSettings& deed) {
    if (options_.keep_scale) {
        if (const std::optional<Problem> problem = options_.keep_scale(deed.screen)) {
            tell(news::Told{said(*problem)});
        }
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
