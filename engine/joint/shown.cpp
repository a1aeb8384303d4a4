// Proves a joint bound by parts alone, however the planner found it.
#include <algorithm>

#include "engine/joint/branch.h"

namespace hemline {

namespace {

/// A piece is worth its metal and its kerf: so the bound is the total metal, off by less than a
/// grid step for each edge.
JointPart metal_in_all(const JointJob& job, const JointNeeds& needs, const JointPlan& plan,
                       Effort& effort) {
    JointPart part{all_divisions(needs), {}};
    JointWorths& worths = part.worths;
    for (Length own = needs.grid; own <= needs.stick; own += needs.grid) {
        worths.from.push_back(own);
        worths.worth.push_back((own + job.kerf).nm());
    }
    for (const StockLength& stock : job.stock) {
        worths.stick_worth.push_back((stock.length + job.kerf).nm());
    }
    const LeastWorth least(needs, worths, effort);
    std::int64_t sum = 0;
    for (std::size_t e = 0; e < needs.edges.size(); ++e) {
        if (part.edges[e].classes != 0) {
            sum += cheapest(needs.edges[e], part.edges[e], worths, least, effort).cost;
        }
    }
    settle(job, sum, plan.extra_laps, plan.unbalanced, worths);
    return part;
}

/// Adds lengths to tell apart: those in the divisions that the program found (because a piece
/// between two lengths is worth the shorter and takes the room of the longer), and the lengths that
/// just do not fit beside one of them. False when there are none to add.
bool tell_more_apart(const JointProgram& program, const JointJob& job, const JointNeeds& needs,
                     std::vector<Length>& lengths) {
    const std::vector<Length> known = lengths;
    for (const JointProgram::Division& division : program.divisions()) {
        for (const Length cut : division.cuts) {
            const Length own = round_down_to(cut, needs.grid);
            const Length beside = round_down_to(needs.stick - job.kerf - own, needs.grid);
            if (!std::binary_search(known.begin(), known.end(), own)) {
                lengths.push_back(own);
                if (beside >= needs.sliver) {
                    lengths.push_back(std::min(beside + needs.grid, needs.stick));
                }
            }
        }
    }
    std::sort(lengths.begin(), lengths.end());
    lengths.erase(std::unique(lengths.begin(), lengths.end()), lengths.end());
    return lengths.size() > known.size();
}

}  // namespace

std::vector<JointPart> parts_of_bound(const JointJob& job, const JointPlan& plan,
                                      const CuttingEffort& effort) {
    if (!plan.parts.empty()) {
        return plan.parts;
    }
    const auto needs = needs_of(job, ways_of(job), plan.extra_laps);
    if (!needs) {
        return {};
    }
    Effort own(effort);
    const auto has_room = [&](std::size_t lengths) {
        return bytes_of_program(job, *needs, lengths) <= table_bytes_most / 2;
    };
    const auto every_length = static_cast<std::size_t>(needs->stick.nm() / needs->grid.nm());
    if (has_room(0) && steps_of_pricing(*needs, every_length) < own.left()) {
        JointPart metal = metal_in_all(job, *needs, plan, own);
        if (metal.worths.bound >= plan.lower_bound) {
            return {std::move(metal)};
        }
    }
    const auto no_better = [&](const auto&) { return plan.sticks; };
    const DivisionSets all = all_divisions(*needs);
    const std::vector<std::optional<std::size_t>> none(needs->edges.size());
    std::vector<Length> lengths = lengths_told_apart(*needs);
    for (bool more = true; more && !own.is_spent() && has_room(lengths.size());) {
        JointProgram program(job, *needs, lengths);
        const JointProgram::Answer root =
            program.solve(all, none, plan.extra_laps, plan.unbalanced, plan.lower_bound, own);
        if (root.worths.bound >= plan.lower_bound) {
            return {{all, root.worths}};
        }
        more = tell_more_apart(program, job, *needs, lengths);
        if (more && root.value > static_cast<double>(plan.lower_bound) - 1 + 1e-6) {
            continue;  // the gap comes from lengths not told apart: branching cannot close it
        }
        JointBranch branch(*needs, program, plan.extra_laps, plan.unbalanced, no_better, own);
        branch.close_gap(plan.lower_bound);
        if (branch.bound() >= plan.lower_bound) {
            return branch.parts();
        }
        more = tell_more_apart(program, job, *needs, lengths);
    }
    return {};
}

}  // namespace hemline
