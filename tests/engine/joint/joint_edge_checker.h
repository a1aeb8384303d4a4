// What is permitted and what is balanced on an edge, sharing no code with the planner.
#pragma once

#include <algorithm>
#include <cstdint>
#include <vector>

#include "engine/joint/joint.h"

namespace joint_checker {

using Int = std::int64_t;
constexpr Int sixteenth = 1'587'500;

/// Metal of an edge, fewest pieces, and what is left of it besides full sticks.
struct Edge {
    Int metal, lap, stock, fewest, rest;
};

inline Edge edge_of(const hemline::RunRule& rule) {
    Edge edge{};
    edge.metal = (rule.edge + rule.allowance_first + rule.allowance_last).nm();
    edge.lap = rule.lap.nm();
    edge.stock = rule.stock.nm();
    for (edge.fewest = 1; edge.metal + (edge.fewest - 1) * edge.lap > edge.fewest * edge.stock;) {
        ++edge.fewest;
    }
    edge.rest = edge.metal + (edge.fewest - 1) * (edge.lap - edge.stock);
    return edge;
}

/// Visible ends alike to a sixteenth, whole sticks between.
inline bool balanced(const hemline::RunRule& rule, const std::vector<Int>& covers) {
    const Int full = rule.stock.nm() - rule.lap.nm();
    for (std::size_t i = 1; i + 1 < covers.size(); ++i) {
        if (covers[i] != full) {
            return false;
        }
    }
    return std::abs(covers.front() - covers.back()) <= sixteenth;
}

/// What the cut of a piece adds to what it covers.
inline Int extra_of(const hemline::RunRule& rule, std::size_t i, std::size_t pieces) {
    return (i == 0 ? rule.allowance_first.nm() : 0) +
           (i + 1 == pieces ? rule.allowance_last.nm() : rule.lap.nm());
}

inline bool lawful(const hemline::RunRule& rule, const std::vector<Int>& covers) {
    Int sum = 0;
    for (std::size_t i = 0; i < covers.size(); ++i) {
        const Int cut = covers[i] + extra_of(rule, i, covers.size());
        sum += covers[i];
        if (covers[i] <= 0 || cut > rule.stock.nm() ||
            (covers.size() > 1 && cut < rule.sliver.nm())) {
            return false;
        }
    }
    return sum == rule.edge.nm();
}

/// Every permitted division with whole sticks between ends, its first cut on the grid or a whole
/// stick.
inline std::vector<std::vector<Int>> covers_with_full_between(const hemline::RunRule& rule,
                                                              std::size_t pieces) {
    std::vector<std::vector<Int>> all;
    if (pieces == 1) {
        all.push_back({rule.edge.nm()});
    } else {
        const Int full = rule.stock.nm() - rule.lap.nm(), grid = rule.grid.nm();
        std::vector<Int> firsts{rule.stock.nm()};
        for (Int cut = grid; cut < rule.stock.nm(); cut += grid) {
            firsts.push_back(cut);
        }
        for (const Int cut : firsts) {
            std::vector<Int> covers(pieces, full);
            covers.front() = cut - extra_of(rule, 0, pieces);
            covers.back() = rule.edge.nm() - static_cast<Int>(pieces - 2) * full - covers.front();
            all.push_back(covers);
        }
    }
    all.erase(std::remove_if(all.begin(), all.end(),
                             [&](const auto& covers) { return !lawful(rule, covers); }),
              all.end());
    return all;
}

inline std::vector<std::vector<Int>> balanced_covers(const hemline::RunRule& rule,
                                                     std::size_t pieces) {
    auto all = covers_with_full_between(rule, pieces);
    all.erase(std::remove_if(all.begin(), all.end(),
                             [&](const auto& covers) { return !balanced(rule, covers); }),
              all.end());
    return all;
}

inline bool can_balance(const hemline::RunRule& rule, std::size_t pieces) {
    return !balanced_covers(rule, pieces).empty();
}

/// As near to balanced as so many pieces can be.
inline std::vector<std::vector<Int>> nearest_covers(const hemline::RunRule& rule,
                                                    std::size_t pieces) {
    const auto differ = [](const auto& covers) { return std::abs(covers.front() - covers.back()); };
    auto all = covers_with_full_between(rule, pieces);
    Int least = -1;
    for (const auto& covers : all) {
        least = least < 0 ? differ(covers) : std::min(least, differ(covers));
    }
    all.erase(std::remove_if(all.begin(), all.end(),
                             [&](const auto& covers) { return differ(covers) > least; }),
              all.end());
    return all;
}

}  // namespace joint_checker
