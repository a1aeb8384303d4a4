#include "engine/cutting/cutting.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include "tests/engine/cutting/cutting_checker.h"

using namespace hemline;

namespace {

using Pieces = std::vector<std::pair<int, int>>;

CuttingJob job_of(const Pieces& pieces, int stock = 120) {
    CuttingJob job;
    job.stock = {{inches(stock), std::nullopt, false}};
    for (const auto& [length, count] : pieces) {
        job.demand.push_back({inches(length), count});
    }
    return job;
}

void check_sound(const CuttingJob& job, const CuttingPlan& plan) {
    CHECK(cutting_checker::wrong_layouts(job, plan) == "");
    CHECK(cutting_checker::wrong_bound(job, plan) == "");
}

/// Fewest sticks of a single unlimited length by trying every way to place each piece.
void place(const std::vector<int>& pieces, std::size_t next, std::vector<int>& room, int stock,
           std::size_t& fewest) {
    if (room.size() >= fewest) {
        return;
    }
    if (next == pieces.size()) {
        fewest = room.size();
        return;
    }
    for (std::size_t i = 0; i < room.size(); ++i) {
        if (room[i] >= pieces[next]) {
            room[i] -= pieces[next];
            place(pieces, next + 1, room, stock, fewest);
            room[i] += pieces[next];
        }
    }
    room.push_back(stock - pieces[next]);
    place(pieces, next + 1, room, stock, fewest);
    room.pop_back();
}

}  // namespace

TEST_CASE("Six pieces that first-fit spreads over three sticks come from two") {
    const CuttingJob job = job_of({{60, 1}, {48, 2}, {36, 1}, {24, 2}});
    const CuttingPlan plan = plan_cutting(job);
    check_sound(job, plan);
    CHECK(plan.sticks == 2);
    CHECK(plan.proved);
}

TEST_CASE("Three pieces over half a stick need three sticks, though two hold their metal") {
    const CuttingJob job = job_of({{70, 3}});
    const CuttingPlan plan = plan_cutting(job);
    check_sound(job, plan);
    CHECK(plan.sticks == 3);
    CHECK(plan.lower_bound == 3);
    CHECK(plan.proved);
}

TEST_CASE("Five sticks hold the metal and the fractions, yet 3, 5 and 9 pieces need six") {
    // By hand: 596 in of five sticks' 600. A stick with a 24 in piece wastes nothing when it holds
    // five of them and 8 in at least when it does not, and nine is not a multiple of five.
    const CuttingJob job = job_of({{60, 3}, {40, 5}, {24, 9}});
    const CuttingPlan plan = plan_cutting(job);
    check_sound(job, plan);
    CHECK(plan.certificate.bound == 5);
    CHECK(plan.certificate.refuted == 1);
    CHECK(plan.sticks == 6);
    CHECK(plan.proved);
}

TEST_CASE("The kerf is lost between pieces and not after the last") {
    CuttingJob job = job_of({{60, 2}});
    CHECK(plan_cutting(job).sticks == 1);
    job.kerf = sixteenths(1);
    CHECK(plan_cutting(job).sticks == 2);
    job.demand = {{inches(60), 1}, {inches(60) - sixteenths(1), 1}};
    CHECK(plan_cutting(job).sticks == 1);
    check_sound(job, plan_cutting(job));
}

TEST_CASE("Offcuts on hand go first and cost nothing") {
    CuttingJob job = job_of({{50, 2}, {110, 1}});
    job.stock.push_back({inches(101), 1, true});
    const CuttingPlan plan = plan_cutting(job);
    check_sound(job, plan);
    CHECK(plan.sticks == 1);
    CHECK(plan.proved);
    CHECK(plan.layouts.front().stock == 1);
}

TEST_CASE("What the stock cannot yield is missing, and nothing is called proved") {
    CuttingJob job = job_of({{130, 1}, {100, 3}});
    job.stock = {{inches(120), 2, false}};
    const CuttingPlan plan = plan_cutting(job);
    check_sound(job, plan);
    REQUIRE(plan.missing.size() == 2);
    CHECK(plan.missing[0].length == inches(130));
    CHECK(plan.missing[1].count == 1);
    CHECK(!plan.proved);
}

TEST_CASE("Of several lengths the fewest sticks come first, then the least metal") {
    CuttingJob job = job_of({{110, 1}, {70, 2}});
    job.stock.push_back({inches(144), std::nullopt, false});
    const CuttingPlan plan = plan_cutting(job);
    check_sound(job, plan);
    CHECK(plan.sticks == 2);  // 70 + 70 in 144, 110 in 120
    CHECK(plan.proved);
    REQUIRE(plan.layouts.size() == 2);
    CHECK(plan.layouts[0].stock == 1);
    CHECK(plan.layouts[1].stock == 0);
}

