// Checks a cutting plan and its certificate in exact integers, sharing no code with the planner.
#pragma once

#include <algorithm>
#include <functional>
#include <map>
#include <set>
#include <string>
#include <tuple>
#include <vector>

#include "engine/cutting/cutting.h"

namespace cutting_checker {

using Int = std::int64_t;

/// The most worth of pieces that fit `room` nanometers, each piece taking its length and one kerf.
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
    Int sum = 0;
    for (std::size_t i = 0; i < job.demand.size(); ++i) {
        if (certificate.worth[i] < 0) {
            return "a worth below 0";
        }
        sum += certificate.worth[i] * job.demand[i].count;
    }
    // Sticks alike, room and on hand or not: what they are let off with, and how many there are.
    std::map<std::pair<Int, bool>, std::pair<Int, Int>> let_off;
    for (std::size_t k = 0; k < job.stock.size(); ++k) {
        const hemline::StockLength& stock = job.stock[k];
        if (stock.supply.value_or(1) < 1) {
            continue;
        }
        const Int room = stock.length.nm() + job.kerf.nm();
        if (most_worth(job, certificate.worth, room) > certificate.stick_worth[k]) {
            return "a stick can hold more than is said";
        }
        const Int over = certificate.stick_worth[k] - (stock.on_hand ? 0 : certificate.share);
        if (over > 0 && !stock.supply && !stock.on_hand) {
            return "unlimited stock is let off too lightly";
        }
        Int fitting = 0;  // a stick that is used holds a piece, so no more than these are
        for (const auto& demand : job.demand) {
            fitting += demand.length <= stock.length ? demand.count : 0;
        }
        auto& [most_over, supply] = let_off[{room, stock.on_hand}];
        most_over = std::max(most_over, over);
        supply = std::min(supply + stock.supply.value_or(fitting), fitting);
    }
    for (const auto& [alike, off] : let_off) {
        sum -= off.first * off.second;
    }
    const Int reached = sum <= 0 ? 0 : (sum + certificate.share - 1) / certificate.share;
    return reached < bound ? "the worths do not reach the bound" : "";
}

/// Searches again for a plan from `sticks` new sticks: every filling of every stock that takes the
/// longest piece left. Leaves a branch only when its waste of metal or of worth is past what a plan
/// from so many sticks can have. Remembers rests that failed.
class SearchAgain {
  public:
    SearchAgain(const hemline::CuttingJob& job, const hemline::Certificate& certificate, Int sticks)
        : kerf_(job.kerf.nm()), new_left_(sticks) {
        std::map<Int, std::pair<Int, Int>, std::greater<>> kinds;  // size -> count, worth
        for (std::size_t i = 0; i < job.demand.size(); ++i) {
            auto& kind = kinds[job.demand[i].length.nm() + kerf_];
            kind.second = kind.first == 0 ? certificate.worth[i]
                                          : std::min(kind.second, certificate.worth[i]);
            kind.first += job.demand[i].count;
        }
        Int pieces = 0;
        for (const auto& [size, kind] : kinds) {
            size_.push_back(size);
            left_.push_back(kind.first);
            worth_.push_back(kind.second);
            pieces += kind.first;
            metal_spare_ -= size * kind.first;
            worth_spare_ -= kind.second * kind.first;
        }
        Int longest = 0;
        for (const auto& stock : job.stock) {
            longest = std::max(longest, stock.on_hand ? 0 : stock.length.nm() + kerf_);
        }
        for (std::size_t k = 0; k < job.stock.size(); ++k) {
            const auto& stock = job.stock[k];
            const Int room = stock.length.nm() + kerf_;
            const Int supply = std::min(stock.supply.value_or(pieces), pieces);
            if (supply > 0) {
                const Int paid = stock.on_hand ? 0 : certificate.share;
                const Int let_off = std::max(certificate.stick_worth[k], paid);
                stock_.push_back({room, supply, let_off, stock.on_hand});
                metal_spare_ += stock.on_hand ? supply * room : 0;
                worth_spare_ += supply * (let_off - paid);
            }
        }
        // Metal of a new stick is counted as the longest: a shorter stick wastes the difference.
        metal_spare_ += sticks * longest;
        worth_spare_ += sticks * certificate.share;
        longest_ = longest;
    }
    /// True when no plan was found and all were looked at within the steps.
    bool refutes(Int steps) {
        steps_ = steps;
        return !plan_from_rest() && steps_ > 0;
    }

