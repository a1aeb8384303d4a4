// The foreman sends an edge back by touch, and the installer fixes it.
#include <doctest/doctest.h>

#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

void fit_until_the_tick(Journey& crew) {
    crew.tap("demo");
    crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
    crew.reach_step("C", "tick");
}

}  // namespace

TEST_CASE("An edge sent back is the installer's next step, then the foreman's tick again") {
    Journey crew;
    fit_until_the_tick(crew);
    crew.finish_edge("C");
    crew.tap_all({"edge C", "send back", "reason bead missing"});
    CHECK(crew.where().screen == Screen::roof);
    CHECK(crew.last<EdgeSentBack>().reason == "bead missing");
    CHECK(crew.status("C") == EdgeStatus::sent_back);
    crew.tap("edge C");
    CHECK(crew.step("C").rule->id == mend_step);
    CHECK(crew.step("C").action == "Fix: bead missing");
    crew.start_again();
    crew.tap("edge C");
    crew.tap("answer");
    CHECK(crew.step("C").rule->asks == Asks::tick);
    crew.finish_edge("C");
    CHECK_FALSE(crew.work("C").sent_back);
}

TEST_CASE("At the tick the foreman may send it back in his own words") {
    Journey crew;
    fit_until_the_tick(crew);
    crew.tap_all({"send back", "letter O", "letter I", "letter L", "send"});
    CHECK(crew.last<EdgeSentBack>().reason == "Oil");
    CHECK(crew.step("C").action == "Fix: Oil");
}

TEST_CASE("Nothing is sent back without a reason, and the way back changes nothing") {
    Journey crew;
    fit_until_the_tick(crew);
    const std::size_t before = crew.state().events.size();
    crew.tap("send back");
    CHECK_FALSE(crew.screen->has_target("send"));
    crew.tap("leave");
    CHECK(crew.where().screen == Screen::steps);
    CHECK(crew.state().events.size() == before);
}
