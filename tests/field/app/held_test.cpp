// Safe to go up? Asked once a day and person, by touch; and "not today, or not here": what a no
// does.
#include <doctest/doctest.h>

#include "field/state/gate_view.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

constexpr std::int64_t day_ms = 86'400'000;

/// Eave C is read, and what is done on the ground before its first roof step is done.
void reach_gate(Journey& crew) {
    crew.tap("demo");
    crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
    for (int i = 0; i < 50 && crew.where().screen != Screen::gate; ++i) {
        crew.do_next();
    }
    REQUIRE(crew.where().screen == Screen::gate);
}

}  // namespace

TEST_CASE("A no here cannot be signed away by who said it: the foreman lifts it with the reason") {
    Journey crew;
    reach_gate(crew);
    CHECK_FALSE(crew.screen->has_target("go up"));
    crew.tap_all({"no wires", "not here"});
    const EventId said = crew.state().events.back().id;
    CHECK(crew.last<GateAnswered>() ==
          GateAnswered{"C", {{GateCheck::wires, Finding::bad}}, "", ""});
    CHECK(crew.status("C") == EdgeStatus::held);
    // The cuts on the ground go on; then nothing does.
    crew.tap("edge C");
    for (int i = 0; i < 100 && crew.step("C").rule->asks == Asks::cut; ++i) {
        crew.do_next();
    }
    REQUIRE(crew.where().screen == Screen::steps);
    CHECK(crew.step("C").rule->id == "ground");
    CHECK(shows(crew, "Installer said no to wires"));
    CHECK_FALSE(crew.screen->has_target("answer"));
    CHECK_FALSE(crew.screen->has_target("all so"));
    crew.tap("lift");
    CHECK(crew.where().screen == Screen::person);
    crew.tap("name Installer");
    CHECK(crew.where().screen == Screen::steps);
    crew.tap_all({"lift", "name Foreman", "lift"});
    CHECK(crew.where().screen == Screen::lift);
    crew.tap("leave");
    CHECK(shows(crew, "Installer said no"));
    crew.tap_all({"lift", "reason power is off"});
    CHECK(crew.last<GateLifted>() == GateLifted{"C", {said}, "power is off"});
    CHECK(crew.status("C") != EdgeStatus::held);
    crew.start_again();
    CHECK(crew.status("C") != EdgeStatus::held);
}

TEST_CASE("A no today holds the whole roof, for everybody and the next day too") {
    Journey crew;
    reach_gate(crew);
    crew.tap("leave");
    crew.read_edge("D", feet(11), feet(11), "5");
    crew.tap_all({"leave", "edge C", "no wind", "not today"});
    CHECK(crew.status("C") == EdgeStatus::held);
    CHECK(crew.status("D") == EdgeStatus::held);
    crew.wall_ms += day_ms;
    crew.tap_all({"person Apprentice", "edge C"});
    for (int i = 0; i < 50 && crew.step("C").rule->asks == Asks::cut; ++i) {
        crew.do_next();
    }
    CHECK(shows(crew, "Installer said no to wind"));
    CHECK(crew.status("D") == EdgeStatus::held);
}

TEST_CASE("It is asked once a day and person, and not again on another edge") {
    Journey crew;
    reach_gate(crew);
    crew.pass_gate();
    CHECK(crew.last<GateAnswered>().found.size() == gate_checks.size());
    CHECK(crew.last<GateAnswered>().hospital == "Elm");
    CHECK(crew.where().screen == Screen::steps);
    crew.tap("leave");
    crew.read_edge("D", feet(11), feet(11), "5");
    for (int i = 0; i < 50 && crew.step("D").rule->asks == Asks::cut; ++i) {
        crew.do_next();
    }
    CHECK(crew.where().screen == Screen::steps);
    // Another person is asked for himself; and everybody on another day. The hospital is known.
    crew.tap_all({"leave", "person Apprentice", "edge D"});
    CHECK(crew.where().screen == Screen::gate);
    CHECK(shows(crew, "Nearest hospital: Elm"));
    crew.tap_all({"leave", "person Installer", "edge D"});
    CHECK(crew.where().screen == Screen::steps);
    crew.wall_ms += day_ms;
    crew.tap_all({"leave", "edge D"});
    CHECK(crew.where().screen == Screen::gate);
}

TEST_CASE("A step left open overnight is not answered past the new day's questions") {
    Journey crew;
    reach_gate(crew);
    crew.pass_gate();
    crew.read_on("all so");
    REQUIRE(crew.screen->has_target("all so"));
    const std::size_t before = crew.state().events.size();
    crew.wall_ms += day_ms;
    crew.tap("all so");
    CHECK(crew.state().events.size() == before);
    CHECK(crew.where().screen == Screen::gate);
    CHECK(shows(crew, "A new day"));
    crew.pass_gate();
    crew.tap("all so");
    CHECK(crew.state().events.size() > before + 1);
}

TEST_CASE("What turns unsafe later is said from the step, for this edge or the whole roof") {
    Journey crew;
    reach_gate(crew);
    crew.pass_gate();
    crew.tap("not safe");
    CHECK(crew.where().screen == Screen::gate);
    CHECK(crew.screen->has_target("go up"));  // as it was this morning
    crew.tap_all({"no wet", "not here"});
    CHECK(crew.status("C") == EdgeStatus::held);
    CHECK(has_passed_gate(crew.state()));  // other edges go on
}

TEST_CASE("Tie off stands above the first step of an edge, for each person until he has answered") {
    Journey crew;
    reach_gate(crew);
    crew.pass_gate();
    CHECK(shows(crew, "Tie off before you come near the edge."));
    crew.tap("all so");
    for (int i = 0; i < 50 && crew.step("C").rule->asks == Asks::cut; ++i) {
        crew.do_next();
    }
    CHECK_FALSE(shows(crew, "Tie off before you come near the edge."));
    crew.tap_all({"leave", "person Apprentice", "edge C"});
    crew.pass_gate();
    CHECK(shows(crew, "Tie off before you come near the edge."));
}

TEST_CASE("Whoever has air and humidity is told the dew point") {
    Journey crew;
    reach_gate(crew);
    crew.tap("dew");
    crew.tap_all({"digit 6", "digit 0", "humidity", "digit 8", "digit 0"});
    // Magnus: 53.8, never shown drier than it is.
    CHECK(shows(crew, "Dew point 54 °F."));
    crew.tap_all({"leave", "yes wet"});
}

TEST_CASE(
    "What is held or sent back the foreman sees in the counts, and what is held comes first") {
    Journey crew;
    reach_gate(crew);
    crew.finish_edge("C");
    crew.tap_all({"edge C", "send back", "reason bead missing"});
    CHECK(crew.status("C") == EdgeStatus::sent_back);
    crew.read_edge("D", feet(11), feet(11), "5");
    for (int i = 0; i < 50 && crew.step("D").rule->asks == Asks::cut; ++i) {
        crew.do_next();
    }
    crew.tap_all({"not safe", "no wires", "not here", "person Foreman"});
    CHECK(shows(crew, "1 edge is held. 1 edge is sent back."));
    CHECK(shows(crew, "D: somebody said no"));
    crew.tap("next");
    CHECK(crew.screen->has_target("lift"));
}