  private:
    struct Stock {
        Int room, supply, let_off;
        bool on_hand;
    };

    bool plan_from_rest() {
        std::size_t first = 0;
        while (first < left_.size() && left_[first] == 0) {
            ++first;
        }
        if (first == left_.size()) {
            return true;
        }
        std::vector<Int> rest = left_;
        for (const Stock& stock : stock_) {
            rest.push_back(stock.supply);
        }
        rest.push_back(new_left_);
        if (steps_ <= 0 || failed_.count(rest) > 0) {
            return false;
        }
        for (Stock& stock : stock_) {
            if (stock.supply == 0 || stock.room < size_[first] ||
                (!stock.on_hand && new_left_ == 0)) {
                continue;
            }
            --stock.supply;
            new_left_ -= stock.on_hand ? 0 : 1;
            --left_[first];
            const Int metal = stock.on_hand ? stock.room : longest_;
            first_room_ = stock.room - size_[first];
            partner_ = first;
            while (partner_ < left_.size() &&
                   (left_[partner_] == 0 || size_[partner_] > first_room_)) {
                ++partner_;
            }
            partner_left_ = partner_ < left_.size() ? left_[partner_] : 0;
            const bool found = plan_with(first, stock.room - size_[first], metal - size_[first],
                                         stock.let_off - worth_[first]);
            ++left_[first];
            new_left_ += stock.on_hand ? 0 : 1;
            ++stock.supply;
            if (found) {
                return true;
            }
        }
        failed_.insert(std::move(rest));
        return false;
    }

    bool plan_with(std::size_t from, Int room, Int metal, Int worth) {
        if (--steps_ <= 0) {
            return false;
        }
        for (std::size_t i = from; i < size_.size(); ++i) {
            if (left_[i] > 0 && size_[i] <= room) {
                --left_[i];
                const bool found =
                    plan_with(i, room - size_[i], metal - size_[i], worth - worth_[i]);
                ++left_[i];
                if (found) {
                    return true;
                }
            }
        }
        for (std::size_t i = 0; i < size_.size(); ++i) {
            if (left_[i] > 0 && size_[i] <= room) {
                return false;  // room for another piece: a different branch has it
            }
        }
        if (metal > metal_spare_ || worth > worth_spare_) {
            return false;
        }
        // The longest piece that fits beside it could be swapped with everything that lies there
        // instead.
        const Int beside = first_room_ - room;
        if (partner_ < left_.size() && left_[partner_] == partner_left_ &&
            beside <= size_[partner_]) {
            return false;
        }
        const auto kept = std::make_tuple(first_room_, partner_, partner_left_);
        metal_spare_ -= metal;
        worth_spare_ -= worth;
        const bool found = plan_from_rest();
        std::tie(first_room_, partner_, partner_left_) = kept;
        metal_spare_ += metal;
        worth_spare_ += worth;
        return found;
    }

    Int kerf_;
    std::vector<Int> size_, left_, worth_;
    std::vector<Stock> stock_;
    Int first_room_ = 0, partner_left_ = 0;  // beside the longest piece of the stick being filled
    std::size_t partner_ = 0;
    Int new_left_, metal_spare_ = 0, worth_spare_ = 0, longest_ = 0, steps_ = 0;
    std::set<std::vector<Int>> failed_;
};

/// Empty when the whole of lower_bound is shown: by the worths, and by searching again for what was
/// refuted.
inline std::string wrong_bound(const hemline::CuttingJob& job, const hemline::CuttingPlan& plan) {
    const hemline::Certificate& certificate = plan.certificate;
    if (plan.lower_bound != certificate.bound + certificate.refuted) {
        return "the bound is not what the certificate says";
    }
    std::string wrong = wrong_worths(job, certificate, certificate.bound);
    for (Int n = 0; n < certificate.refuted && wrong.empty(); ++n) {
        if (!SearchAgain(job, certificate, certificate.bound + n).refutes(20'000'000)) {
            wrong = "the search that refutes a count does not";
        }
    }
    return wrong;
}

}  // namespace cutting_checker
