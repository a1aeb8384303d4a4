// Branching inside a class, on how long the pieces of an edge are: the least worth in a range
// against every division tried, and jobs that only this proves against general solvers.
#include <doctest/doctest.h>

#include <map>
#include <random>
#include <set>

#include "engine/joint/worth.h"
#include "tests/reference/general_solver.h"
#include "tests/reference/joint_jobs.h"
#include "tests/reference/joint_model.h"

using namespace hemline;

namespace {

constexpr std::int64_t laps_most = 2;
constexpr Length grid = sixteenths(1);

class Numbers {
  public:
    explicit Numbers(std::uint64_t seed) : random_(seed) {}
    int between(int low, int high) {
        return low + static_cast<int>(random_() % static_cast<std::uint64_t>(high - low + 1));
    }

  private:
    std::mt19937_64 random_;
};

/// Ranges whose ends rise, as branching makes them.
std::vector<LengthRange> some_ranges(Numbers& numbers, std::size_t pieces, int stick) {
    std::vector<LengthRange> ranges(pieces, {Length(), sixteenths(stick)});
    for (int cuts = numbers.between(1, 3); cuts > 0; --cuts) {
        const auto place =
            static_cast<std::size_t>(numbers.between(0, static_cast<int>(pieces) - 1));
        const bool is_most = numbers.between(0, 1) == 0;
        const Length to = sixteenths(numbers.between(3, stick));
        for (std::size_t i = 0; i < pieces; ++i) {
            if (is_most && i <= place) {
                ranges[i].most = std::min(ranges[i].most, to);
            } else if (!is_most && i >= place) {
                ranges[i].least = std::max(ranges[i].least, to);
            }
        }
    }
    return ranges;
}

JointWorths some_worths(Numbers& numbers, int stick) {
    JointWorths worths;
    int worth = 0;
    for (int from = 1; from <= stick; from += numbers.between(1, 4)) {
        worths.from.push_back(sixteenths(from));
        worths.worth.push_back(worth += numbers.between(0, 9));
    }
    worths.lap = numbers.between(0, 5);
    worths.unbalanced = numbers.between(0, 5);
    return worths;
}

/// What a division costs in a class; none where it lies outside the ranges, or in another class.
std::optional<std::int64_t> cost_in(const reference::Way& way, std::size_t of_class,
                                    const std::vector<LengthRange>& ranges,
                                    const JointWorths& worths) {
    const bool is_unbalanced = of_class % 2 == 1;
    if (way.laps != static_cast<std::int64_t>(of_class / 2) ||
        (way.unbalanced > 0 && !is_unbalanced)) {
        return std::nullopt;
    }
    std::int64_t cost = way.laps * worths.lap + (is_unbalanced ? worths.unbalanced : 0);
    for (std::size_t i = 0; i < way.cuts.size(); ++i) {
        const Length cut = way.cuts[i] * grid;
        if (cut < ranges[i].least || cut > ranges[i].most) {
            return std::nullopt;
        }
        cost += worth_of(worths, cut);
    }
    return cost;
}

std::vector<std::set<reference::Way>> every_way(const JointJob& job) {
    std::vector<std::set<reference::Way>> ways;
    for (const JointEdge& edge : job.edges) {
        ways.push_back(reference::EveryWay(edge.rule, edge.looks == Looks::free, laps_most).all());
    }
    return ways;
}

JointJob roof(int number) {
    const std::uint64_t seed = static_cast<std::uint64_t>(number) + 1;
    const auto stock = number % 4 == 3 ? reference::Stock::mixed : reference::Stock::one_length;
    return number % 4 == 1 ? reference::odd_joint_job(seed) : reference::joint_job(seed, 12, stock);
}

/// Lengths in 1/16 in. The smallest part of roof 149 that takes a branch inside a class.
JointJob two_edges_and_offcuts() {
    JointJob job;
    const auto units = [](int n) { return sixteenths(n); };
    job.stock = {{units(30), std::nullopt, false},
                 {units(23), 2, true},
                 {units(8), 1, true},
                 {units(14), 2, true}};
    job.edges = {
        {{units(62), units(0), units(0), units(30), units(2), units(6), grid}, Looks::free, {}},
        {{units(31), units(1), units(0), units(30), units(2), units(6), grid},
         Looks::balanced,
         {}}};
    return job;
}

bool has_ranges(const JointPart& part) {
    return std::any_of(part.edges.begin(), part.edges.end(),
                       [](const DivisionSet& set) { return !set.ranges.empty(); });
}

/// How many of the job's choices take a branch inside a class; each must be what a solver proves.
int check_against_solver(const JointJob& job) {
    int ranged = 0;
    const auto ways = every_way(job);
    for (const JointPlan& plan : choices(job, Prefer::sticks)) {
        if (plan.extra_laps > laps_most) {
            continue;
        }
        CAPTURE(plan.extra_laps);
        CAPTURE(plan.unbalanced);
        CHECK(joint_checker::wrong_divisions(job, plan) == "");
        CHECK(joint_checker::wrong_certificates(job, plan) == "");
        CHECK(plan.proved);
        const auto program = reference::model_of_joint(job, ways, plan.extra_laps, plan.unbalanced);
        const auto answer = reference::solve(reference::Solver::cbc, program.text(), 60);
        REQUIRE(answer.ran);
        REQUIRE(answer.optimum);
        CHECK(plan.sticks == *answer.optimum);
        ranged += std::any_of(plan.parts.begin(), plan.parts.end(), has_ranges) ? 1 : 0;
    }
    return ranged;
}

}  // namespace

