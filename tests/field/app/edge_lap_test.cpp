// "Hail: the lap must be 8 in here": on a single edge, from the screen that shows its run.
#include <doctest/doctest.h>

#include <algorithm>

#include "engine/work/edge_change.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

/// The demo's eaves C and E, read and with their pitch.
void read_two(Journey& crew) {
    crew.tap("demo");
    crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
    crew.tap("leave");
    crew.read_edge("A", feet(46), feet(46), "5");
    crew.tap("leave");
}

/// What the touch that leads to the lap says.
std::string lap_label(const Journey& crew) {
    for (const Target& target : crew.screen->ui().targets()) {
        if (target.name == "lap") {
            return target.label;
        }
    }
    return "";
}

void open_run(Journey& crew, const std::string& edge) {
    crew.tap_all({"edge " + edge, "run"});
    REQUIRE(crew.where().screen == Screen::run);
}

}  // namespace

TEST_CASE("The lap of one edge is two touches and a digit from its run, three from its work") {
    Journey crew;
    read_two(crew);
    crew.tap("edge C");
    const int before = crew.touches;
    crew.tap_all({"run", "lap", "inches 8", "keep"});
    CHECK(crew.touches - before == 4);
    CHECK(crew.last<LapChosen>().edge == "C");
    CHECK(crew.last<LapChosen>().lap == inches(8));
    CHECK(run_on(crew, "C").lap == inches(8));
    CHECK(run_on(crew, "A").lap == inches(6));
    CHECK(crew.where().screen == Screen::run);
    CHECK(lap_label(crew) == "Lap 8 in, on this edge");
    CHECK(crew.state().notice.english().rfind("Planned again.", 0) == 0);  // what it changed
    crew.start_again();
    CHECK(run_on(crew, "C").lap == inches(8));
}

TEST_CASE("One touch gives the edge the job's lap again, and undo takes a lap back") {
    Journey crew;
    read_two(crew);
    open_run(crew, "C");
    CHECK(lap_label(crew) == "Lap 6 in, as the job");
    crew.tap_all({"lap", "inches 8", "keep", "lap", "as the job"});
    CHECK_FALSE(crew.last<LapChosen>().lap);
    CHECK(run_on(crew, "C").lap == inches(6));
    crew.tap_all({"leave", "history", "undo"});
    CHECK(run_on(crew, "C").lap == inches(8));
    crew.tap("undo");
    CHECK(run_on(crew, "C").lap == inches(6));
}

TEST_CASE("A lap as long as the stick, or too short for its beads, is refused with the reason") {
    Journey crew;
    read_two(crew);
    open_run(crew, "C");
    const std::size_t events = crew.state().events.size();
    crew.tap_all({"lap", "field feet", "digit 1", "digit 0", "keep"});
    CHECK(shows(crew, "not shorter than the stock"));
    CHECK(shows(crew, "more than the 2 in floor of IRC R905.2.8.5"));  // beside every lap keyed in
    CHECK(crew.where().screen == Screen::edge_lap);
    crew.tap_all({"leave", "lap", "back", "back", "field inches", "inches 1", "keep"});
    CHECK(shows(crew, "does not fit in the lap of 1 in"));
    CHECK(crew.state().events.size() == events);
    CHECK(run_on(crew, "C").lap == inches(6));
}

TEST_CASE("Once a piece is cut to lap another, the lap stays and the piece is named") {
    Journey crew;
    read_two(crew);
    crew.tap("edge C");
    crew.reach_card("C", TrimRole::main, 1);
    crew.tap_all({"cut", "run", "lap"});
    CHECK(shows(crew, "Piece 1 is cut for it as it is."));
    const auto names = crew.screen->names();
    CHECK(std::count(names.begin(), names.end(), "keep") == 0);
    crew.tap("leave");
    CHECK(crew.where().screen == Screen::run);
}

TEST_CASE("An edge changed on the tablet keeps the lap that was chosen for it") {
    Journey crew;
    read_two(crew);
    open_run(crew, "C");
    crew.tap_all({"lap", "inches 8", "keep", "leave"});
    crew.tap_all(
        {"add edge", "change one", "change C", "ask Panels' seam", "seam mechanically seamed"});
    crew.tap("keep edge");
    CHECK(crew.work("C").edge.seam == Seam::mechanical);
    CHECK(run_on(crew, "C").lap == inches(8));
    crew.start_again();
    CHECK(run_on(crew, "C").lap == inches(8));
}

TEST_CASE("A rule that leaves no room for an edge's own lap is refused, and the edge named") {
    Journey crew;
    read_two(crew);
    open_run(crew, "C");
    crew.tap_all(
        {"lap", "inches 4", "keep", "leave", "rules", "rule bead_gap", "inches 5", "keep"});
    CHECK(shows(crew, "Edge C has its own lap"));
    CHECK(crew.state().job.practice.bead_gap == inches(2));
    crew.tap("leave");
    CHECK(run_on(crew, "C").lap == inches(4));
}
