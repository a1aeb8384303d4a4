// Checks a cutting plan and its certificate in exact integers, sharing no code with the planner.
#pragma once

#include <algorithm>
#include <map>
#include <string>
#include <vector>

#include "engine/plan/cutting.h"

namespace cutting_checker {

using Int = std::int64_t;

/// The most worth of pieces that fit `room` nanometres, each piece taking its length and one kerf.
inline Int most_worth(const hemline::CuttingJob& job, const std::vector<Int>& worth, Int room) {
    std::map<Int, Int> best{{0, 0}};  // room used, worth
    for (std::size_t i = 0; i < job.demand.size(); ++i) {
        const Int size = job.demand[i].length.nm() + job.kerf.nm();
        for (Int n = 0; n < std::min(job.demand[i].count, room / size) && worth[i] > 0; ++n) {
            std::map<Int, Int> more = best;
            for (const auto& [used, held] : best) {
                if (used + size <= room) {
                    Int& slot = more[used + size];
                    slot = std::max(slot, held + worth[i]);
                }
            }
            // Using more room for no more worth is never needed.
            Int held_most = -1;
            for (auto it = more.begin(); it != more.end();) {
                it = it->second <= held_most ? more.erase(it) : (held_most = it->second, ++it);
            }
            if (more == best) {
                break;
            }
            best = std::move(more);
        }
    }
    return best.rbegin()->second;
}

/// Empty when nothing is wrong with the layouts, else what is.
inline std::string wrong_layouts(const hemline::CuttingJob& job, const hemline::CuttingPlan& plan) {
    std::vector<Int> made(job.demand.size(), 0), used(job.stock.size(), 0);
    Int fresh = 0;
    for (const auto& layout : plan.layouts) {
        if (layout.times < 1 || layout.stock >= job.stock.size() || layout.cuts.empty()) {
            return "a layout of nothing";
        }
        Int length = 0;
        for (const std::size_t i : layout.cuts) {
            if (i >= job.demand.size()) {
                return "a cut of nothing";
            }
            made[i] += layout.times;
            length += job.demand[i].length.nm() + job.kerf.nm();
        }
        if (length > job.stock[layout.stock].length.nm() + job.kerf.nm()) {
            return "a stick holds more than its length";
        }
        used[layout.stock] += layout.times;
        fresh += job.stock[layout.stock].on_hand ? 0 : layout.times;
    }
    for (std::size_t k = 0; k < job.stock.size(); ++k) {
        if (job.stock[k].supply && used[k] > *job.stock[k].supply) {
            return "more sticks than there are";
        }
    }
    std::map<Int, Int> wanted, given;
    for (std::size_t i = 0; i < job.demand.size(); ++i) {
        if (made[i] > job.demand[i].count) {
            return "a piece cut twice";
        }
        wanted[job.demand[i].length.nm()] += job.demand[i].count;
        given[job.demand[i].length.nm()] += made[i];
    }
    for (const auto& missing : plan.missing) {
        given[missing.length.nm()] += missing.count;
    }
    if (wanted != given) {
        return "a piece neither cut nor missing";
    }
    if (fresh != plan.sticks) {
        return "sticks miscounted";
    }
    if (plan.proved != (plan.missing.empty() && plan.sticks == plan.lower_bound)) {
        return "proved, or not, against its own figures";
    }
    return plan.missing.empty() && plan.sticks < plan.lower_bound ? "fewer than the bound" : "";
}

/// Empty when these worths do bound the new sticks for `job` by `bound`, else what is wrong.
inline std::string wrong_worths(const hemline::CuttingJob& job,
                                const hemline::Certificate& certificate, Int bound) {
    if (certificate.worth.size() != job.demand.size() ||
        certificate.stick_worth.size() != job.stock.size() || certificate.share < 1) {
        return "not a certificate of this job";
    }
    Int pieces = 0, sum = 0;
    for (std::size_t i = 0; i < job.demand.size(); ++i) {
        if (certificate.worth[i] < 0) {
            return "a worth below 0";
        }
        pieces += job.demand[i].count;
        sum += certificate.worth[i] * job.demand[i].count;
    }
    for (std::size_t k = 0; k < job.stock.size(); ++k) {
        if (job.stock[k].supply.value_or(1) < 1) {
            continue;
        }
        const Int room = job.stock[k].length.nm() + job.kerf.nm();
        if (most_worth(job, certificate.worth, room) > certificate.stick_worth[k]) {
            return "a stick can hold more than is said";
        }
        const Int over =
            certificate.stick_worth[k] - (job.stock[k].on_hand ? 0 : certificate.share);
        if (over > 0) {
            if (!job.stock[k].supply && !job.stock[k].on_hand) {
                return "unlimited stock is let off too lightly";
            }
            sum -= over * std::min(job.stock[k].supply.value_or(pieces), pieces);
        }
    }
    const Int reached = sum <= 0 ? 0 : (sum + certificate.share - 1) / certificate.share;
    return reached < bound ? "the worths do not reach the bound" : "";
}

}  // namespace cutting_checker
