#include "tools/bench_cutting/against.h"

#include <algorithm>
#include <cstdio>

#include "tests/reference/general_solver.h"
#include "tests/reference/joint_jobs.h"
#include "tests/reference/joint_model.h"
#include "tools/bench_cutting/classes.h"

namespace hemline {

namespace {

using reference::Solver;

/// The count that either solver proves: cbc first, which is faster on these jobs.
std::optional<std::int64_t> optimum_of(const reference::Program& program, int seconds) {
    const std::string text = program.text();
    const auto cbc = reference::solve(Solver::cbc, text, seconds);
    return cbc.optimum ? cbc.optimum : reference::solve(Solver::glpk, text, seconds).optimum;
}

/// Compares a count with the reference's.
void compare(std::int64_t sticks, std::int64_t bound, bool proved,
             std::optional<std::int64_t> optimum, const std::string& name, Against& against) {
    ++against.jobs;
    against.open += proved ? 0 : 1;
    if (!optimum) {
        ++against.not_proved;
        return;
    }
    if (!proved) {
        const bool is_more = sticks > *optimum;
        against.more += is_more ? 1 : 0;
        std::printf("%s: %s: %lld sticks, bound %lld; the reference proves %lld\n",
                    is_more ? "MORE" : "open", name.c_str(), static_cast<long long>(sticks),
                    static_cast<long long>(bound), static_cast<long long>(*optimum));
    }
    if (sticks < *optimum || bound > *optimum || (proved && sticks != *optimum)) {
        ++against.wrong;
        std::printf("WRONG: %s: %lld sticks, bound %lld%s; the reference proves %lld\n",
                    name.c_str(), static_cast<long long>(sticks), static_cast<long long>(bound),
                    proved ? ", proved" : "", static_cast<long long>(*optimum));
    }
}

}  // namespace

Against compare_cutting(int jobs, int seconds) {
    Against against;
    for (int i = 0; i < jobs; ++i) {
        const CuttingJob job = reference_job(static_cast<std::uint64_t>(i) + 1, i % 2 == 1);
        const CuttingPlan plan = plan_cutting(job, {40'000'000, {}});
        const auto model = reference::smaller_model(job);
        const auto optimum = model ? optimum_of(*model, seconds) : std::nullopt;
        if (!plan.missing.empty()) {
            continue;
        }
        compare(plan.sticks, plan.lower_bound, plan.proved, optimum,
                "cutting job " + std::to_string(i), against);
    }
    return against;
}

Against compare_joint(int first, int jobs, int seconds) {
    constexpr std::int64_t laps_more = 2;
    Against against;
    for (int i = first; i < first + jobs; ++i) {
        const auto stock = i % 4 == 3 ? reference::Stock::mixed : reference::Stock::one_length;
        const std::uint64_t seed = static_cast<std::uint64_t>(i) + 1;
        const JointJob job =
            i % 4 == 1 ? reference::odd_joint_job(seed) : reference::joint_job(seed, 12, stock);
        std::vector<std::set<reference::Way>> ways;
        for (const JointEdge& edge : job.edges) {
            ways.push_back(
                reference::EveryWay(edge.rule, edge.looks == Looks::free, laps_more).all());
        }
        if (std::any_of(ways.begin(), ways.end(), [](const auto& own) { return own.empty(); })) {
            continue;  // a stretch that no permitted pieces cover
        }
        for (const JointPlan& plan : choices(job, Prefer::sticks)) {
            if (plan.extra_laps > laps_more || !plan.cutting.missing.empty()) {
                continue;
            }
            const std::string wrong = joint_checker::wrong_divisions(job, plan) +
                                      joint_checker::wrong_certificates(job, plan);
            if (!wrong.empty()) {
                ++against.wrong;
                std::printf("WRONG: joint job %d: %s\n", i, wrong.c_str());
            }
            const auto program =
                reference::model_of_joint(job, ways, plan.extra_laps, plan.unbalanced);
            compare(plan.sticks, plan.lower_bound, plan.proved, optimum_of(program, seconds),
                    "joint job " + std::to_string(i) + ", " + std::to_string(plan.extra_laps) +
                        " laps, " + std::to_string(plan.unbalanced) + " unbalanced",
                    against);
        }
    }
    return against;
}

}  // namespace hemline
