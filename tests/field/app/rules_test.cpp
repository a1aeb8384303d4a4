// "Hail: the lap must be 8 in here": a rule of the job, set by touch, planned again at once.
#include <doctest/doctest.h>

#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

/// The demo's eave C, read and with its pitch.
Journey& with_c(Journey& crew) {
    crew.tap("demo");
    crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
    crew.tap("leave");
    return crew;
}

}  // namespace

TEST_CASE("The lap of a job is three touches and a digit away, and every run is planned by it") {
    Journey crew;
    with_c(crew);
    REQUIRE(run_on(crew, "C").lap == inches(6));
    const int before = crew.touches;
    crew.tap_all({"rules", "rule lap", "inches 8", "keep"});
    CHECK(crew.touches - before == 4);
    CHECK(crew.state().job.practice.lap == inches(8));
    CHECK(crew.last<RuleSet>().key == "lap");
    CHECK(crew.last<RuleSet>().value == "8 in");
    CHECK(run_on(crew, "C").lap == inches(8));
    CHECK(crew.where().screen == Screen::rules);
    CHECK_FALSE(crew.state().notice.empty());  // what the new lap changed
    crew.tap_all({"leave", "history", "undo"});
    CHECK(crew.state().job.practice.lap == inches(6));
}

TEST_CASE("A lap as long as the stick is refused with the reason, and nothing is lost") {
    Journey crew;
    with_c(crew);
    crew.tap_all({"rules", "rule lap", "field feet", "digit 1", "digit 0", "keep"});
    CHECK(crew.state().job.practice.lap == inches(6));
    CHECK(crew.where().screen == Screen::rules);
    CHECK(shows(crew, "not shorter than the stock"));
}

TEST_CASE("With cuts on the millimetre the whole job is keyed in and shown in millimetres") {
    Journey crew;
    with_c(crew);
    crew.tap_all({"rules", "rule cut_grid", "grid 1 mm"});
    CHECK(crew.state().job.practice.cut_grid == millimetres(1));
    CHECK(crew.state().marks == Marks::millimetre);
    for (const PlannedPiece& piece : run_on(crew, "C").pieces) {
        CHECK(piece.cut.nm() % millimetres(1).nm() == 0);
    }
    crew.tap_all({"rule tab_gable", "digit 3", "digit 0", "keep"});
    CHECK(crew.state().job.practice.tab_gable == millimetres(30));
    CHECK(crew.last<RuleSet>().value == "30 mm");
}

TEST_CASE("Where panels are pinned is one touch past its rule, and assumed until then") {
    Journey crew;
    with_c(crew);
    CHECK(crew.state().job.practice.fixed_line == FixedLine::unsaid);
    crew.tap_all({"rules", "rule fixed_line"});
    CHECK(shows(crew, "assumed"));
    crew.tap("line ridge");
    CHECK(crew.last<RuleSet>().value == "ridge");
    CHECK(crew.state().job.practice.fixed_line == FixedLine::ridge);
    crew.tap_all({"leave", "history", "undo"});
    CHECK(crew.state().job.practice.fixed_line == FixedLine::unsaid);
}
