// What a new plan changes in what is still to be cut.
#include <doctest/doctest.h>

#include "engine/plan/plan.h"
#include "engine/plan/plan_changes.h"
#include "engine/record/job.h"

namespace hemline {
namespace {

PlannedPiece piece(int number, Length cut, bool is_cut) {
    PlannedPiece planned;
    planned.number = number;
    planned.cut = cut;
    planned.is_cut = is_cut;
    return planned;
}

/// A plan with a single run, of edge A.
Plan plan_of(std::vector<PlannedPiece> pieces) {
    Plan plan;
    plan.runs.push_back({"A", "eave_rolled", TrimRole::main, inches(6), std::move(pieces)});
    return plan;
}

TEST_CASE("A piece still to cut that gets another length, goes or comes is a change") {
    const Plan before = plan_of({piece(1, feet(9), false), piece(2, feet(8), false)});
    const auto changes = changes_between(before, plan_of({piece(1, feet(7), false)}));
    REQUIRE(changes.size() == 2);
    CHECK(describe(changes[0]) == "Piece A/1: 7 ft, not 9 ft.");
    CHECK(describe(changes[1]) == "Piece A/2 is no longer needed.");
    const auto more = changes_between(plan_of({piece(1, feet(9), false)}), before);
    REQUIRE(more.size() == 1);
    CHECK(describe(more[0]) == "Piece A/2: 8 ft, new.");
    CHECK(changes_between(before, before).empty());
}

TEST_CASE("What the crew cut or spoiled itself meanwhile is no change of the plan") {
    const Plan planned = plan_of({piece(1, feet(9), false)});
    const Plan cut = plan_of({piece(1, feet(7), true)});
    CHECK(changes_between(planned, cut).empty());
    CHECK(changes_between(cut, planned).empty());
}

TEST_CASE("All sticks are those opened and those that the plan opens in every pool") {
    Plan plan;
    plan.proofs.resize(2);
    plan.proofs[0].sticks = 3;
    plan.proofs[1].sticks = 1;
    Job job;
    job.sticks_opened = 5;
    CHECK(sticks_in_all(job, plan) == 9);
}

}  // namespace
}  // namespace hemline
