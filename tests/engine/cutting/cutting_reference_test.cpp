// Fewest sticks against general solvers: cutting alone, and dividing and cutting as a single
// problem. tools/bench cutting compares hundreds more.
#include <doctest/doctest.h>

#include <random>

#include "tests/engine/cutting/cutting_checker.h"
#include "tests/reference/cutting_model.h"
#include "tests/reference/general_solver.h"
#include "tests/reference/joint_jobs.h"
#include "tests/reference/joint_model.h"

using namespace hemline;

namespace {

/// A proved optimum; none when the solver did not prove one within a minute.
std::optional<std::int64_t> optimum_of(reference::Solver solver,
                                       const std::optional<reference::Program>& program) {
    REQUIRE(program.has_value());
    const reference::Answer answer = reference::solve(solver, program->text(), 60);
    REQUIRE_MESSAGE(answer.ran, reference::name_of(solver)
                                    << " is needed: install glpk-utils and coinor-cbc");
    return answer.optimum;
}

CuttingJob roof_like(std::mt19937& random, bool mixed) {
    const auto between = [&](int low, int high) {
        return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
    };
    CuttingJob job;
    job.stock = {{feet(10), std::nullopt, false}};
    if (mixed) {
        job.kerf = sixteenths(between(0, 2));
        job.stock.push_back({feet(12), between(1, 5), false});
        for (int n = between(0, 4); n > 0; --n) {
            job.stock.push_back({sixteenths(between(24 * 16, 110 * 16)), between(1, 2), true});
        }
    }
    const int kinds = between(8, 22);
    std::vector<int> lengths;
    for (int i = 0; i < kinds; ++i) {
        lengths.push_back(between(24 * 16, 119 * 16));
    }
    std::sort(lengths.begin(), lengths.end());
    lengths.erase(std::unique(lengths.begin(), lengths.end()), lengths.end());
    for (const int length : lengths) {
        job.demand.push_back({sixteenths(length), between(1, 4)});
    }
    return job;
}

}  // namespace

TEST_CASE("Twenty roof-like jobs take as many sticks as GLPK proves") {
    std::mt19937 random(20'240'611);
    int unproved = 0;
    for (int n = 0; n < 20; ++n) {
        const CuttingJob job = roof_like(random, n % 2 == 1);
        const CuttingPlan plan = plan_cutting(job);
        CHECK(cutting_checker::wrong_layouts(job, plan) == "");
        CHECK(cutting_checker::wrong_bound(job, plan) == "");
        CHECK(plan.proved);
        const auto optimum = optimum_of(reference::Solver::glpk, reference::model_of_fillings(job));
        unproved += optimum ? 0 : 1;
        if (optimum) {
            CHECK(plan.sticks == *optimum);
        }
    }
    MESSAGE("glpsol did not prove " << unproved << " of 20 within a minute each");
    CHECK(unproved <= 2);
}

TEST_CASE("Every choice of twenty small roofs takes as many sticks as a general solver proves" *
          doctest::test_suite("large")) {
    constexpr std::int64_t laps_more = 2;
    int counts = 0, unproved = 0, open = 0, more = 0;
    for (std::uint64_t seed = 1; seed <= 20; ++seed) {
        const auto stock = seed % 4 == 0 ? reference::Stock::mixed : reference::Stock::one_length;
        const JointJob job = reference::joint_job(seed, 12, stock);
        std::vector<std::set<reference::Way>> ways;
        for (const JointEdge& edge : job.edges) {
            ways.push_back(
                reference::EveryWay(edge.rule, edge.looks == Looks::free, laps_more).all());
        }
        for (const JointPlan& plan : choices(job, Prefer::sticks)) {
            if (plan.extra_laps > laps_more) {
                continue;
            }
            CAPTURE(seed);
            CAPTURE(plan.extra_laps);
            CAPTURE(plan.unbalanced);
            CHECK(joint_checker::wrong_divisions(job, plan) == "");
            CHECK(joint_checker::wrong_certificates(job, plan) == "");
            const auto optimum =
                optimum_of(seed % 2 == 0 ? reference::Solver::cbc : reference::Solver::glpk,
                           reference::model_of_joint(job, ways, plan.extra_laps, plan.unbalanced));
            ++counts;
            open += plan.proved ? 0 : 1;
            unproved += optimum ? 0 : 1;
            if (optimum) {
                more += plan.sticks > *optimum ? 1 : 0;
                CHECK(plan.lower_bound <= *optimum);
                CHECK(plan.sticks >= *optimum);
                CHECK((!plan.proved || plan.sticks == *optimum));
            }
        }
    }
    MESSAGE(counts << " counts: " << unproved << " not proved by the reference within a minute, "
                   << open << " not proved by us, " << more
                   << " take more than the reference proves");
    CHECK(unproved * 10 <= counts);
    CHECK(open == 0);
    CHECK(more == 0);
}
