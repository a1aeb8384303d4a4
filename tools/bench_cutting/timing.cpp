#include "tools/bench_cutting/timing.h"

#include <algorithm>
#include <cstdio>
#include <ctime>

#ifdef __EMSCRIPTEN__
#include <emscripten.h>
#endif

#include "tests/engine/cutting/cutting_checker.h"
#include "tests/reference/cutting_model.h"
#include "tests/reference/general_solver.h"

namespace hemline {

namespace {

struct Timed {
    CuttingPlan plan;
    double ms = 0;
};

Timed plan_within_2_s(const CuttingJob& job) {
    const double start = cpu_ms();
    Timed timed{
        plan_cutting(job, {std::int64_t{1} << 50, [=] { return cpu_ms() >= start + 2000; }}), 0};
    timed.ms = cpu_ms() - start;
    return timed;
}

std::string wrong_plan(const ClassJob& own, const CuttingPlan& plan) {
    if (own.optimum && (plan.sticks < *own.optimum || plan.lower_bound > *own.optimum)) {
        return "not the optimum known by construction";
    }
    const std::string wrong = cutting_checker::wrong_layouts(own.job, plan);
    return wrong.empty() ? cutting_checker::wrong_bound(own.job, plan) : wrong;
}

}  // namespace

#ifdef __EMSCRIPTEN__  // there std::clock() is the clock on the wall
EM_JS(double, node_cpu_us, (), {
    const used = process.cpuUsage();
    return used.user + used.system;
})
double cpu_ms() { return node_cpu_us() / 1000; }
#else
double cpu_ms() { return static_cast<double>(std::clock()) * 1000 / CLOCKS_PER_SEC; }
#endif

double percentile(const std::vector<double>& rising, int percent) {
    const std::size_t n = rising.size();
    return n == 0 ? 0 : rising[std::min(n - 1, n * static_cast<std::size_t>(percent) / 100)];
}

ClassFigures time_class(const JobClass& jobs) {
    ClassFigures figures;
    for (const ClassJob& own : jobs.jobs) {
        const Timed timed = plan_within_2_s(own.job);
        figures.ms.push_back(timed.ms);
        ++figures.jobs;
        if (timed.plan.proved) {
            figures.proved_in_100_ms += timed.ms <= 100 ? 1 : 0;
            figures.proved_in_1_s += timed.ms <= 1000 ? 1 : 0;
            figures.proved_in_2_s += timed.ms <= 2000 ? 1 : 0;
        }
        const std::string wrong = wrong_plan(own, timed.plan);
        if (!wrong.empty()) {
            std::printf("WRONG: %s, job %d: %s\n", jobs.name.c_str(), figures.jobs, wrong.c_str());
            ++figures.wrong;
        }
    }
    std::sort(figures.ms.begin(), figures.ms.end());
    return figures;
}

int race(const JobClass& jobs, int count, int seconds) {
    int differ = 0;
    for (int i = 0; i < count && i < static_cast<int>(jobs.jobs.size()); ++i) {
        const CuttingJob& job = jobs.jobs[static_cast<std::size_t>(i)].job;
        const Timed ours = plan_within_2_s(job);
        std::printf("%-24s job %d: %3zu pieces, %lld sticks, ours %9.2f ms%s", jobs.name.c_str(),
                    i + 1, job.demand.size(), static_cast<long long>(ours.plan.sticks), ours.ms,
                    ours.plan.proved ? "" : " (not proved)");
        const auto model = reference::smaller_model(job);
        if (!model) {
            std::printf("; no reference: its model would be too large\n");
            continue;
        }
        for (const auto solver : {reference::Solver::glpk, reference::Solver::cbc}) {
            const reference::Answer answer = reference::solve(solver, model->text(), seconds);
            if (!answer.ran) {
                std::printf("; %s did not run", reference::name_of(solver));
                continue;
            }
            std::printf("; %s %.2f s%s = %.0f×", reference::name_of(solver), answer.seconds,
                        answer.optimum ? "" : " (not proved)", answer.seconds * 1000 / ours.ms);
            if (answer.optimum && ours.plan.proved && *answer.optimum != ours.plan.sticks) {
                std::printf(" DIFFERS: %lld", static_cast<long long>(*answer.optimum));
                ++differ;
            }
        }
        std::printf("\n");
        std::fflush(stdout);
    }
    return differ;
}

}  // namespace hemline