TEST_CASE("Nothing to cut, no stock and senseless figures are plans too") {
    CHECK(plan_cutting({}).proved);
    CuttingJob job = job_of({{50, 2}});
    job.stock.clear();
    CHECK(plan_cutting(job).missing.size() == 1);
    job = job_of({{-5, 1}, {0, 3}, {7, -2}});
    CHECK(plan_cutting(job).layouts.empty());
    job = job_of({{1, 2'000'000'000}});
    const CuttingPlan plan = plan_cutting(job);
    CHECK(plan.missing.size() == 1);
    job.stock = {{-inches(120), std::nullopt, false}, {inches(120), -3, true}};
    CHECK(plan_cutting(job).layouts.empty());
}

TEST_CASE("Small jobs are cut from as few sticks as trying every way gives, and proved") {
    CHECK(rc::check("brute force", [] {
        const int stock = *rc::gen::inRange(20, 60);
        const auto count = *rc::gen::inRange(1, 9);
        std::vector<int> pieces;
        CuttingJob job = job_of({}, stock);
        for (int i = 0; i < count; ++i) {
            pieces.push_back(*rc::gen::inRange(1, stock + 1));
            job.demand.push_back({inches(pieces.back()), 1});
        }
        std::size_t fewest = pieces.size() + 1;
        std::vector<int> room;
        place(pieces, 0, room, stock, fewest);
        const CuttingPlan plan = plan_cutting(job);
        RC_ASSERT(cutting_checker::wrong_layouts(job, plan) == "");
        RC_ASSERT(cutting_checker::wrong_bound(job, plan) == "");
        RC_ASSERT(plan.proved);
        RC_ASSERT(plan.sticks == static_cast<std::int64_t>(fewest));
    }));
}

TEST_CASE("Any mix of stocks, offcuts and kerf gives a sound plan and a sound bound") {
    CHECK(rc::check("mixed", [] {
        CuttingJob job;
        job.kerf = sixteenths(*rc::gen::inRange(0, 4));
        for (int i = *rc::gen::inRange(0, 5); i > 0; --i) {
            StockLength stock{inches(*rc::gen::inRange(20, 150)), std::nullopt, false};
            stock.on_hand = *rc::gen::arbitrary<bool>();
            if (stock.on_hand || *rc::gen::arbitrary<bool>()) {
                stock.supply = *rc::gen::inRange(0, 4);
            }
            job.stock.push_back(stock);
        }
        for (int i = *rc::gen::inRange(0, 12); i > 0; --i) {
            job.demand.push_back({inches(*rc::gen::inRange(1, 130)), *rc::gen::inRange(1, 4)});
        }
        const CuttingPlan plan = plan_cutting(job);
        RC_ASSERT(cutting_checker::wrong_layouts(job, plan) == "");
        RC_ASSERT(cutting_checker::wrong_bound(job, plan) == "");
    }));
}

namespace {

/// How many of each stock the plan cuts.
std::vector<std::int64_t> used(const CuttingJob& job, const CuttingPlan& plan) {
    std::vector<std::int64_t> sticks(job.stock.size(), 0);
    for (const Layout& layout : plan.layouts) {
        sticks[layout.stock] += layout.times;
    }
    return sticks;
}

}  // namespace

TEST_CASE("Two drops of one length that were noted apart are each cut once") {
    CuttingJob job = job_of({{100, 3}});
    job.stock.push_back({inches(101), 1, true});
    job.stock.push_back({inches(101), 1, true});
    const CuttingPlan plan = plan_cutting(job);
    check_sound(job, plan);
    CHECK(used(job, plan) == std::vector<std::int64_t>{1, 1, 1});
}

TEST_CASE("Shorter sticks are taken where they do, and no more of them than there are") {
    // By hand: no two of the pieces share a stick, so each takes one, and two may be short.
    CuttingJob job = job_of({{90, 3}});
    job.stock.push_back({inches(100), 2, false});
    CuttingPlan plan = plan_cutting(job);
    check_sound(job, plan);
    CHECK(used(job, plan) == std::vector<std::int64_t>{1, 2});
    job.demand = {{inches(90), 1}, {inches(80), 1}, {inches(70), 1}};
    plan = plan_cutting(job);
    check_sound(job, plan);
    CHECK(used(job, plan) == std::vector<std::int64_t>{1, 2});
}

TEST_CASE("The stick of the longest piece is cut first") {
    // By hand: 50 and 60 share a stick, 80 and 40 another, 110 takes its own.
    const CuttingJob job = job_of({{50, 1}, {80, 1}, {40, 1}, {110, 1}, {60, 1}});
    const CuttingPlan plan = plan_cutting(job);
    check_sound(job, plan);
    REQUIRE(plan.layouts.size() == 3);
    CHECK(plan.layouts[0].cuts == std::vector<std::size_t>{3});
    CHECK(plan.layouts[1].cuts == std::vector<std::size_t>{1, 2});
    CHECK(plan.layouts[2].cuts == std::vector<std::size_t>{4, 0});
}

TEST_CASE("A job too large to search keeps the better quick filling, and may be proved by it") {
    // The six pieces of two whole sticks, 400 times: 800 sticks' metal, and 800 whole fillings.
    const CuttingJob job = job_of({{60, 400}, {48, 800}, {36, 400}, {24, 800}});
    const CuttingPlan plan = plan_cutting(job);
    check_sound(job, plan);
    CHECK(plan.sticks == 800);
    CHECK(plan.proved);
    CHECK(!plan.is_too_large);
}

TEST_CASE("Pieces are counted, not kinds, where a job is too large to search") {
    // The job that needs six sticks though five hold its metal, beside 2000 whole sticks.
    const CuttingJob job = job_of({{120, 2000}, {60, 3}, {40, 5}, {24, 9}});
    const CuttingPlan plan = plan_cutting(job);
    check_sound(job, plan);
    CHECK(plan.sticks == 2006);
    CHECK(plan.lower_bound == 2005);
    CHECK(plan.is_too_large);
}
