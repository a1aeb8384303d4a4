#include "engine/joint/relax.h"

#include <algorithm>

namespace hemline {

namespace {

void add_piece(Relaxed& relaxed, Length length, std::size_t edge, bool is_rest) {
    relaxed.job.demand.push_back({length, 1});
    relaxed.from.push_back({edge, is_rest});
}

/// Piece by piece the shortest among the options that differ only in which end is longer.
void add_even(Relaxed& relaxed, const JointJob& job, const EdgeWays& ways, std::size_t edge,
              const std::vector<std::size_t>& options) {
    const std::size_t pieces = ways.options[options.front()].pieces.size();
    const auto& cut = job.edges[edge].cut;
    for (std::size_t i = 0; i < pieces; ++i) {
        Length shortest = ways.options[options.front()].pieces[i].cut;
        for (const std::size_t option : options) {
            shortest = std::min(shortest, ways.options[option].pieces[i].cut);
        }
        if (i >= cut.size() || !cut[i]) {
            add_piece(relaxed, shortest, edge, false);
        }
    }
}

std::int64_t ceiling(std::int64_t a, std::int64_t b) { return a <= 0 ? 0 : (a + b - 1) / b; }

void share_out(std::int64_t laps, std::int64_t laps_most, std::vector<std::int64_t>& groups,
               std::vector<std::vector<std::int64_t>>& all) {
    if (laps == 0) {
        all.push_back(groups);
        return;
    }
    for (std::int64_t own = std::min(laps, laps_most); own > 0; --own) {
        groups.push_back(own + 1);
        share_out(laps - own, own, groups, all);
        groups.pop_back();
    }
}

}  // namespace

bool can_relax(const JointJob& job, const std::vector<EdgeWays>& ways) {
    if (job.stock.size() != 1 || job.stock.front().supply || job.stock.front().on_hand) {
        return false;
    }
    for (std::size_t e = 0; e < ways.size(); ++e) {
        const RunRule& rule = job.edges[e].rule;
        const bool alike = rule.stock == job.stock.front().length &&
                           rule.lap == job.edges.front().rule.lap && !ways[e].options.empty();
        if (!alike || (ways[e].is_fixed && ways[e].is_free)) {
            return false;
        }
    }
    return true;
}

Relaxed relax(const JointJob& job, const std::vector<EdgeWays>& ways, const Relaxation& relaxation,
              std::int64_t steps, Effort& effort) {
    Relaxed relaxed;
    relaxed.of = relaxation;
    relaxed.job.stock = job.stock;
    relaxed.job.kerf = job.kerf;
    for (std::size_t e = 0; e < ways.size(); ++e) {
        const EdgeWays& own = ways[e];
        if (own.options.empty()) {
            continue;
        }
        if (relaxation.ask[e] != Ask::anything || own.is_fixed) {
            add_even(relaxed, job, own, e,
                     relaxation.ask[e] == Ask::even_more ? own.even_more : own.even);
            continue;
        }
        for (std::int64_t i = 0; i < own.fulls; ++i) {
            add_piece(relaxed, job.edges[e].rule.stock, e, false);
        }
        add_piece(relaxed, own.rest, e, true);
    }
    // A size is a length and one kerf, so each extra lap also costs an extra kerf.
    for (const std::int64_t sticks : relaxation.groups) {
        const RunRule& rule = job.edges.front().rule;
        const Length joined = sticks * rule.stock - (sticks - 1) * rule.lap;
        relaxed.job.stock.push_back({joined, 1, true});
        relaxed.bound.paid += sticks;
    }
    relaxed.plan = cut_within(relaxed.job, steps, effort);
    relaxed.bound.relaxed = relaxed.job;
    relaxed.bound.certificate = relaxed.plan.certificate;
    relaxed.bound.sticks = relaxed.plan.lower_bound + relaxed.bound.paid;
    return relaxed;
}

std::vector<std::vector<std::int64_t>> groups_of(std::int64_t laps) {
    std::vector<std::vector<std::int64_t>> all;
    std::vector<std::int64_t> groups;
    share_out(laps, laps, groups, all);
    return all;
}

std::int64_t metal_bound(const JointJob& job, const std::vector<EdgeWays>& ways,
                         std::int64_t extra_laps) {
    std::int64_t metal = 0, on_hand = 0, longest = 1, laps_more = extra_laps;
    std::optional<std::int64_t> lap;
    for (std::size_t e = 0; e < ways.size(); ++e) {
        if (ways[e].options.empty()) {
            continue;
        }
        const RunRule& rule = job.edges[e].rule;
        if (ways[e].is_fixed) {
            laps_more -= ways[e].options.front().extra_laps;  // its pieces hold them
            const auto& cut = job.edges[e].cut;
            const auto& pieces = ways[e].options.front().pieces;
            for (std::size_t i = 0; i < pieces.size(); ++i) {
                metal += i < cut.size() && cut[i] ? 0 : (pieces[i].cut + job.kerf).nm();
            }
            continue;
        }
        metal += (ways[e].fulls * (rule.stock + job.kerf) + ways[e].rest + job.kerf).nm();
        lap = std::min(lap.value_or(rule.lap.nm()), rule.lap.nm());
    }
    metal += laps_more * (lap.value_or(0) + job.kerf.nm());
    for (const StockLength& stock : job.stock) {
        const std::int64_t room = (stock.length + job.kerf).nm();
        if (stock.on_hand) {
            // No plan takes more sticks than there can be pieces.
            on_hand += std::min(stock.supply.value_or(cut_pieces_most), cut_pieces_most) * room;
            if (on_hand >= metal) {
                return 0;
            }
        } else {
            longest = std::max(longest, room);
        }
    }
    return ceiling(metal - on_hand, longest);
}

}  // namespace hemline
