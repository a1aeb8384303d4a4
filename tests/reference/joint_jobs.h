// Invented small roofs whose every division can be written down: sticks of 30 grid units or so.
#pragma once

#include <random>

#include "engine/plan/choices.h"

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

}  // namespace reference
