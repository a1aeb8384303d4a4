// One edge divided by what the others leave of their sticks, each gap told by hand.
#include "engine/joint/gaps.h"

#include <doctest/doctest.h>

using namespace hemline;

namespace {

JointEdge edge_of(Length edge) {
    return {{edge, inches(1), inches(1), inches(120), inches(6), inches(24), sixteenths(1)},
            Looks::free,
            {}};
}

EdgeOption cut_to(const std::vector<Length>& cuts) {
    EdgeOption option;
    for (const Length cut : cuts) {
        option.pieces.push_back({cut, cut});
    }
    return option;
}

/// 70 in or so on a stick of its own, and an edge of 162 in of metal, as two pieces of 84 in with a
/// lap of 6 in, on two more.
struct Pool {
    JointJob job;
    JointPlan plan;

    explicit Pool(Length other) {
        job.kerf = sixteenths(1);
        job.stock = {{inches(120), std::nullopt, false}};
        job.edges = {edge_of(other - inches(2)), edge_of(inches(160))};
        plan.divisions = {cut_to({other}), cut_to({inches(84), inches(84)})};
        plan.job.stock = job.stock;
        plan.job.kerf = job.kerf;
        plan.job.demand = {{other, 1}, {inches(84), 1}, {inches(84), 1}};
        plan.cutting.layouts = {{1, 0, {0}}, {1, 0, {1}}, {1, 0, {2}}};
    }
    void put_other_on_drop(Length drop) {
        job.stock.push_back({drop, 1, true});
        plan.job.stock = job.stock;
        plan.cutting.layouts[0].stock = 1;
    }
};

}  // namespace

TEST_CASE("An edge takes one new stick less, and a piece beside another edge's and its kerf") {
    const Pool pool(inches(70));
    const auto option = divide_by_gaps(pool.job, pool.plan, 1, 2);
    REQUIRE(option);
    // 120 - 70 - 1/16 beside the other edge's piece; of 168 in the new stick gives the rest.
    REQUIRE(option->pieces.size() == 2);
    CHECK(option->pieces[0].cut == inches(118) + sixteenths(1));
    CHECK(option->pieces[1].cut == inches(50) - sixteenths(1));
}

TEST_CASE("Where the gaps and one new stick do not hold an edge, it is not divided by them") {
    // 168 in less a stick are 48; of 120 in, 72 less the kerf leave just that.
    CHECK(divide_by_gaps(Pool(inches(72) - sixteenths(1)).job,
                         Pool(inches(72) - sixteenths(1)).plan, 1, 2));
    CHECK(!divide_by_gaps(Pool(inches(72)).job, Pool(inches(72)).plan, 1, 2));
}

TEST_CASE("A drop that another edge is cut from is no gap of its whole length") {
    Pool pool(inches(50));
    pool.put_other_on_drop(inches(60));
    CHECK(!divide_by_gaps(pool.job, pool.plan, 1, 2));
    // A second drop like it is one: 60 in of the 168, and 108 of the new stick.
    pool.job.stock.back().supply = 2;
    pool.plan.job.stock = pool.job.stock;
    const auto option = divide_by_gaps(pool.job, pool.plan, 1, 2);
    REQUIRE(option);
    CHECK(option->pieces[0].cut == inches(108));
    CHECK(option->pieces[1].cut == inches(60));
}
