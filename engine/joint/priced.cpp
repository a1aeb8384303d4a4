// The part of the search that prices divisions and fillings together; works with any stock.
#include <algorithm>

#include "engine/joint/joint_search.h"

namespace hemline {

namespace {

/// Of the steps left, the part (one in so many) that a bound may take, and the part that it may be
/// expected to take where it begins from nothing. Where only the total metal bounds otherwise it
/// may take more; but plans come from other ways too, and those come first.
struct Parts {
    std::int64_t taken, seeming;
};
constexpr Parts with_relaxations{4, 4}, without_relaxations{3, 12};
/// Rounds of pricing when a program begins from nothing.
constexpr std::int64_t rounds_most = 4;
/// The most pieces of a pool: with more there is no room for the divisions that a program finds.
constexpr std::int64_t pieces_priced_most = 10'000;

}  // namespace

/// The edge's option with these cuts, no longer than needed; added where it is new.
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

JointSearch::Priced::Priced(const JointJob& job, JointNeeds own)
    : needs(std::move(own)),
      program(job, needs, lengths_told_apart(needs)),
      lengths(lengths_told_apart(needs).size()) {}

JointSearch::Priced* JointSearch::priced(std::int64_t extra_laps) {
    const auto known = priced_.find(extra_laps);
    if (known != priced_.end()) {
        return known->second.get();
    }
    auto needs = needs_of(job_, ways_, extra_laps);
    if (needs &&
        bytes_of_program(job_, *needs, lengths_told_apart(*needs).size()) > table_bytes_most / 2) {
        no_room_for_.insert(extra_laps);
        needs.reset();
    }
    auto own = needs ? std::make_unique<Priced>(job_, std::move(*needs)) : nullptr;
    return priced_.emplace(extra_laps, std::move(own)).first->second.get();
}

/// About the steps of a solution: the first time several rounds of pricing and a program of so many
/// rows from nothing; after that its columns are known.
std::int64_t JointSearch::steps_of(const Priced& priced) {
    const std::int64_t pricing = steps_of_pricing(priced.needs, priced.lengths);
    const auto rows = static_cast<std::int64_t>(priced.needs.edges.size() + priced.lengths);
    return priced.is_warm ? pricing : rounds_most * pricing + rows * rows * rows / 8;
}

AllowedBound JointSearch::branch(Allowed allowed) {
    AllowedBound none;
    none.is_too_large = pieces_ > pieces_priced_most;
    if (none.is_too_large || !fewest(allowed)) {
        return none;
    }
    Priced* const own = priced(allowed.extra_laps);
    none.is_too_large = no_room_for_.count(allowed.extra_laps) > 0;
    const Parts parts = can_relax_ ? with_relaxations : without_relaxations;
    if (own == nullptr || steps_of(*own) > effort_.left() / parts.seeming) {
        return none;
    }
    own->is_warm = true;
    const auto try_plan = [&](const std::vector<const JointProgram::Division*>& divisions) {
        Chosen chosen;
        for (const JointProgram::Division* division : divisions) {
            chosen.push_back(division == nullptr ? 0 : option_for(*division));
        }
        try_chosen(chosen);
        return *fewest(allowed);
    };
    Effort effort(effort_, effort_.left() / parts.taken);
    JointBranch branch(own->needs, own->program, allowed.extra_laps, allowed.unbalanced, try_plan,
                       effort);
    branch.close_gap(*fewest(allowed));
    return {branch.bound(), "prices of pieces and edges", nullptr, branch.parts()};
}

}  // namespace hemline
