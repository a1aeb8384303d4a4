// Checks a joint plan from its edges up, sharing no code with the planner: coverage, laps, limits,
// balance, layouts, and that every job its bound rests on asks no more than any permitted plan
// must.
#pragma once

#include <algorithm>
#include <map>
#include <string>
#include <vector>

#include "engine/joint/joint.h"
#include "tests/engine/cutting/cutting_checker.h"
#include "tests/engine/joint/joint_worth_checker.h"

namespace joint_checker {

/// Empty when the divisions are permitted and their laps and unbalanced edges are counted right.
inline std::string wrong_divisions(const hemline::JointJob& job, const hemline::JointPlan& plan) {
    if (plan.divisions.size() != job.edges.size()) {
        return "not one division for each edge";
    }
    Int laps = 0, unbalanced = 0;
    std::multimap<Int, bool> cuts;
    for (std::size_t e = 0; e < job.edges.size(); ++e) {
        const hemline::RunRule& rule = job.edges[e].rule;
        const auto& pieces = plan.divisions[e].pieces;
        std::vector<Int> covers;
        for (const auto& piece : pieces) {
            covers.push_back(piece.covers.nm());
            if (piece.cut.nm() !=
                piece.covers.nm() + extra_of(rule, covers.size() - 1, pieces.size())) {
                return "a cut that is not cover, lap and allowance";
            }
            cuts.emplace(piece.cut.nm(), true);
        }
        if (covers.empty() || !lawful(rule, covers)) {
            return "a division that is not lawful";
        }
        const bool even = balanced(rule, covers);
        const bool counts = !even && can_balance(rule, covers.size());
        if (counts && job.edges[e].looks != hemline::Looks::free) {
            return "an edge that must be balanced is not";
        }
        laps += static_cast<Int>(covers.size()) - edge_of(rule).fewest;
        unbalanced += counts ? 1 : 0;
    }
    if (laps != plan.extra_laps || unbalanced != plan.unbalanced) {
        return "laps or unbalanced edges miscounted";
    }
    for (const auto& demand : plan.job.demand) {
        for (Int n = 0; n < demand.count; ++n) {
            const auto cut = cuts.find(demand.length.nm());
            if (cut == cuts.end()) {
                return "a piece that no edge needs";
            }
            cuts.erase(cut);
        }
    }
    if (!cuts.empty()) {
        return "a piece that is not cut from anything";
    }
    if (plan.sticks != plan.cutting.sticks || plan.sticks < plan.lower_bound ||
        plan.proved != (plan.sticks == plan.lower_bound)) {
        return "count, bound and proof do not agree";
    }
    return cutting_checker::wrong_layouts(plan.job, plan.cutting);
}

/// Empty when lower_bound is proved by its jobs: each bounds by its certificate, and lower_bound is
/// the least of them, or the total metal.
inline std::string wrong_certificates(const hemline::JointJob& job,
                                      const hemline::JointPlan& plan) {
    if (!plan.parts.empty()) {
        return wrong_parts(job, plan);
    }
    Int least = -1;
    for (const auto& bound : plan.bounds) {
        hemline::CuttingPlan shown;
        shown.certificate = bound.certificate;
        shown.lower_bound = bound.certificate.bound + bound.certificate.refuted;
        std::string wrong = cutting_checker::wrong_bound(bound.relaxed, shown);
        if (!wrong.empty()) {
            return wrong;
        }
        if (bound.sticks != bound.paid + shown.lower_bound) {
            return "sticks paid and bounded do not sum";
        }
        least = least < 0 ? bound.sticks : std::min(least, bound.sticks);
    }
    if (plan.bounds.empty()) {
        Int metal = 0;
        const Int room = job.stock.front().length.nm() + job.kerf.nm();
        for (const auto& own : job.edges) {
            const Edge edge = edge_of(own.rule);
            metal += edge.metal + (edge.fewest - 1) * edge.lap + edge.fewest * job.kerf.nm();
        }
        least = (metal + room - 1) / room;
    }
    return plan.lower_bound > least ? "a bound above what its jobs show" : "";
}

}  // namespace joint_checker