TEST_CASE("What a division in some ranges costs at least is what every division tried costs" *
          doctest::test_suite("large")) {
    Numbers numbers(31);
    int some = 0, none = 0, exact = 0;
    for (int round = 0; round < 300; ++round) {
        CAPTURE(round);
        const JointJob any =
            round % 2 == 0 ? reference::odd_joint_job(static_cast<std::uint64_t>(1000 + round))
                           : roof(round);
        const JointJob job{{any.edges.front()}, any.stock, any.kerf};
        const auto ways = ways_of(job);
        const auto needs = needs_of(job, ways, laps_most);
        REQUIRE(needs);
        const int stick = static_cast<int>(needs->stick.nm() / grid.nm());
        const JointWorths worths = some_worths(numbers, stick);
        CuttingEffort unlimited;
        Effort effort(unlimited);
        const LeastWorth least(*needs, worths, effort);
        const std::set<reference::Way> every = every_way(job).front();
        for (std::size_t c = 0; c < needs->edges[0].size(); ++c) {
            const auto pieces = static_cast<std::size_t>(
                joint_checker::edge_of(job.edges[0].rule).fewest + static_cast<int>(c / 2));
            const bool is_unbalanced = c % 2 == 1;
            if (is_unbalanced && (job.edges[0].looks != Looks::free || pieces == 1 ||
                                  !joint_checker::can_balance(job.edges[0].rule, pieces))) {
                continue;  // such an edge is never called unbalanced
            }
            const DivisionSet set{1U << c, some_ranges(numbers, pieces, stick)};
            std::optional<std::int64_t> cheapest_tried;
            for (const reference::Way& way : every) {
                if (const auto cost = cost_in(way, c, set.ranges, worths)) {
                    cheapest_tried = std::min(*cost, cheapest_tried.value_or(*cost));
                }
            }
            const bool has = has_division(*needs, 0, set);
            const Cheapest found = cheapest(needs->edges[0], set, worths, least, effort);
            (cheapest_tried ? some : none) += 1;
            CHECK((has || !cheapest_tried));
            if (cheapest_tried) {
                CHECK(found.cost <= *cheapest_tried);
            }
            // A piece no longer than its lap or allowance covers nothing; only a sliver limit
            // above those keeps it out.
            if (job.edges[0].rule.sliver > job.edges[0].rule.lap + grid) {
                CHECK(has == cheapest_tried.has_value());
                CHECK((!has || found.cost == *cheapest_tried));
                ++exact;
            }
        }
    }
    MESSAGE(some << " ranges with a division, " << none << " without; " << exact << " exact");
    CHECK(some > 300);
    CHECK(none > 300);
    CHECK(exact > 300);
}

TEST_CASE("Two edges with offcuts are proved only inside a class, and take what a solver proves") {
    CHECK(check_against_solver(two_edges_and_offcuts()) > 0);
}

TEST_CASE("Roofs 149, 335 and 1311 of the bench take what a solver proves, choice by choice" *
          doctest::test_suite("long")) {
    CHECK(check_against_solver(roof(149)) > 0);
    check_against_solver(roof(335));
    CHECK(check_against_solver(roof(1311)) > 0);
}

TEST_CASE("A joint certificate whose ranges leave a division out is refused") {
    int tampered = 0;
    for (const JointJob& job : {two_edges_and_offcuts(), roof(149), roof(1311)}) {
        for (const JointPlan& plan : choices(job, Prefer::sticks)) {
            const auto is_refused = [&](const JointPlan& other) {
                return !joint_checker::wrong_certificates(job, other).empty();
            };
            for (std::size_t p = 0; p < plan.parts.size(); ++p) {
                JointPlan other = plan;
                other.parts.erase(other.parts.begin() + static_cast<std::ptrdiff_t>(p));
                CHECK((other.parts.empty() || is_refused(other)));
                for (std::size_t e = 0; e < job.edges.size(); ++e) {
                    for (std::size_t i = 0; i < plan.parts[p].edges[e].ranges.size(); ++i) {
                        other = plan;
                        other.parts[p].edges[e].ranges[i].most -= grid;
                        CHECK(is_refused(other));
                        other = plan;
                        other.parts[p].edges[e].ranges[i].least += grid;
                        CHECK(is_refused(other));
                        ++tampered;
                    }
                    // Ranges of another number of pieces say nothing.
                    other = plan;
                    auto& ranges = other.parts[p].edges[e].ranges;
                    ranges.resize(ranges.size() + 1, {Length(), job.edges[e].rule.stock});
                    const bool is_whole = ranges.size() == plan.divisions[e].pieces.size();
                    CHECK((is_whole || is_refused(other)));
                }
            }
        }
    }
    MESSAGE(tampered << " ranges tampered with");
    CHECK(tampered >= 20);
}
