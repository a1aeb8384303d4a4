// Nine generated roofs of 12 to 72 edges, planned edge by edge and together.
#include <doctest/doctest.h>

#include <cstdlib>
#include <fstream>
#include <sstream>

#include "tests/engine/joint/joint_checker.h"

using namespace hemline;

namespace {

/// The roofs between gables, 1 in of tab at either end.
std::vector<JointJob> roofs(Looks looks) {
    const char* source = std::getenv("HEMLINE_SOURCE");
    const std::string folder = source == nullptr ? "." : source;
    std::ifstream file(folder + "/tests/engine/plan/generated_roofs.txt");
    std::vector<JointJob> all;
    for (std::string line; std::getline(file, line);) {
        std::istringstream words(line);
        std::string name;
        words >> name;
        if (name == "#") {
            continue;
        }
        JointJob job;
        job.stock = {{inches(120), std::nullopt, false}};
        for (std::int64_t edge = 0; words >> edge;) {
            const RunRule rule{sixteenths(edge), inches(1),  inches(1),    inches(120),
                               inches(6),        inches(24), sixteenths(1)};
            job.edges.push_back({rule, looks, {}});
        }
        all.push_back(std::move(job));
    }
    return all;
}

}  // namespace

TEST_CASE("Nine roofs with every edge balanced take 686 sticks, proved for each") {
    std::int64_t sticks = 0;
    const auto all = roofs(Looks::balanced);
    REQUIRE(all.size() == 9);
    for (const JointJob& job : all) {
        const JointPlan plan = plan_joint(job, Prefer::looks);
        CHECK(joint_checker::wrong_divisions(job, plan) == "");
        CHECK(joint_checker::wrong_certificates(job, plan) == "");
        CHECK(plan.proved);
        CHECK(plan.unbalanced == 0);
        CHECK(plan.extra_laps == 0);
        sticks += plan.sticks;
    }
    CHECK(sticks == 686);
}

TEST_CASE("Nine roofs that may run out take 586 sticks with no lap more, and fewer with some" *
          doctest::test_suite("long")) {
    std::int64_t run_out = 0, run_out_bound = 0, fewest = 0;
    for (const JointJob& job : roofs(Looks::free)) {
        const std::vector<JointPlan> plans = choices(job, Prefer::sticks);
        std::optional<std::int64_t> own, bound;
        for (const JointPlan& plan : plans) {
            CHECK(joint_checker::wrong_divisions(job, plan) == "");
            if (plan.extra_laps == 0 && plan.sticks < own.value_or(plan.sticks + 1)) {
                own = plan.sticks;
                bound = plan.lower_bound;
            }
        }
        REQUIRE(own.has_value());
        run_out += *own;
        run_out_bound += *bound;
        const JointPlan* first = first_choice(plans, Prefer::sticks);
        CHECK(joint_checker::wrong_certificates(job, *first) == "");
        fewest += first->sticks;
    }
    CHECK(run_out == 586);
    CHECK(run_out_bound >= 585);
    CHECK(fewest <= 571);
    CHECK(fewest >= 556);  // the metal of all edges, at the fewest laps
}

TEST_CASE("Every bound of the roofs of up to twenty edges is shown by parts, at a grid of 1/16 in" *
          doctest::test_suite("long")) {
    int shown = 0;
    for (const JointJob& job : roofs(Looks::free)) {
        if (job.edges.size() > 20) {
            continue;
        }
        for (JointPlan& plan : choices(job, Prefer::sticks)) {
            CAPTURE(job.edges.size());
            CAPTURE(plan.extra_laps);
            plan.parts = parts_of_bound(job, plan, {100'000'000, {}});
            CHECK(!plan.parts.empty());
            CHECK(joint_checker::wrong_parts(job, plan) == "");
            ++shown;
        }
    }
    CHECK(shown >= 8);
}
