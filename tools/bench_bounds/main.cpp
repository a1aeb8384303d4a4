// What hostile records and overlong edges cost: time and memory, each in a separate process.
#include <sys/resource.h>
#include <sys/wait.h>
#include <unistd.h>

#include <chrono>
#include <cstdio>
#include <functional>

#include "engine/handover/job_pages.h"
#include "engine/plan/make_plan.h"
#include "engine/plan/plan.h"
#include "field/store/assets.h"
#include "field/store/folders.h"
#include "tests/engine/hostile/hostile_record.h"

namespace hemline {
namespace {

struct Case {
    const char* name;
    std::function<HostileEvents()> record;
    std::int64_t steps = 4'000'000;  ///< to look for choices
};

/// Edges of these lengths, and what sticks they may be cut from.
HostileEvents roof(const std::vector<Length>& edges, const std::vector<Length>& stock,
                   const char* grid, int offcuts) {
    HostileRecord record;
    record.add(RuleSet{"cut_grid", grid});
    record.add(StockChosen{stock});
    for (std::size_t i = 0; i < edges.size(); ++i) {
        record.eave_read("E" + std::to_string(i), edges[i]);
    }
    for (int i = 0; i < offcuts; ++i) {
        record.add(MetalCounted{"E0", TrimRole::main, feet(5) + i * inches(1), 2});
    }
    PlanChosen plan;
    plan.prefer = Prefer::sticks;
    record.add(plan);
    return record.events;
}

std::vector<Length> long_edges(Length first, int count, Length step) {
    std::vector<Length> edges;
    for (int i = 0; i < count; ++i) {
        edges.push_back(first - i * step);
    }
    return edges;
}

std::vector<Case> cases() {
    const Length kilometre = millimetres(1'000'000), street = millimetres(100'000);
    const std::vector<Length> one = {feet(10)}, mixed = {feet(12), feet(10), feet(8)},
                              metric = {millimetres(3000)};
    const auto three = long_edges(kilometre, 2, millimetres(3000));
    const auto many = long_edges(street, 100, millimetres(137));
    return {
        {"2 edges of 1 km", [=] { return roof(three, one, "1/16 in", 0); }},
        {"the same, looked at long", [=] { return roof(three, one, "1/16 in", 0); }, 400'000'000},
        {"2 edges of 1 km, mixed stock", [=] { return roof(three, mixed, "1/16 in", 6); }},
        {"the same, looked at long", [=] { return roof(three, mixed, "1/16 in", 6); }, 400'000'000},
        {"2 edges of 1 km, grid of 0.1 mm", [=] { return roof(three, metric, "0.1 mm", 0); }},
        {"the same, looked at long", [=] { return roof(three, metric, "0.1 mm", 0); }, 400'000'000},
        {"100 edges, 10 km", [=] { return roof(many, one, "1/16 in", 0); }},
        {"the same, looked at long", [=] { return roof(many, one, "1/16 in", 0); }, 400'000'000},
        {"100 edges, 10 km, mixed stock", [=] { return roof(many, mixed, "1/16 in", 6); }},
        {"the same, looked at long", [=] { return roof(many, mixed, "1/16 in", 6); }, 400'000'000},
        {"100 edges, 10 km, 0.1 mm", [=] { return roof(many, metric, "0.1 mm", 0); }},
        {"4 000 stock lengths", [] { return stock_lengths(4000); }},
        {"3 000 offcuts", [] { return offcuts_counted(3000, 1); }},
        {"50 000 legs", [] { return legs_of_one_section(50'000); }},
        {"10 000 readings", [] { return readings_of_one_edge(10'000); }},
        {"10 000 times the same", [] { return same_reading_again(10'000); }},
        {"5 000 edges", [] { return many_edges(5000); }},
        {"2 000 pools", [] { return many_pools(2000); }},
        {"10 000 offcuts used up", [] { return offcuts_used_up(10'000); }},
        {"20 000 steps", [] { return steps_ticked(20'000); }},
        {"20 000 supplies, 500 pools", [] { return supplies_said(20'000); }},
        {"60 edges of 590 pieces", [] { return pieces_planned(60); }},
    };
}

struct Took {
    double read_ms = 0, plan_ms = 0, choices_ms = 0, pages_ms = 0;
    long choices = 0, proved = 0;
};

double ms_since(std::chrono::steady_clock::time_point start) {
    return std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start)
        .count();
}

Took take(const Case& own, const Assets& assets) {
    Took took;
    const HostileEvents events = in_order(own.record());
    auto start = std::chrono::steady_clock::now();
    const Job job = replay(events, assets.practice);
    took.read_ms = ms_since(start);
    start = std::chrono::steady_clock::now();
    make_plan(job, assets.catalogue);
    took.plan_ms = ms_since(start);
    start = std::chrono::steady_clock::now();
    for (const PlanChoice& choice : find_choices(job, assets.catalogue, {own.steps, {}})) {
        ++took.choices;
        took.proved += choice.proved ? 1 : 0;
    }
    took.choices_ms = ms_since(start);
    start = std::chrono::steady_clock::now();
    pages_of(events, assets.practice);
    took.pages_ms = ms_since(start);
    return took;
}

/// Runs the case in a separate process, so that its memory can be measured.
void measure(const Case& own, const Assets& assets) {
    int pipe_ends[2] = {};
    if (::pipe(pipe_ends) != 0) {
        return;
    }
    const pid_t child = ::fork();
    if (child == 0) {
        const Took took = take(own, assets);
        const bool written = ::write(pipe_ends[1], &took, sizeof took) == sizeof took;
        ::_exit(written ? 0 : 1);
    }
    ::close(pipe_ends[1]);
    Took took;
    const bool whole = ::read(pipe_ends[0], &took, sizeof took) == sizeof took;
    ::close(pipe_ends[0]);
    int status = 0;
    struct rusage used {};
    ::wait4(child, &status, 0, &used);
    if (!whole) {
        std::printf("| %s | died of %d | | | | %ld MB |\n", own.name, status,
                    used.ru_maxrss / 1024);
    } else {
        std::printf("| %s | %.0f | %.0f | %.0f (%ld of %ld proved) | %.0f | %ld MB |\n", own.name,
                    took.read_ms, took.plan_ms, took.choices_ms, took.proved, took.choices,
                    took.pages_ms, used.ru_maxrss / 1024);
    }
    std::fflush(stdout);
}

}  // namespace
}  // namespace hemline

/// bench_bounds [WORDS]: only the cases whose names hold those words.
int main(int count, char** words) {
    const auto folder = hemline::assets_folder();
    const auto assets = hemline::read_assets(folder ? *folder : "assets");
    if (!assets) {
        std::fputs("no assets\n", stderr);
        return 1;
    }
    std::puts("| case | fold ms | plan ms | choices ms | pages ms | peak |\n|-|-|-|-|-|-|");
    const std::string wanted = count > 1 ? words[1] : "";
    for (const hemline::Case& own : hemline::cases()) {
        if (std::string(own.name).find(wanted) != std::string::npos) {
            hemline::measure(own, *assets);
        }
    }
    return 0;
}
