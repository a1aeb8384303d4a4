// Fewest sticks against every way tried, against optima known by construction, and within limits.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <array>
#include <random>

#include "engine/cutting/cutting.h"
#include "tests/engine/cutting/cutting_checker.h"

using namespace hemline;

namespace {

using Sticks = std::vector<std::pair<int, bool>>;  // room, on hand

/// Fewest new sticks for pieces (longest first) by trying each on every stick, used or not. Sticks
/// stand ready in any number that could be needed.
void place(const std::vector<int>& pieces, std::size_t next, Sticks& sticks,
           std::vector<char>& used, int kerf, int opened, int& fewest) {
    if (opened >= fewest) {
        return;
    }
    if (next == pieces.size()) {
        fewest = opened;
        return;
    }
    for (std::size_t s = 0; s < sticks.size(); ++s) {
        const int needs = pieces[next] + (used[s] != 0 ? kerf : 0);
        if (sticks[s].first < needs ||
            (used[s] == 0 && s > 0 && used[s - 1] == 0 && sticks[s - 1] == sticks[s])) {
            continue;
        }
        const char before = used[s];
        used[s] = 1;
        sticks[s].first -= needs;
        place(pieces, next + 1, sticks, used, kerf,
              opened + (before == 0 && !sticks[s].second ? 1 : 0), fewest);
        sticks[s].first += needs;
        used[s] = before;
    }
}

CuttingJob triplets(int count, unsigned seed) {
    std::mt19937 random(seed);
    const auto between = [&](int low, int high) {
        return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
    };
    CuttingJob job;
    job.stock = {{millimetres(1000), std::nullopt, false}};
    for (int i = 0; i < count; ++i) {
        const int first = between(380, 490);
        const int second = between(250, (1000 - first) / 2);
        for (const int length : {first, second, 1000 - first - second}) {
            job.demand.push_back({millimetres(length), 1});
        }
    }
    return job;
}

}  // namespace

TEST_CASE("With several lengths, offcuts, limits and kerf, as few as trying every way gives") {
    CHECK(rc::check("brute force", [] {
        CuttingJob job;
        const int kerf = *rc::gen::inRange(0, 3);
        job.kerf = inches(kerf);
        const auto count = static_cast<std::size_t>(*rc::gen::inRange(1, 7));
        Sticks sticks;
        for (int k = *rc::gen::inRange(1, 4); k > 0; --k) {
            const int room = *rc::gen::inRange(10, 40);
            const bool on_hand = *rc::gen::arbitrary<bool>();
            const int supply = *rc::gen::inRange(0, on_hand ? 3 : 7);
            const bool limited = on_hand || supply < 5;
            job.stock.push_back({inches(room), std::nullopt, on_hand});
            if (limited) {
                job.stock.back().supply = supply;
            }
            sticks.insert(sticks.end(), limited ? static_cast<std::size_t>(supply) : count,
                          {room, on_hand});
        }
        std::vector<int> pieces;
        for (std::size_t i = 0; i < count; ++i) {
            pieces.push_back(*rc::gen::inRange(3, 38));
            job.demand.push_back({inches(pieces.back()), 1});
        }
        std::sort(pieces.rbegin(), pieces.rend());
        int fewest = 100;
        std::vector<char> used(sticks.size(), 0);
        place(pieces, 0, sticks, used, kerf, 0, fewest);
        const CuttingPlan plan = plan_cutting(job);
        RC_ASSERT(cutting_checker::wrong_layouts(job, plan) == "");
        RC_ASSERT(cutting_checker::wrong_bound(job, plan) == "");
        RC_ASSERT(plan.missing.empty() == (fewest < 100));
        if (fewest < 100) {
            RC_ASSERT(plan.sticks == fewest);
            RC_ASSERT(plan.proved);
        }
    }));
}

TEST_CASE("A scarce stick that only one way of cutting spares is found") {
    // Once missed: the price of the one long stick was clamped, and pricing never came to an end.
    CuttingJob job;
    job.stock = {{inches(33), 1, false}, {inches(16), 2, true}};
    for (const int length : {18, 12, 12, 11, 5}) {
        job.demand.push_back({inches(length), 1});
    }
    const CuttingPlan plan = plan_cutting(job);
    CHECK(cutting_checker::wrong_layouts(job, plan) == "");
    CHECK(plan.missing.empty());
    CHECK(plan.sticks == 1);
    CHECK(plan.proved);
}

TEST_CASE("Triplets come from as many sticks as they were cut from") {
    // Falkenauer (1996): each stick is cut into three pieces without waste, so a third of the
    // pieces is the fewest by construction.
    for (unsigned seed = 1; seed <= 8; ++seed) {
        const CuttingJob job = triplets(20, seed);
        CuttingEffort effort;
        effort.steps = 100'000'000;
        const CuttingPlan plan = plan_cutting(job, effort);
        CHECK(cutting_checker::wrong_layouts(job, plan) == "");
        CHECK(cutting_checker::wrong_bound(job, plan) == "");
        CHECK(plan.sticks == 20);
        CHECK(plan.proved);
    }
}

