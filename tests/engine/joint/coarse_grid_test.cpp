// Cuts on a coarse grid: what must be balanced and cannot is as near to it as its pieces can be.
#include <doctest/doctest.h>

#include <algorithm>
#include <random>

#include "tests/certificate/joint_edge.h"
#include "tests/engine/joint/joint_checker.h"

using namespace hemline;

namespace {

JointEdge balanced_edge(Length length, Length first, Length last, Length grid) {
    // Stick, lap, sliver and tab as the practice has them.
    const RunRule rule{length, first, last, feet(10), inches(6), inches(24), grid};
    return {rule, Looks::balanced, {}};
}

/// Empty when the reader of certificates, which shares no code with the planner, lists each
/// division of the plan among those that its edge may have.
std::string not_listed(const JointJob& job, const JointPlan& plan) {
    for (std::size_t e = 0; e < job.edges.size(); ++e) {
        const EdgeOption& option = plan.divisions[e];
        std::vector<std::int64_t> cuts;
        for (const Division& piece : option.pieces) {
            cuts.push_back(piece.cut.nm());
        }
        const certificate::JointEdge edge = joint_checker::certificate_edge(job.edges[e], option);
        const auto may = certificate::divisions_of(edge, option.extra_laps).listed;
        if (std::none_of(may.begin(), may.end(),
                         [&](const certificate::Listed& own) { return own.cuts == cuts; })) {
            return "an edge that must be balanced and is not";
        }
    }
    return "";
}

}  // namespace

TEST_CASE("On a grid of 1/8 in no edge that must be balanced gets a 2 ft piece between its ends") {
    // 29 ft 10 1/8 in from a gable to a wall takes 4 pieces whose ends differ by 1/8 in at least.
    // Two whole sticks at the ends and a 2 ft piece between them differ by 1/8 in too, and that
    // piece fits on the stick of the other edge: a stick less.
    JointJob job;
    job.stock = {{feet(10), std::nullopt, false}};
    job.edges = {
        balanced_edge(feet(29) + inches(10) + sixteenths(2), inches(1), Length(), sixteenths(2)),
        balanced_edge(feet(7) + inches(11), inches(1), Length(), sixteenths(2))};
    const JointPlan plan = plan_joint(job, Prefer::looks);
    CHECK(not_listed(job, plan) == "");
    REQUIRE(plan.divisions[0].pieces.size() == 4);
    CHECK(plan.divisions[0].pieces[1].cut == feet(10));
    CHECK(plan.divisions[0].pieces[2].cut == feet(10));
}

TEST_CASE("Whatever the grid, the reader lists every division of a plan and finds its bound" *
          doctest::test_suite("large")) {
    std::mt19937 random(29);
    const auto between = [&](int low, int high) {
        return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
    };
    const Length grids[] = {sixteenths(1), sixteenths(2), sixteenths(4),  sixteenths(8),
                            inches(1),     inches(2),     millimetres(1), millimetres(2)};
    const Prefer orders[] = {Prefer::looks, Prefer::laps, Prefer::sticks};
    int plans = 0, proved = 0;
    for (int round = 0; round < 300; ++round) {
        CAPTURE(round);
        const Length grid = grids[round % 8];
        JointJob job;
        job.stock = {{feet(10), std::nullopt, false}};
        for (int e = between(1, 3); e > 0; --e) {
            job.edges.push_back(balanced_edge(sixteenths(between(5 * 192, 45 * 192)),
                                              inches(between(0, 1)), inches(between(0, 1)), grid));
        }
        const JointPlan plan = plan_joint(job, orders[round % 3]);
        CHECK(not_listed(job, plan) == "");
        CHECK(joint_checker::wrong_divisions(job, plan) == "");
        JointPlan shown = plan;
        shown.parts = parts_of_bound(job, plan, {40'000'000, {}});
        CHECK((shown.parts.empty() || joint_checker::wrong_parts(job, shown) == ""));
        ++plans;
        proved += plan.proved ? 1 : 0;
    }
    MESSAGE(proved << " of " << plans << " plans proved");
    CHECK(proved > plans / 2);
}
