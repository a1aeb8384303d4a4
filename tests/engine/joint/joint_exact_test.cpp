// Joint plans against every permitted way to divide and cut, on jobs small enough to try them all.
#include <doctest/doctest.h>

#include <functional>
#include <map>
#include <random>
#include <set>

#include "tests/engine/joint/joint_checker.h"
#include "tests/reference/joint_jobs.h"

using namespace hemline;

namespace {

using Ints = std::vector<int>;

/// A job in whole inches: stick, lap and sliver small enough that all divisions are few.
struct Small {
    int stock = 0, lap = 0, sliver = 0, tab = 0;
    Ints edges;
    std::vector<Looks> looks;
    Ints laps = {};  ///< of edges with a chosen lap; empty: of none
};

JointJob job_of(const Small& small) {
    JointJob job;
    job.stock = {{inches(small.stock), std::nullopt, false}};
    for (std::size_t e = 0; e < small.edges.size(); ++e) {
        const int lap = small.laps.empty() ? small.lap : small.laps[e];
        const RunRule rule{inches(small.edges[e]),
                           inches(small.tab),
                           inches(small.tab),
                           inches(small.stock),
                           inches(lap),
                           inches(small.sliver),
                           inches(1)};
        job.edges.push_back({rule, small.looks[e], {}});
    }
    return job;
}

/// One division of an edge: its cuts in rising order, and what it costs.
struct Way {
    Ints cuts;
    int laps = 0, unbalanced = 0;

    bool operator<(const Way& o) const {
        return std::tie(laps, unbalanced, cuts) < std::tie(o.laps, o.unbalanced, o.cuts);
    }
};

/// Every division in whole inches, up to three laps more than the fewest.
std::vector<Way> ways_of(const RunRule& rule, bool free) {
    const auto inch = [](Length l) { return static_cast<int>(l.nm() / inches(1).nm()); };
    const auto fewest = static_cast<int>(joint_checker::edge_of(rule).fewest);
    std::set<Way> all;
    for (int pieces = fewest; pieces <= fewest + 3; ++pieces) {
        const auto count = static_cast<std::size_t>(pieces);
        const bool can = joint_checker::can_balance(rule, count);
        std::vector<std::pair<int, Way>> found;  // how far the ends differ
        std::vector<std::int64_t> covers;
        const std::function<void(int)> divide = [&](int left) {
            const auto extra = [&](std::size_t i) {
                return inch(nanometres(joint_checker::extra_of(rule, i, count)));
            };
            if (covers.size() + 1 < count) {
                for (int own = 1; own < left && own + extra(covers.size()) <= inch(rule.stock);
                     ++own) {
                    covers.push_back(inches(own).nm());
                    divide(left - own);
                    covers.pop_back();
                }
                return;
            }
            covers.push_back(inches(left).nm());
            if (joint_checker::lawful(rule, covers)) {
                Way way{{}, pieces - fewest, 0};
                bool full_between = true;
                for (std::size_t i = 0; i < count; ++i) {
                    way.cuts.push_back(inch(nanometres(covers[i])) + extra(i));
                    full_between = full_between && (i == 0 || i + 1 == count ||
                                                    way.cuts.back() == inch(rule.stock));
                }
                std::sort(way.cuts.begin(), way.cuts.end());
                const bool even = joint_checker::balanced(rule, covers);
                way.unbalanced = can && !even ? 1 : 0;
                const int differ = inch(absolute(nanometres(covers.front() - covers.back())));
                if (free || (can && even)) {
                    all.insert(way);
                } else if (!can && full_between && pieces == fewest) {
                    found.push_back({differ, way});
                }
            }
            covers.pop_back();
        };
        divide(inch(rule.edge));
        // As near as so many pieces can, where they must be balanced and cannot.
        int nearest = 1000;
        for (const auto& [differ, way] : found) {
            nearest = std::min(nearest, differ);
        }
        for (const auto& [differ, way] : found) {
            if (differ == nearest) {
                all.insert(way);
            }
        }
    }
    return {all.begin(), all.end()};
}

/// Fewest sticks for these cuts, by trying every way to place each; remembered.
class FewestSticks {
  public:
    explicit FewestSticks(int stock) : stock_(stock) {}

