#include "tools/bench_cutting/roofs.h"

#include <algorithm>
#include <cstdio>
#include <fstream>
#include <random>
#include <sstream>
#include <string>

#include "engine/joint/joint.h"
#include "tools/bench_cutting/timing.h"

namespace hemline {

namespace {

std::vector<JointJob> roofs(bool is_mixed) {
    std::ifstream file("tests/engine/plan/generated_roofs.txt");
    std::vector<JointJob> all;
    for (std::string line; std::getline(file, line);) {
        std::istringstream words(line);
        std::string name;
        words >> name;
        if (name == "#") {
            continue;
        }
        std::mt19937 random(static_cast<unsigned>(all.size()));
        JointJob job;
        const Length stick = inches(is_mixed ? 144 : 120);
        job.stock = {{stick, std::nullopt, false}};
        if (is_mixed) {
            job.stock.push_back({inches(120), std::nullopt, false});
            for (int offcut = 0; offcut < 5; ++offcut) {
                const auto length = static_cast<std::int64_t>(400 + random() % 1500);
                const auto count = static_cast<std::int64_t>(1 + random() % 2);
                job.stock.push_back({sixteenths(length), count, true});
            }
        }
        for (std::int64_t edge = 0; words >> edge;) {
            const RunRule rule{sixteenths(edge), inches(1),  inches(1),    stick,
                               inches(6),        inches(24), sixteenths(1)};
            job.edges.push_back({rule, Looks::free, {}});
        }
        all.push_back(std::move(job));
    }
    return all;
}

}  // namespace

void time_roofs(std::int64_t steps) {
    for (const bool is_mixed : {false, true}) {
        std::int64_t found = 0, proved = 0, sticks = 0;
        double ms = 0;
        const std::vector<JointJob> all = roofs(is_mixed);
        for (const JointJob& job : all) {
            const double start = cpu_ms();
            const std::vector<JointPlan> plans = choices(job, Prefer::sticks, {steps, {}});
            ms += cpu_ms() - start;
            found += static_cast<std::int64_t>(plans.size());
            const JointPlan* fewest = first_choice(plans, Prefer::sticks);
            sticks += fewest == nullptr ? 0 : fewest->sticks;
            proved += std::count_if(plans.begin(), plans.end(),
                                    [](const JointPlan& plan) { return plan.proved; });
        }
        std::printf(
            "%-36s %zu roofs, %lld sticks at the fewest; %lld of %lld choices proved, "
            "%.0f ms\n",
            is_mixed ? "two new lengths, offcuts on hand" : "one new length", all.size(),
            static_cast<long long>(sticks), static_cast<long long>(proved),
            static_cast<long long>(found), ms);
        std::fflush(stdout);
    }
}

}  // namespace hemline
