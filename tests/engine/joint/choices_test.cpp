#include "engine/joint/joint.h"

#include <doctest/doctest.h>

#include <random>
#include <set>
#include <tuple>

#include "tests/engine/joint/joint_checker.h"

using namespace hemline;

namespace {

using Triple = std::tuple<std::int64_t, std::int64_t, std::int64_t>;

JointJob job_of(const std::vector<Length>& edges, Looks looks) {
    JointJob job;
    job.stock = {{inches(120), std::nullopt, false}};
    for (const Length edge : edges) {
        const RunRule rule{edge,      inches(1),  inches(1),    inches(120),
                           inches(6), inches(24), sixteenths(1)};
        job.edges.push_back({rule, looks, {}});
    }
    return job;
}

void check_plan(const JointJob& job, const JointPlan& plan) {
    CHECK(joint_checker::wrong_divisions(job, plan) == "");
    CHECK(joint_checker::wrong_certificates(job, plan) == "");
}

std::set<Triple> triples(const JointJob& job, Prefer prefer = Prefer::sticks) {
    std::set<Triple> all;
    for (const JointPlan& plan : choices(job, prefer)) {
        check_plan(job, plan);
        CHECK(plan.proved);
        all.insert({plan.extra_laps, plan.unbalanced, plan.sticks});
    }
    return all;
}

}  // namespace

// Proved by hand: T = 162 in each, remainders of 48 in. Balanced ends of 87 and 81 share no stick;
// two remainders do; so do small ends of 30 and 24 with the other edge's.
TEST_CASE("Two edges of 160 in take four sticks, or three for two run out or for one lap more") {
    const std::vector<Length> edges{inches(160), inches(160)};
    CHECK(triples(job_of(edges, Looks::free)) == std::set<Triple>{{0, 0, 4}, {0, 2, 3}, {1, 0, 3}});
    CHECK(triples(job_of(edges, Looks::balanced)) == std::set<Triple>{{0, 0, 4}, {1, 0, 3}});
}

TEST_CASE("Three edges of 74 in take three sticks, or two with one lap more") {
    const std::vector<Length> edges{inches(74), inches(74), inches(74)};
    CHECK(triples(job_of(edges, Looks::free)) == std::set<Triple>{{0, 0, 3}, {1, 0, 2}});
}

TEST_CASE("346 in is three full sticks, and a sixteenth more takes a fourth") {
    CHECK(triples(job_of({inches(346)}, Looks::free)) == std::set<Triple>{{0, 0, 3}});
    CHECK(triples(job_of({inches(346)}, Looks::balanced)) == std::set<Triple>{{0, 0, 3}});
    CHECK(triples(job_of({inches(346) + sixteenths(1)}, Looks::free)) ==
          std::set<Triple>{{0, 0, 4}});
}

TEST_CASE("Each preference takes the choice that comes first in its order") {
    const JointJob job = job_of({inches(160), inches(160)}, Looks::free);
    const auto first = [&](Prefer prefer) {
        const JointPlan plan = plan_joint(job, prefer);
        check_plan(job, plan);
        return Triple{plan.extra_laps, plan.unbalanced, plan.sticks};
    };
    CHECK(first(Prefer::looks) == Triple{0, 0, 4});
    CHECK(first(Prefer::laps) == Triple{0, 0, 4});
    CHECK(first(Prefer::sticks) == Triple{0, 2, 3});
}

TEST_CASE("No edges, an edge too long for any run, or sticks too short to divide are no crash") {
    CHECK(choices({}, Prefer::sticks).size() <= 1);
    JointJob job = job_of({inches(160)}, Looks::free);
    job.edges[0].rule.lap = inches(120);
    for (const JointPlan& plan : choices(job, Prefer::sticks)) {
        CHECK(!plan.proved);
    }
}

TEST_CASE("A choice with no steps to spend is sound and says whether it is proved") {
    const JointJob job = job_of({inches(160), inches(212), inches(305), inches(98)}, Looks::free);
    for (const JointPlan& plan : choices(job, Prefer::sticks, {0, {}})) {
        check_plan(job, plan);
    }
}

TEST_CASE("Offcuts on hand are used and never make a bound too high") {
    JointJob job = job_of({inches(160), inches(160)}, Looks::free);
    job.stock.push_back({inches(60), 2, true});
    // By hand: balanced, 87 and 81 each take a separate stick and no 60 holds one; run out, a full
    // stick each and the remainder of 48 from an offcut.
    std::set<Triple> found;
    for (const JointPlan& plan : choices(job, Prefer::sticks)) {
        check_plan(job, plan);
        CHECK(plan.proved);
        found.insert({plan.extra_laps, plan.unbalanced, plan.sticks});
    }
    CHECK(found == std::set<Triple>{{0, 0, 4}, {0, 1, 3}, {0, 2, 2}});
    CHECK(plan_joint(job, Prefer::sticks).sticks == 2);
}

TEST_CASE("Two lengths of new stock and offcuts on hand are proved on the grid of a real roof") {
    std::mt19937 random(12);
    JointJob job;
    job.stock = {{inches(120), std::nullopt, false},
                 {inches(144), std::nullopt, false},
                 {inches(70), 2, true},
                 {inches(50), 3, true}};
    for (int e = 0; e < 8; ++e) {
        const Length edge = sixteenths(48 * 16 + static_cast<std::int64_t>(random() % (336 * 16)));
        const RunRule rule{edge,      inches(1),  inches(1),    inches(144),
                           inches(6), inches(24), sixteenths(1)};
        job.edges.push_back({rule, Looks::free, {}});
    }
    const JointPlan plan = plan_joint(job, Prefer::sticks, {40'000'000, {}});
    check_plan(job, plan);
    CHECK(plan.proved);
    CHECK(!plan.parts.empty());
}