TEST_CASE("A plan cut short is sound, says that it is not proved, and is the same each time") {
    const CuttingJob job = triplets(40, 3);
    CuttingEffort effort;
    effort.steps = 1000;
    const CuttingPlan plan = plan_cutting(job, effort);
    CHECK(cutting_checker::wrong_layouts(job, plan) == "");
    CHECK(cutting_checker::wrong_bound(job, plan) == "");
    CHECK(plan.lower_bound == 40);
    CHECK(plan.sticks > 40);
    CHECK(!plan.proved);
    const CuttingPlan again = plan_cutting(job, effort);
    REQUIRE(again.layouts.size() == plan.layouts.size());
    for (std::size_t i = 0; i < plan.layouts.size(); ++i) {
        CHECK(again.layouts[i].cuts == plan.layouts[i].cuts);
    }
}

TEST_CASE("A cancel is asked for and obeyed") {
    const CuttingJob job = triplets(40, 3);
    int asked = 0;
    CuttingEffort effort;
    effort.steps = 1'000'000'000'000;
    effort.cancelled = [&] { return ++asked == 3; };
    const CuttingPlan plan = plan_cutting(job, effort);
    CHECK(asked == 3);
    CHECK(cutting_checker::wrong_layouts(job, plan) == "");
}

TEST_CASE("What a search refutes, a search of the checker's own refutes again") {
    // 60×3, 40×5, 24×9 from 120 is the smallest of its kind; here are its neighbors.
    int refuted = 0;
    for (std::int64_t sixties = 1; sixties <= 5; ++sixties) {
        for (std::int64_t forties = 1; forties <= 8; ++forties) {
            for (std::int64_t short_ones = 1; short_ones <= 12; ++short_ones) {
                CuttingJob job;
                job.stock = {{inches(120), std::nullopt, false}};
                job.demand = {
                    {inches(60), sixties}, {inches(40), forties}, {inches(24), short_ones}};
                const CuttingPlan plan = plan_cutting(job);
                CHECK(plan.proved);
                CHECK(cutting_checker::wrong_layouts(job, plan) == "");
                CHECK(cutting_checker::wrong_bound(job, plan) == "");
                refuted += plan.certificate.refuted > 0 ? 1 : 0;
            }
        }
    }
    CHECK(refuted >= 3);
}

TEST_CASE("The checker refuses what is not so") {
    CuttingJob job;
    job.stock = {{inches(120), std::nullopt, false}};
    job.demand = {{inches(70), 3}};
    const CuttingPlan good = plan_cutting(job);
    REQUIRE(cutting_checker::wrong_layouts(job, good) == "");
    REQUIRE(cutting_checker::wrong_bound(job, good) == "");
    CuttingPlan bad = good;
    bad.layouts.front().cuts.push_back(0);
    CHECK(cutting_checker::wrong_layouts(job, bad) != "");
    bad = good;
    bad.layouts.pop_back();
    CHECK(cutting_checker::wrong_layouts(job, bad) != "");
    bad = good;
    bad.certificate.stick_worth[0] -= 1;
    CHECK(cutting_checker::wrong_bound(job, bad) != "");
    bad = good;
    bad.certificate.bound += 1;
    bad.lower_bound += 1;
    CHECK(cutting_checker::wrong_bound(job, bad) != "");
    bad = good;
    bad.certificate.refuted += 1;
    bad.lower_bound += 1;
    CHECK(cutting_checker::wrong_bound(job, bad) != "");
}

TEST_CASE("The one long stick is kept for the two pieces that only it holds") {
    // By hand: the drop of 11 takes a 10, a 14 the other, the 17 both of 8. One new stick and the
    // drop hold 28 of 36. With the 10 on the 17 the same pieces are left, and they do not fit.
    CuttingJob job;
    job.stock = {{inches(14), 3, false}, {inches(11), 1, true}, {inches(17), 1, false}};
    job.demand = {{inches(8), 2}, {inches(10), 2}};
    const CuttingPlan plan = plan_cutting(job);
    CHECK(cutting_checker::wrong_layouts(job, plan) == "");
    CHECK(cutting_checker::wrong_bound(job, plan) == "");
    CHECK(plan.missing.empty());
    CHECK(plan.sticks == 2);
    CHECK(plan.proved);
}

TEST_CASE("A piece that leaves just the room another takes is worth no whole stick") {
    // By hand: three of 71 share no stick with anything, 70 and 50 fill one: four. Three hold the
    // metal, and the bound over the threshold of 50 (Martello and Toth) is four.
    CuttingJob job;
    job.stock = {{inches(120), std::nullopt, false}};
    job.demand = {{inches(71), 3}, {inches(70), 1}, {inches(50), 1}};
    const CuttingPlan plan = plan_cutting(job);
    CHECK(cutting_checker::wrong_layouts(job, plan) == "");
    CHECK(cutting_checker::wrong_bound(job, plan) == "");
    CHECK(plan.sticks == 4);
    CHECK(plan.lower_bound == 4);
}
