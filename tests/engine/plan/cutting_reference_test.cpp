// Fewest sticks against a general solver: GLPK's glpsol over every filling there is.
#include <doctest/doctest.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <random>
#include <sstream>

#include "engine/plan/cutting.h"
#include "tests/engine/plan/cutting_checker.h"

using namespace hemline;

namespace {

using Counts = std::vector<int>;

/// Every filling of `room` that no piece left still fits.
void fillings_of(const std::vector<int>& sizes, const Counts& counts, std::size_t from, int room,
                 Counts& taken, std::vector<Counts>& all) {
    if (from == sizes.size()) {
        for (std::size_t i = 0; i < sizes.size(); ++i) {
            if (taken[i] < counts[i] && sizes[i] <= room) {
                return;
            }
        }
        all.push_back(taken);
        return;
    }
    for (int n = std::min(counts[from], room / sizes[from]); n >= 0; --n) {
        taken[from] = n;
        fillings_of(sizes, counts, from + 1, room - n * sizes[from], taken, all);
    }
    taken[from] = 0;
}

/// The job as a program over all its fillings, in the LP format that glpsol reads.
std::string program_of(const CuttingJob& job) {
    const auto in_sixteenths = [](Length l) { return static_cast<int>(l.nm() / 1'587'500); };
    std::vector<int> sizes;
    Counts counts;
    for (const CutDemand& demand : job.demand) {
        sizes.push_back(in_sixteenths(demand.length + job.kerf));
        counts.push_back(static_cast<int>(demand.count));
    }
    std::ostringstream cost, whole, limits;
    std::vector<std::ostringstream> rows(sizes.size());
    int variable = 0;
    for (const StockLength& stock : job.stock) {
        std::vector<Counts> all;
        Counts taken(sizes.size(), 0);
        fillings_of(sizes, counts, 0, in_sixteenths(stock.length + job.kerf), taken, all);
        std::ostringstream limit;
        for (const Counts& filling : all) {
            const std::string name = "x" + std::to_string(variable++);
            cost << " + " << (stock.on_hand ? 0 : 1) << " " << name;
            whole << " " << name << "\n";
            limit << " + " << name;
            for (std::size_t i = 0; i < sizes.size(); ++i) {
                if (filling[i] > 0) {
                    rows[i] << " + " << filling[i] << " " << name;
                }
            }
        }
        if (stock.supply && !all.empty()) {
            limits << limit.str() << " <= " << *stock.supply << "\n";
        }
    }
    std::ostringstream program;
    program << "Minimize\n sticks:" << cost.str() << "\nSubject To\n";
    for (std::size_t i = 0; i < sizes.size(); ++i) {
        program << rows[i].str() << " >= " << counts[i] << "\n";
    }
    program << limits.str() << "General\n" << whole.str() << "End\n";
    return program.str();
}

/// glpsol's proved optimum; none when it did not prove one within a minute.
std::optional<std::int64_t> reference_sticks(const CuttingJob& job) {
    const auto folder = std::filesystem::temp_directory_path();
    const std::string base =
        (folder / ("hemline_cut_" + std::to_string(std::random_device{}()))).string();
    std::ofstream(base + ".lp") << program_of(job);
    const std::string command =
        "glpsol --lp " + base + ".lp --tmlim 60 -o " + base + ".out > /dev/null";
    REQUIRE_MESSAGE(std::system(command.c_str()) == 0, "glpsol is needed: install glpk-utils");
    std::ifstream out(base + ".out");
    std::string line;
    bool optimal = false;
    std::optional<std::int64_t> sticks;
    while (std::getline(out, line)) {
        optimal = optimal || line.find("INTEGER OPTIMAL") != std::string::npos;
        const auto at = line.find("Objective:  sticks = ");
        if (at != std::string::npos) {
            sticks = std::stoll(line.substr(at + 21));
        }
    }
    std::filesystem::remove(base + ".lp");
    std::filesystem::remove(base + ".out");
    return optimal ? sticks : std::nullopt;
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

TEST_CASE("Forty roof-like jobs take as many sticks as GLPK proves") {
    std::mt19937 random(20'240'611);
    int unproved = 0;
    for (int n = 0; n < 40; ++n) {
        const CuttingJob job = roof_like(random, n % 2 == 1);
        const CuttingPlan plan = plan_cutting(job);
        CHECK(cutting_checker::wrong_layouts(job, plan) == "");
        CHECK(cutting_checker::wrong_bound(job, plan) == "");
        CHECK(plan.proved);
        const auto reference = reference_sticks(job);
        unproved += reference ? 0 : 1;
        if (reference) {
            CHECK(plan.sticks == *reference);
        }
    }
    MESSAGE("glpsol did not prove " << unproved << " of 40 within a minute each");
    CHECK(unproved <= 4);
}
