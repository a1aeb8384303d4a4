// A branch that is never shown a plan: what it cannot refute it must leave open.
#include "engine/joint/branch.h"

#include <doctest/doctest.h>

#include "tests/engine/joint/joint_checker.h"
#include "tests/reference/joint_jobs.h"

using namespace hemline;

namespace {

/// How high the bound is driven where no plan is ever found.
std::int64_t driven_to(const JointJob& job, std::int64_t laps, std::int64_t unbalanced) {
    const auto needs = needs_of(job, ways_of(job), laps);
    REQUIRE(needs);
    JointProgram program(job, *needs, lengths_told_apart(*needs));
    const CuttingEffort given{3'000'000, {}};
    Effort effort(given);
    JointBranch branch(
        *needs, program, laps, unbalanced, [](const auto&) { return 1000; }, effort);
    branch.close_gap(1000);
    return branch.bound();
}

}  // namespace

TEST_CASE("Where one side of a fork stays open the other refutes nothing") {
    // A plan that is there, and lawful, shows that no bound is above its sticks.
    int compared = 0;
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const JointJob job = reference::joint_job(seed, 4, reference::Stock::mixed);
        for (const JointPlan& plan : choices(job, Prefer::sticks)) {
            if (!plan.cutting.missing.empty() || plan.extra_laps > 2) {
                continue;
            }
            CAPTURE(seed);
            CHECK(joint_checker::wrong_divisions(job, plan) == "");
            CHECK(driven_to(job, plan.extra_laps, plan.unbalanced) <= plan.sticks);
            ++compared;
        }
    }
    CHECK(compared > 40);
}
