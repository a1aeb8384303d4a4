// The part of the search that prices divisions and fillings together, whatever the stock.
#include <algorithm>

#include "engine/plan/joint_search.h"

namespace hemline {

namespace {

/// Branching pays where so many rounds of pricing are a small part of the effort.
constexpr std::int64_t rounds_least = 20, parts_of_the_effort = 8;
/// Where nothing else bounds but the metal, of a larger part.
constexpr std::int64_t parts_without_relaxations = 3;

}  // namespace

/// The edge's option of these cuts, as long as they have to be; added where it is new.
std::size_t JointSearch::option_for(const JointProgram::Division& division) {
    EdgeWays& ways = ways_[division.edge];
    const JointEdge& edge = job_.edges[division.edge];
    const auto has_cuts = [&](const EdgeOption& option) {
        std::vector<Length> cuts;
        for (std::size_t i = 0; i < option.pieces.size(); ++i) {
            if (i >= edge.cut.size() || !edge.cut[i]) {
                cuts.push_back(option.pieces[i].cut);
            }
        }
        std::sort(cuts.begin(), cuts.end());
        return cuts == division.cuts;
    };
    const auto known = std::find_if(ways.options.begin(), ways.options.end(), has_cuts);
    if (known != ways.options.end()) {
        return static_cast<std::size_t>(known - ways.options.begin());
    }
    const RunRule& rule = edge.rule;
    const auto pieces = static_cast<std::int64_t>(division.cuts.size());
    for (EdgeOption& even : balanced_ways(rule, pieces)) {
        if (has_cuts(even)) {
            return add_option(ways, std::move(even));
        }
    }
    std::vector<Length> cuts(division.cuts.rbegin(), division.cuts.rend());
    Length over =
        -(rule.edge + rule.allowance_first + rule.allowance_last) - (pieces - 1) * rule.lap;
    for (const Length cut : cuts) {
        over += cut;
    }
    for (std::size_t i = cuts.size(); i-- > 0;) {
        const Length off = std::min(over, cuts[i] - std::max(rule.sliver, rule.grid));
        cuts[i] -= off;
        over -= off;
    }
    EdgeOption option = option_of_cuts(rule, cuts);
    const bool lawful =
        over == Length() &&
        std::all_of(option.pieces.begin(), option.pieces.end(), [&](const Division& piece) {
            return piece.cut >= rule.sliver && piece.covers > Length() && piece.cut <= rule.stock;
        });
    return lawful ? add_option(ways, std::move(option)) : ways.even.front();
}

AllowedBound JointSearch::branch(Allowed allowed) {
    const auto needs = needs_of(job_, ways_, allowed.extra_laps);
    if (!needs || !fewest(allowed)) {
        return {};
    }
    const auto try_plan = [&](const std::vector<const JointProgram::Division*>& divisions) {
        Chosen chosen;
        for (const JointProgram::Division* own : divisions) {
            chosen.push_back(own == nullptr ? 0 : option_for(*own));
        }
        try_chosen(chosen);
        return *fewest(allowed);
    };
    const std::int64_t parts = can_relax_ ? parts_of_the_effort : parts_without_relaxations;
    Effort own(effort_, effort_.left() / parts);
    std::vector<Length> lengths = lengths_told_apart(*needs);
    if (rounds_least * steps_of_pricing(*needs, lengths.size()) > own.left()) {
        return {};
    }
    JointBranch branch(job_, *needs, std::move(lengths), allowed.extra_laps, allowed.unbalanced,
                       try_plan, own);
    branch.close_gap(*fewest(allowed));
    return {branch.bound(), "prices of pieces and edges", {}, branch.parts()};
}

}  // namespace hemline
