// Invented small roofs whose every division can be written down: sticks of 30 grid units or so.
#pragma once

#include <algorithm>
#include <random>

#include "engine/joint/joint.h"
#include "tests/engine/joint/joint_checker.h"

namespace reference {

enum class Stock { one_length, mixed };

/// 2 to `edges_most` edges of up to four pieces, some that must be balanced. Mixed: kerf, two
/// longer sticks and some offcuts on hand.
inline hemline::JointJob joint_job(std::uint64_t seed, int edges_most, Stock stock) {
    std::mt19937_64 random(seed);
    const auto between = [&](int low, int high) {
        return low + static_cast<int>(random() % static_cast<std::uint64_t>(high - low + 1));
    };
    using hemline::sixteenths;
    const int stick = between(24, 32), lap = between(0, 3), tab = between(0, 1);
    const int sliver = between(2, 8);
    hemline::JointJob job;
    job.stock = {{sixteenths(stick), std::nullopt, false}};
    if (stock == Stock::mixed) {
        job.kerf = sixteenths(between(0, 1));
        job.stock.push_back({sixteenths(stick + between(2, 6)), between(1, 2), false});
        for (int n = between(1, 3); n > 0; --n) {
            job.stock.push_back({sixteenths(between(sliver, stick - 1)), between(1, 2), true});
        }
    }
    const int edges = between(2, edges_most);
    for (int e = 0; e < edges; ++e) {
        const hemline::RunRule rule{sixteenths(between(6, 3 * (stick - lap))),
                                    sixteenths(tab),
                                    sixteenths(tab),
                                    sixteenths(stick),
                                    sixteenths(lap),
                                    sixteenths(sliver),
                                    sixteenths(1)};
        const bool balanced = between(0, 3) == 0;
        job.edges.push_back({rule, balanced ? hemline::Looks::balanced : hemline::Looks::free, {}});
    }
    return job;
}

/// 1 to 4 edges with rules at the ends of their ranges, as sticks of 8, 10 or 12 ft have them in
/// units of 4 in: laps of 0 to 12 in, slivers of 0 to 28 in, unequal ends, pieces as long as the
/// stick, edges alike, kerf, and offcuts on hand. An edge that cannot be balanced may run out:
/// "as near as it can" cannot be stated.
inline hemline::JointJob odd_joint_job(std::uint64_t seed) {
    std::mt19937_64 random(seed);
    const auto between = [&](int low, int high) {
        return low + static_cast<int>(random() % static_cast<std::uint64_t>(high - low + 1));
    };
    const auto units = [](int n) { return hemline::sixteenths(n); };
    const int sticks[] = {24, 30, 36}, laps[] = {0, 1, 2, 3};
    const int stick = sticks[between(0, 2)], lap = laps[between(0, 3)], sliver = between(0, 7);
    hemline::JointJob job;
    job.stock = {{units(stick), std::nullopt, false}};
    job.kerf = units(between(0, 3) == 0 ? 1 : 0);
    for (int n = between(0, 3) == 0 ? between(1, 3) : 0; n > 0; --n) {
        job.stock.push_back({units(between(std::max(sliver, 3), stick)), between(1, 2), true});
    }
    for (int e = between(1, 4); e > 0; --e) {
        const int first = between(0, 1), last = between(0, 1);
        const int pieces = between(1, 3);  // of an edge that full sticks cover, or a little more
        const int full = pieces * stick - (pieces - 1) * lap - first - last;
        const int length = between(0, 2) == 0 ? std::max(2, full + between(-2, 2))
                                              : between(2, 2 * (stick - lap) + 20);
        const hemline::RunRule rule{units(length), units(first),  units(last), units(stick),
                                    units(lap),    units(sliver), units(1)};
        const auto fewest = static_cast<std::size_t>(joint_checker::edge_of(rule).fewest);
        const bool balanced = between(0, 2) == 0 && joint_checker::can_balance(rule, fewest);
        job.edges.push_back({rule, balanced ? hemline::Looks::balanced : hemline::Looks::free, {}});
        if (e > 1 && between(0, 4) == 0) {
            job.edges.push_back(job.edges.back());
            --e;
        }
    }
    return job;
}

}  // namespace reference
