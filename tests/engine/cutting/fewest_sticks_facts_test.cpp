// What docs/cutting.md proves about dividing and cutting together, by trying every way on small
// cases in whole inches: sticks of a few inches, edges up to three sticks long.
#include <doctest/doctest.h>

#include <algorithm>
#include <functional>
#include <random>

#include "engine/cutting/cutting.h"
#include "engine/dividing/run.h"

using namespace hemline;

namespace {

struct Small {
    int stick = 0, lap = 0;
    std::vector<int> edges;  ///< T: the metal of each edge without laps
};

Small small_case(std::mt19937& random, int edges_most, int edge_most) {
    const auto between = [&](int low, int high) {
        return low + static_cast<int>(random() % static_cast<unsigned>(high - low + 1));
    };
    Small small;
    small.stick = between(4, 9);
    small.lap = between(0, 2);
    for (int n = between(1, edges_most); n > 0; --n) {
        small.edges.push_back(between(1, edge_most));
    }
    return small;
}

int pieces_fewest(const Small& small, int edge) {
    RunRule rule;
    rule.edge = inches(edge);
    rule.stock = inches(small.stick);
    rule.lap = inches(small.lap);
    rule.grid = inches(1);
    return static_cast<int>(fewest_pieces(rule));
}

int ceiling(int a, int b) { return (a + b - 1) / b; }

/// Fewest sticks for the pieces by trying each on every stick; `fewest` is never exceeded.
void place(const std::vector<int>& pieces, std::size_t next, std::vector<int>& room, int stick,
           int& fewest) {
    if (static_cast<int>(room.size()) >= fewest) {
        return;
    }
    if (next == pieces.size()) {
        fewest = static_cast<int>(room.size());
        return;
    }
    for (std::size_t i = 0; i < room.size(); ++i) {
        if (room[i] >= pieces[next]) {
            room[i] -= pieces[next];
            place(pieces, next + 1, room, stick, fewest);
            room[i] += pieces[next];
        }
    }
    room.push_back(stick - pieces[next]);
    place(pieces, next + 1, room, stick, fewest);
    room.pop_back();
}

int sticks_of(std::vector<int> pieces, int stick, int fewest) {
    std::sort(pieces.rbegin(), pieces.rend());
    std::vector<int> room;
    place(pieces, 0, room, stick, fewest);
    return fewest;
}

/// Calls `use` with every way to cut `metal` into `count` pieces no longer than `longest`.
void each_way(int metal, int count, int longest, std::vector<int>& pieces,
              const std::function<void()>& use) {
    if (count == 0) {
        if (metal == 0) {
            use();
        }
        return;
    }
    for (int own = std::min(longest, metal - (count - 1)); own >= 1 && own * count >= metal;
         --own) {
        pieces.push_back(own);
        each_way(metal - own, count - 1, own, pieces, use);
        pieces.pop_back();
    }
}

/// Fewest sticks over every division of every edge with up to `extra` laps more than it must have.
int fewest_sticks(const Small& small, int extra, int fewest = 1000) {
    std::vector<int> pieces;
    const std::function<void(std::size_t)> divide = [&](std::size_t edge) {
        if (edge == small.edges.size()) {
            fewest = sticks_of(pieces, small.stick, fewest);
            return;
        }
        const int least = pieces_fewest(small, small.edges[edge]);
        for (int count = least; count <= least + extra; ++count) {
            each_way(small.edges[edge] + (count - 1) * small.lap, count, small.stick, pieces,
                     [&] { divide(edge + 1); });
        }
    };
    divide(0);
    return fewest;
}

/// The least over all ways to join the edges in groups of Σ ⌈(ΣT − lap)/(stick − lap)⌉.
int grouped(const Small& small, std::size_t edge, std::vector<int>& groups) {
    if (edge == small.edges.size()) {
        int sticks = 0;
        for (const int metal : groups) {
            sticks += std::max(1, ceiling(metal - small.lap, small.stick - small.lap));
        }
        return sticks;
    }
    int least = 1000;
    for (std::size_t g = 0; g < groups.size(); ++g) {
        groups[g] += small.edges[edge];
        least = std::min(least, grouped(small, edge + 1, groups));
        groups[g] -= small.edges[edge];
    }
    groups.push_back(small.edges[edge]);
    least = std::min(least, grouped(small, edge + 1, groups));
    groups.pop_back();
    return least;
}

}  // namespace

TEST_CASE("No layout takes fewer sticks than its metal with the laps it must have") {
    std::mt19937 random(1);
    for (int n = 0; n < 150; ++n) {
        const Small small = small_case(random, 3, 14);
        int metal = 0;
        for (const int edge : small.edges) {
            metal += edge + (pieces_fewest(small, edge) - 1) * small.lap;
        }
        CHECK(fewest_sticks(small, 1) >= ceiling(metal, small.stick));
    }
}

TEST_CASE("With the fewest laps, full sticks and one remainder an edge take the fewest sticks") {
    std::mt19937 random(2);
    for (int n = 0; n < 250; ++n) {
        const Small small = small_case(random, 4, 20);
        int full = 0;
        std::vector<int> remainders;
        for (const int edge : small.edges) {
            const int laps = pieces_fewest(small, edge) - 1;
            full += laps;
            remainders.push_back(edge + laps * small.lap - laps * small.stick);
        }
        CHECK(fewest_sticks(small, 0) == full + sticks_of(remainders, small.stick, 1000));
    }
}

TEST_CASE("With extra laps, edges that share sticks take what one edge of all their metal takes") {
    std::mt19937 random(3);
    for (int n = 0; n < 150; ++n) {
        const Small small = small_case(random, 3, 12);
        std::vector<int> groups;
        CHECK(fewest_sticks(small, 2) == grouped(small, 0, groups));
    }
}

TEST_CASE("Once a planned stick is cut, the rest takes one stick fewer and no less") {
    std::mt19937 random(4);
    for (int n = 0; n < 150; ++n) {
        CuttingJob job;
        job.stock = {{inches(120), std::nullopt, false}};
        for (int i = 0; i < 9; ++i) {
            job.demand.push_back({inches(24 + static_cast<int>(random() % 80)), 1});
        }
        const CuttingPlan plan = plan_cutting(job);
        REQUIRE(plan.proved);
        for (const std::size_t cut : plan.layouts.front().cuts) {
            job.demand[cut].count = 0;
        }
        const CuttingPlan rest = plan_cutting(job);
        CHECK(rest.proved);
        CHECK(rest.sticks == plan.sticks - 1);
    }
}
