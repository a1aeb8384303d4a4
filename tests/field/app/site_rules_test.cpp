// What is said once of the whole roof: wind, metals, how trim is held, by touch among the rules.
#include <doctest/doctest.h>

#include <algorithm>

#include "tests/field/app/journey.h"

using namespace hemline;

TEST_CASE("The wind and one edge's bearing are said by touch, and the laps look away from it") {
    Journey crew;
    crew.tap_all({"demo", "rules", "rule wind_from", "answer W"});
    CHECK(crew.last<RuleSet>().key == "wind_from");
    CHECK(crew.state().job.practice.site.wind_from == degrees(270));
    CHECK(crew.work("A").edge.first == Side::left);
    crew.tap_all({"rule bearing.A", "answer E"});
    CHECK(crew.work("A").edge.first == Side::right);
    const auto& problems = crew.state().plan.problems;
    CHECK(std::any_of(problems.begin(), problems.end(), [](const PlanProblem& problem) {
        return problem.edge == "A" && problem.field == "first" &&
               problem.severity == Severity::note;
    }));
    // What a person says stays, whatever the wind.
    crew.tap_all({"leave", "add edge", "change one", "change A", "ask Fitted first",
                  "fitted first from the left", "keep edge"});
    CHECK(crew.last<RuleSet>().key == "first.A");
    CHECK(crew.where().screen == Screen::roof);
    CHECK(crew.work("A").edge.first == Side::left);
    crew.tap_all({"rules", "rule wind_from", "answer WSW"});
    CHECK(crew.work("A").edge.first == Side::left);
}

TEST_CASE("Metals are chosen by touch, and a pair that eats each other is a problem at once") {
    Journey crew;
    crew.tap_all({"demo", "rules", "rule panel_metal", "answer copper"});
    CHECK(crew.state().job.practice.site.panel_metal == "copper");
    const auto& problems = crew.state().plan.problems;
    CHECK(std::any_of(problems.begin(), problems.end(), [](const PlanProblem& problem) {
        return problem.field == "metal" && problem.severity == Severity::problem;
    }));
    crew.tap_all({"rule panel_metal", "answer "});
    CHECK(crew.state().job.practice.site.panel_metal.empty());
}