    int of(Ints cuts) {
        std::sort(cuts.rbegin(), cuts.rend());
        const auto known = known_.find(cuts);
        if (known != known_.end()) {
            return known->second;
        }
        Ints room;
        int fewest = static_cast<int>(cuts.size());
        place(cuts, 0, room, fewest);
        return known_[cuts] = fewest;
    }

  private:
    void place(const Ints& cuts, std::size_t next, Ints& room, int& fewest) const {
        if (static_cast<int>(room.size()) >= fewest) {
            return;
        }
        if (next == cuts.size()) {
            fewest = static_cast<int>(room.size());
            return;
        }
        for (std::size_t i = 0; i < room.size(); ++i) {
            if (room[i] >= cuts[next]) {
                room[i] -= cuts[next];
                place(cuts, next + 1, room, fewest);
                room[i] += cuts[next];
            }
        }
        room.push_back(stock_ - cuts[next]);
        place(cuts, next + 1, room, fewest);
        room.pop_back();
    }

    int stock_;
    std::map<Ints, int> known_;
};

using Costs = std::map<std::pair<int, int>, int>;  // laps and unbalanced edges -> fewest sticks

/// The fewest sticks for every exact number of laps and unbalanced edges.
Costs every_way(const JointJob& job, int stock) {
    std::vector<std::vector<Way>> ways;
    for (const JointEdge& edge : job.edges) {
        ways.push_back(ways_of(edge.rule, edge.looks == Looks::free));
    }
    FewestSticks fewest(stock);
    Costs costs;
    const std::function<void(std::size_t, Ints, int, int)> choose = [&](std::size_t e, Ints cuts,
                                                                        int laps, int unbalanced) {
        if (e == ways.size()) {
            int metal = 0;
            for (const int cut : cuts) {
                metal += cut;
            }
            const auto known = costs.find({laps, unbalanced});
            if (known == costs.end() || (metal + stock - 1) / stock < known->second) {
                const int sticks = fewest.of(cuts);
                costs[{laps, unbalanced}] =
                    known == costs.end() ? sticks : std::min(known->second, sticks);
            }
            return;
        }
        for (const Way& way : ways[e]) {
            Ints more = cuts;
            more.insert(more.end(), way.cuts.begin(), way.cuts.end());
            choose(e + 1, std::move(more), laps + way.laps, unbalanced + way.unbalanced);
        }
    };
    choose(0, {}, 0, 0);
    return costs;
}

int least_within(const Costs& costs, std::int64_t laps, std::int64_t unbalanced) {
    int least = 1000;
    for (const auto& [cost, sticks] : costs) {
        if (cost.first <= laps && cost.second <= unbalanced) {
            least = std::min(least, sticks);
        }
    }
    return least;
}

Small random_small(std::mt19937& random) {
    const auto between = [&](int a, int b) {
        return a + static_cast<int>(random() % static_cast<unsigned>(b - a + 1));
    };
    Small small;
    small.stock = between(9, 12);
    small.lap = between(1, 2);
    small.sliver = between(0, 1) == 0 ? 1 : 3;
    small.tab = between(0, 1);
    const int edges = between(1, 3);
    for (int e = 0; e < edges; ++e) {
        small.edges.push_back(between(3, edges == 3 ? 16 : 26));
        small.looks.push_back(between(0, 2) == 0 ? Looks::balanced : Looks::free);
    }
    return small;
}

}  // namespace

namespace {

struct Tally {
    int plans = 0, proved = 0, best = 0;
};

/// The choices of the job against every way tried: no bound above, and no count below.
void check_choices(const Small& small, Tally& tally) {
    const JointJob job = job_of(small);
    const Costs costs = every_way(job, small.stock);
    for (const JointPlan& plan : choices(job, Prefer::sticks)) {
        if (!plan.cutting.missing.empty() ||
            std::any_of(plan.divisions.begin(), plan.divisions.end(),
                        [](const EdgeOption& o) { return o.pieces.empty(); })) {
            continue;
        }
        CAPTURE(plan.extra_laps);
        CAPTURE(plan.unbalanced);
        CHECK(joint_checker::wrong_divisions(job, plan) == "");
        CHECK(joint_checker::wrong_certificates(job, plan) == "");
        const int least = least_within(costs, plan.extra_laps, plan.unbalanced);
        CHECK(plan.lower_bound <= least);
        CHECK(plan.sticks >= least);
        ++tally.plans;
        tally.proved += plan.proved ? 1 : 0;
        tally.best += plan.sticks == least ? 1 : 0;
    }
}

}  // namespace

