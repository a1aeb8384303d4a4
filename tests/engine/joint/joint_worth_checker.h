// Hands a joint bound by worths to the checks of tests/certificate, which share no code with the
// planner.
#pragma once

#include <algorithm>
#include <string>

#include "tests/certificate/joint_task.h"
#include "tests/engine/joint/joint_edge_checker.h"

namespace joint_checker {

inline certificate::JointEdge certificate_edge(const hemline::JointEdge& edge,
                                               const hemline::EdgeOption& taken) {
    const hemline::RunRule& rule = edge.rule;
    certificate::JointEdge own;
    own.length = rule.edge.nm();
    own.first = rule.allowance_first.nm();
    own.last = rule.allowance_last.nm();
    own.lap = rule.lap.nm();
    own.stick = rule.stock.nm();
    own.sliver = rule.sliver.nm();
    own.grid = rule.grid.nm();
    own.is_free = edge.looks == hemline::Looks::free;
    if (!edge.keeps.empty()) {
        certificate::Taken under_way;
        std::vector<Int> covers;
        for (std::size_t i = 0; i < taken.pieces.size(); ++i) {
            covers.push_back(taken.pieces[i].covers.nm());
            if (i >= edge.cut.size() || !edge.cut[i]) {
                under_way.uncut.push_back(taken.pieces[i].cut.nm());
            }
        }
        under_way.laps = std::max(Int{0}, static_cast<Int>(covers.size()) - edge_of(rule).fewest);
        under_way.unbalanced = !balanced(rule, covers) && can_balance(rule, covers.size());
        own.taken = under_way;
    }
    return own;
}

inline certificate::JointPart certificate_part(const hemline::JointJob& job,
                                               const hemline::JointPart& part) {
    certificate::JointPart own;
    for (std::size_t e = 0; e < part.edges.size(); ++e) {
        const Int grid = e < job.edges.size() ? job.edges[e].rule.grid.nm() : 1;
        certificate::Region region{part.edges[e].classes, {}};
        for (const hemline::LengthRange& range : part.edges[e].ranges) {
            region.ranges.emplace_back((range.least.nm() + grid - 1) / grid,
                                       range.most.nm() / grid);
        }
        own.edges.push_back(region);
    }
    const hemline::JointWorths& worths = part.worths;
    for (const hemline::Length from : worths.from) {
        own.worths.from.push_back(from.nm());
    }
    own.worths.worth = worths.worth;
    own.worths.stick_worth = worths.stick_worth;
    own.worths.lap = worths.lap;
    own.worths.unbalanced = worths.unbalanced;
    own.worths.share = worths.share;
    return own;
}

/// Empty when the parts leave nothing out and each of them bounds by lower_bound.
inline std::string wrong_parts(const hemline::JointJob& job, const hemline::JointPlan& plan) {
    certificate::JointTask task;
    task.kerf = job.kerf.nm();
    for (std::size_t e = 0; e < job.edges.size(); ++e) {
        task.edges.push_back(certificate_edge(job.edges[e], plan.divisions[e]));
    }
    for (const hemline::StockLength& stock : job.stock) {
        task.sticks.push_back({stock.length.nm(), stock.supply, stock.on_hand});
    }
    std::vector<certificate::JointPart> parts;
    for (const hemline::JointPart& part : plan.parts) {
        parts.push_back(certificate_part(job, part));
    }
    return certificate::wrong_parts(task, plan.extra_laps, plan.unbalanced, plan.lower_bound,
                                    parts);
}

}  // namespace joint_checker