// Unequal allowances at the ends, slivers that keep an end away from the middle: every first cut
// tried.
TEST_CASE("An edge that cannot be balanced is divided as near to it as any division comes") {
    std::mt19937 random(12);
    const auto between = [&](int low, int high) {
        return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
    };
    int cannot = 0, at_sliver = 0;
    for (int round = 0; round < 4000; ++round) {
        const int stick = between(12, 40);
        const RunRule rule{sixteenths(between(4, 3 * stick)),
                           sixteenths(between(0, 9)),
                           sixteenths(between(0, 9)),
                           sixteenths(stick),
                           sixteenths(between(0, stick / 3)),
                           sixteenths(between(0, stick / 2)),
                           sixteenths(1)};
        const auto pieces = static_cast<std::size_t>(joint_checker::edge_of(rule).fewest);
        const auto nearest = joint_checker::nearest_covers(rule, pieces);
        if (nearest.empty() || joint_checker::can_balance(rule, pieces)) {
            continue;
        }
        ++cannot;
        CAPTURE(round);
        std::set<std::vector<std::int64_t>> menu;
        for (const EdgeOption& option : divisions_menu(rule)) {
            std::vector<std::int64_t> covers;
            for (const Division& piece : option.pieces) {
                covers.push_back(piece.covers.nm());
            }
            menu.insert(covers);
        }
        for (const auto& covers : nearest) {
            CHECK(menu.count(covers) == 1);
            const std::int64_t last = covers.back() + rule.allowance_last.nm();
            at_sliver += last == rule.sliver.nm() ? 1 : 0;
        }
    }
    MESSAGE(cannot << " edges that cannot be balanced, " << at_sliver << " with a last sliver");
    CHECK(cannot > 100);
    CHECK(at_sliver > 10);
}

TEST_CASE(
    "Of hand-made plans looks take the balanced, laps the fewer laps, sticks the fewer sticks") {
    const auto plan = [](std::int64_t laps, std::int64_t unbalanced, std::int64_t sticks) {
        JointPlan made;
        made.extra_laps = laps;
        made.unbalanced = unbalanced;
        made.sticks = sticks;
        return made;
    };
    std::vector<JointPlan> plans{plan(0, 2, 5), plan(1, 0, 6), plan(2, 1, 4)};
    CHECK(first_choice(plans, Prefer::laps) == &plans[0]);
    CHECK(first_choice(plans, Prefer::looks) == &plans[1]);
    CHECK(first_choice(plans, Prefer::sticks) == &plans[2]);
    // A plan that leaves a piece uncut is none while another cuts all, however good it looks.
    plans.push_back(plan(0, 0, 1));
    plans.back().cutting.missing = {{inches(100), 1}};
    CHECK(first_choice(plans, Prefer::sticks) == &plans[2]);
    CHECK(first_choice({}, Prefer::looks) == nullptr);
}

TEST_CASE("A plan that leaves pieces uncut does not stand in for the proof of one that cuts all") {
    // By hand: balanced pieces of 87 and 81 fit no 60, and there are two sticks of 120. Run out,
    // each edge takes one of 120 and one of 60, four in all; of 336 in two and one hold only 300.
    JointJob job = job_of({inches(160), inches(160)}, Looks::free);
    job.stock = {{inches(120), 2, false}, {inches(60), 5, false}};
    const JointPlan plan = plan_joint(job, Prefer::sticks);
    check_plan(job, plan);
    CHECK(plan.cutting.missing.empty());
    CHECK(plan.sticks == 4);
    CHECK(plan.lower_bound == 4);
    CHECK(plan.proved);
}

TEST_CASE("A piece that is cut takes no more of any stick") {
    // By hand: balanced, each edge is 87 and 81, and no two of these share a stick. One 87 is cut.
    JointJob job = job_of({inches(160), inches(160)}, Looks::balanced);
    CHECK(plan_joint(job, Prefer::looks).sticks == 4);
    job.edges[0].keeps = plan_joint(job, Prefer::looks).divisions[0].pieces;
    job.edges[0].cut = {job.edges[0].keeps[0].cut, std::nullopt};
    const JointPlan plan = plan_joint(job, Prefer::looks);
    CHECK(plan.job.demand.size() == 3);
    CHECK(plan.sticks == 3);
    CHECK(plan.proved);
}

TEST_CASE("The laps of an edge under way are in its pieces, and are metal once") {
    // By hand: three pieces of 60, 60 and 54 where two would do, and 66 in one piece: 240 in, which
    // is two sticks to the end. Once the lap was counted again, and the bound was three.
    JointJob job = job_of({inches(160), inches(64)}, Looks::free);
    job.edges[0].keeps = {
        {inches(60), inches(53)}, {inches(60), inches(54)}, {inches(54), inches(53)}};
    const JointPlan plan = plan_joint(job, Prefer::looks);
    CHECK(plan.extra_laps == 1);
    CHECK(plan.sticks == 2);
    CHECK(plan.lower_bound == 2);
    CHECK(plan.proved);
}