TEST_CASE("No bound is above, and no count below, what every way tried finds" *
          doctest::test_suite("large")) {
    std::mt19937 random(3);
    Tally tally;
    for (int round = 0; round < 400; ++round) {
        CAPTURE(round);
        check_choices(random_small(random), tally);
    }
    MESSAGE(tally.plans << " plans: " << tally.proved << " proved, " << tally.best << " fewest");
    CHECK(tally.proved == tally.plans);
    CHECK(tally.best == tally.plans);
}

TEST_CASE("Nor is it where edges that share sticks have laps of their own" *
          doctest::test_suite("large")) {
    std::mt19937 random(5);
    Tally tally;
    for (int round = 0; round < 300; ++round) {
        Small small = random_small(random);
        for (std::size_t e = 0; e < small.edges.size(); ++e) {
            small.laps.push_back(1 + static_cast<int>(random() % 3));
        }
        CAPTURE(round);
        check_choices(small, tally);
    }
    MESSAGE(tally.plans << " plans: " << tally.proved << " proved, " << tally.best << " fewest");
    CHECK(tally.proved == tally.plans);
    CHECK(tally.best == tally.plans);
}

TEST_CASE("A joint certificate that claims a stick more, or leaves a part out, is refused") {
    int tampered = 0;
    for (std::uint64_t seed = 1; seed <= 40; ++seed) {
        const JointJob job = reference::joint_job(seed, 8, reference::Stock::mixed);
        for (const JointPlan& plan : choices(job, Prefer::sticks)) {
            if (plan.parts.empty()) {
                continue;
            }
            CAPTURE(seed);
            CHECK(joint_checker::wrong_certificates(job, plan) == "");
            const auto is_refused = [&](const auto& change) {
                JointPlan other = plan;
                change(other);
                return !joint_checker::wrong_certificates(job, other).empty();
            };
            if (plan.proved) {
                CHECK(is_refused([](JointPlan& p) { ++p.lower_bound; }));
            }
            CHECK(is_refused([](JointPlan& p) { p.parts.back().edges.front().classes = 0; }));
            CHECK(is_refused([](JointPlan& p) { --p.parts.back().worths.stick_worth.front(); }));
            CHECK(is_refused([](JointPlan& p) { p.parts.back().worths.share *= 2; }));
            ++tampered;
        }
    }
    MESSAGE(tampered << " certificates of mixed stock tampered with");
    CHECK(tampered >= 20);
}

TEST_CASE("Every bound of a hundred small roofs is shown by parts alone, wherever it came from" *
          doctest::test_suite("large")) {
    int from_elsewhere = 0, not_shown = 0;
    for (std::uint64_t seed = 1; seed <= 100; ++seed) {
        const auto stock = seed % 4 == 0 ? reference::Stock::mixed : reference::Stock::one_length;
        const JointJob job =
            seed % 4 == 1 ? reference::odd_joint_job(seed) : reference::joint_job(seed, 12, stock);
        for (JointPlan& plan : choices(job, Prefer::sticks)) {
            from_elsewhere += plan.parts.empty() ? 1 : 0;
            plan.parts = parts_of_bound(job, plan, {40'000'000, {}});
            not_shown += plan.parts.empty() ? 1 : 0;
            CAPTURE(seed);
            CHECK((plan.parts.empty() || joint_checker::wrong_parts(job, plan) == ""));
        }
    }
    MESSAGE(from_elsewhere << " bounds from elsewhere than parts; not shown: " << not_shown);
    CHECK(from_elsewhere > 100);
    CHECK(not_shown == 0);
}

TEST_CASE(
    "Looks and laps first are even edges at the fewest laps, from as few sticks as there are" *
    doctest::test_suite("large")) {
    std::mt19937 random(4);
    for (int round = 0; round < 200; ++round) {
        const Small small = random_small(random);
        const JointJob job = job_of(small);
        const JointPlan plan = plan_joint(job, Prefer::looks);
        if (!plan.proved) {
            continue;
        }
        CAPTURE(round);
        const Costs costs = every_way(job, small.stock);
        REQUIRE(!costs.empty());
        CHECK(plan.unbalanced == 0);
        CHECK(plan.sticks == least_within(costs, plan.extra_laps, 0));
        CHECK(plan_joint(job, Prefer::laps).sticks == plan.sticks);
    }
}
