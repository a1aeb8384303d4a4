#include "engine/joint/gaps.h"

#include <algorithm>

#include "engine/dividing/piece_bounds.h"
#include "engine/joint/ways.h"

namespace hemline {

namespace {

/// What the other edges leave: room on their sticks, and new sticks that no other edge needs.
struct Left {
    std::vector<Length> gaps;
    std::int64_t new_sticks = 0;
};

/// `pieces`: the most gaps wanted on sticks that nothing is cut from.
Left left_by_others(const JointJob& job, const JointPlan& plan, std::size_t edge,
                    std::int64_t pieces) {
    std::size_t first = 0;
    const auto uncut = [&](std::size_t e) {
        const auto& cut = job.edges[e].cut;
        const auto is_cut = [](const auto& own) { return own.has_value(); };
        return plan.divisions[e].pieces.size() -
               static_cast<std::size_t>(std::count_if(cut.begin(), cut.end(), is_cut));
    };
    for (std::size_t e = 0; e < edge; ++e) {
        first += uncut(e);
    }
    const std::size_t end = first + uncut(edge);
    Left left;
    std::vector<std::int64_t> used(plan.job.stock.size(), 0);
    for (const Layout& layout : plan.cutting.layouts) {
        const StockLength& stock = plan.job.stock[layout.stock];
        used[layout.stock] += layout.times;
        Length gap = stock.length;
        bool is_shared = stock.on_hand;
        for (const std::size_t cut : layout.cuts) {
            if (cut < first || cut >= end) {
                gap -= plan.job.demand[cut].length + job.kerf;
                is_shared = true;
            }
        }
        if (is_shared) {
            left.gaps.push_back(gap);
        } else {
            ++left.new_sticks;
        }
    }
    std::vector<std::pair<Length, std::int64_t>> whole;
    for (std::size_t k = 0; k < used.size(); ++k) {
        const StockLength& stock = plan.job.stock[k];
        const std::int64_t there_are = std::min(stock.supply.value_or(pieces_most), pieces_most);
        if (stock.on_hand && there_are > used[k]) {
            whole.emplace_back(stock.length, there_are - used[k]);
        }
    }
    std::sort(whole.rbegin(), whole.rend());
    for (const auto& [length, there_are] : whole) {
        const std::int64_t taken = std::min(there_are, pieces);
        left.gaps.insert(left.gaps.end(), static_cast<std::size_t>(taken), length);
        pieces -= taken;
    }
    return left;
}

}  // namespace

std::optional<EdgeOption> divide_by_gaps(const JointJob& job, const JointPlan& plan,
                                         std::size_t edge, std::int64_t pieces) {
    const RunRule& rule = job.edges[edge].rule;
    if (pieces < 2) {
        return std::nullopt;
    }
    const Left left = left_by_others(job, plan, edge, pieces);
    if (left.new_sticks == 0) {
        return std::nullopt;
    }
    std::vector<Length> cuts(static_cast<std::size_t>(left.new_sticks - 1), rule.stock);
    for (const Length gap : left.gaps) {
        cuts.push_back(round_down_to(std::min(gap, rule.stock), rule.grid));
    }
    std::sort(cuts.rbegin(), cuts.rend());
    if (static_cast<std::int64_t>(cuts.size()) < pieces) {
        return std::nullopt;
    }
    cuts.resize(static_cast<std::size_t>(pieces));
    const Length needed =
        rule.edge + rule.allowance_first + rule.allowance_last + (pieces - 1) * rule.lap;
    Length over = Length() - needed;
    for (const Length cut : cuts) {
        over += cut;
    }
    // The excess comes off the longest piece first, never down to a sliver.
    for (Length& cut : cuts) {
        const Length off = std::min(over, cut - std::max(rule.sliver, rule.grid));
        if (off > Length()) {
            cut -= off;
            over -= off;
        }
    }
    if (over != Length()) {
        return std::nullopt;
    }
    EdgeOption option = option_of_cuts(rule, cuts);
    const bool lawful =
        std::all_of(option.pieces.begin(), option.pieces.end(), [&](const Division& piece) {
            return piece.cut >= rule.sliver && piece.covers > Length() && piece.cut <= rule.stock;
        });
    return lawful ? std::optional(std::move(option)) : std::nullopt;
}

}  // namespace hemline
