// Checks a joint bound by worths in exact integers, sharing no code with the planner: what every
// lawful division of every edge is worth at least, what every stick holds at most, and that the
// parts leave nothing out.
#pragma once

#include <algorithm>
#include <map>
#include <numeric>
#include <string>
#include <vector>

#include "tests/engine/plan/joint_edge_checker.h"

namespace joint_checker {

using Bits = std::uint32_t;

inline Int worth_of(const hemline::JointWorths& worths, Int piece) {
    Int worth = 0;
    for (std::size_t j = 0; j < worths.from.size() && worths.from[j].nm() <= piece; ++j) {
        worth = worths.worth[j];
    }
    return worth;
}

/// The most worth that pieces of any lengths and number can have in so much room.
inline Int most_held(const hemline::JointWorths& worths, Int kerf, Int room) {
    Int unit = 0;
    for (const auto from : worths.from) {
        unit = std::gcd(unit, from.nm() + kerf);
    }
    std::vector<Int> held(static_cast<std::size_t>(room / unit) + 1, 0);
    for (std::size_t s = 1; s < held.size(); ++s) {
        held[s] = held[s - 1];
        for (std::size_t j = 0; j < worths.from.size(); ++j) {
            const auto size = static_cast<std::size_t>((worths.from[j].nm() + kerf) / unit);
            if (size <= s) {
                held[s] = std::max(held[s], held[s - size] + worths.worth[j]);
            }
        }
    }
    return held.back();
}

/// Least worth of so many pieces, by the grid units they make up; one piece may be longer by less
/// than a unit. Longer than the stick is none, shorter than the sliver neither.
class AnyDivision {
  public:
    AnyDivision(const hemline::RunRule& rule, const hemline::JointWorths& worths)
        : grid_(rule.grid.nm()) {
        for (Int length = rule.sliver.nm() > 0 ? rule.sliver.nm() / grid_ : 1;
             length <= rule.stock.nm() / grid_; ++length) {
            lengths_.emplace_back(length, worth_of(worths, length * grid_));
        }
        least_.push_back(std::vector<Int>(1));
    }
    /// Below 0: none.
    Int of(Int pieces, Int metal) {
        const auto most = static_cast<std::size_t>(lengths_.back().first);
        while (static_cast<Int>(least_.size()) <= pieces) {
            const std::vector<Int>& before = least_.back();
            std::vector<Int> own(before.size() + most, -1);
            for (std::size_t s = 0; s < before.size(); ++s) {
                for (const auto& [length, worth] : lengths_) {
                    Int& slot = own[s + static_cast<std::size_t>(length)];
                    if (before[s] >= 0 && (slot < 0 || before[s] + worth < slot)) {
                        slot = before[s] + worth;
                    }
                }
            }
            least_.push_back(std::move(own));
        }
        const auto place = static_cast<std::size_t>(metal / grid_);
        const std::vector<Int>& own = least_[static_cast<std::size_t>(pieces)];
        return place < own.size() ? own[place] : -1;
    }

  private:
    Int grid_;
    std::vector<std::pair<Int, Int>> lengths_;
    std::vector<std::vector<Int>> least_;
};

/// What an edge is worth at least, by class: 2·laps, and one more where it is unbalanced.
using LeastByClass = std::map<int, Int>;

inline LeastByClass least_of_edge(const hemline::JointEdge& edge, const hemline::EdgeOption& taken,
                                  const hemline::JointWorths& worths, Int laps_most,
                                  AnyDivision& any) {
    LeastByClass least;
    const auto offer = [&](Int laps, bool unbalanced, Int worth) {
        const int own = static_cast<int>(2 * laps) + (unbalanced ? 1 : 0);
        worth += laps * worths.lap + (unbalanced ? worths.unbalanced : 0);
        const auto known = least.find(own);
        least[own] = known == least.end() ? worth : std::min(known->second, worth);
    };
    const hemline::RunRule& rule = edge.rule;
    const Edge own = edge_of(rule);
    const auto worth_of_covers = [&](const std::vector<Int>& covers) {
        Int worth = 0;
        for (std::size_t i = 0; i < covers.size(); ++i) {
            worth += worth_of(worths, covers[i] + extra_of(rule, i, covers.size()));
        }
        return worth;
    };
    if (edge.keeps.empty()) {
        for (Int laps = 0; laps <= laps_most; ++laps) {
            const Int pieces = own.fewest + laps;
            const auto even = balanced_covers(rule, static_cast<std::size_t>(pieces));
            for (const std::vector<Int>& covers : even) {
                offer(laps, false, worth_of_covers(covers));
            }
            const bool is_free = edge.looks == hemline::Looks::free && pieces > 1;
            const Int worth =
                is_free ? any.of(pieces, own.metal + (pieces - 1) * own.lap) : Int{-1};
            if (worth >= 0) {
                offer(laps, !even.empty(), worth);
            }
            for (const std::vector<Int>& covers :
                 !is_free && laps == 0 && even.empty()
                     ? nearest_covers(rule, static_cast<std::size_t>(pieces))
                     : std::vector<std::vector<Int>>{}) {
                offer(0, false, worth_of_covers(covers));
            }
        }
    }
    if (least.empty()) {  // under way, or no division as it should be: what was taken is all
        Int worth = 0;
        std::vector<Int> covers;
        for (std::size_t i = 0; i < taken.pieces.size(); ++i) {
            const bool is_cut = i < edge.cut.size() && edge.cut[i];
            worth += is_cut ? 0 : worth_of(worths, taken.pieces[i].cut.nm());
            covers.push_back(taken.pieces[i].covers.nm());
        }
        const auto pieces = static_cast<Int>(covers.size());
        offer(std::max(Int{0}, pieces - own.fewest),
              !balanced(rule, covers) && can_balance(rule, covers.size()), worth);
    }
    return least;
}

/// True when some part of these holds every choice of one class for each edge.
inline bool leaves_nothing_out(const std::vector<hemline::JointPart>& parts,
                               const std::vector<Bits>& all) {
    const hemline::JointPart* differs = nullptr;
    std::size_t at = 0;
    for (const hemline::JointPart& part : parts) {
        bool holds = part.classes.size() == all.size(), meets = holds;
        std::size_t cuts_at = 0;
        for (std::size_t e = 0; e < all.size() && meets; ++e) {
            meets = all[e] == 0 || (part.classes[e] & all[e]) != 0;
            if (holds && (all[e] & ~part.classes[e]) != 0) {
                holds = false;
                cuts_at = e;
            }
        }
        if (holds && meets) {
            return true;
        }
        if (meets && differs == nullptr) {
            differs = &part;
            at = cuts_at;
        }
    }
    if (differs == nullptr) {
        return false;
    }
    std::vector<Bits> inside = all, outside = all;
    inside[at] &= differs->classes[at];
    outside[at] &= ~differs->classes[at];
    return leaves_nothing_out(parts, inside) && leaves_nothing_out(parts, outside);
}

/// New sticks that any plan needs that takes only the classes of this part; below 0: not worths.
inline Int bound_of_part(const hemline::JointJob& job, const hemline::JointPlan& plan,
                         const hemline::JointPart& part, std::vector<Bits>& all) {
    const hemline::JointWorths& worths = part.worths;
    if (worths.share < 1 || worths.lap < 0 || worths.unbalanced < 0 ||
        worths.stick_worth.size() != job.stock.size() || worths.from.empty() ||
        worths.from.front().nm() < 1 || worths.from.size() != worths.worth.size() ||
        worths.worth.front() < 0 || !std::is_sorted(worths.from.begin(), worths.from.end()) ||
        !std::is_sorted(worths.worth.begin(), worths.worth.end())) {
        return -1;
    }
    Int sum = -plan.extra_laps * worths.lap - plan.unbalanced * worths.unbalanced;
    std::map<Int, AnyDivision> any;  // by sliver: grid and stick are the pool's
    for (std::size_t e = 0; e < job.edges.size(); ++e) {
        const hemline::RunRule& rule = job.edges[e].rule;
        const auto own = any.try_emplace(rule.sliver.nm(), rule, worths).first;
        const LeastByClass least =
            least_of_edge(job.edges[e], plan.divisions[e], worths, plan.extra_laps, own->second);
        Int cheapest = -1;
        for (const auto& [of_class, worth] : least) {
            all[e] |= Bits{1} << of_class;
            if ((part.classes[e] >> of_class & 1U) != 0) {
                cheapest = cheapest < 0 ? worth : std::min(cheapest, worth);
            }
        }
        sum += std::max(cheapest, Int{0});
    }
    for (std::size_t k = 0; k < job.stock.size(); ++k) {
        const hemline::StockLength& stock = job.stock[k];
        const Int kerf = job.kerf.nm();
        if (most_held(worths, kerf, stock.length.nm() + kerf) > worths.stick_worth[k]) {
            return -1;
        }
        const Int over = worths.stick_worth[k] - (stock.on_hand ? 0 : worths.share);
        if (over > 0 && !stock.supply) {
            return -1;
        }
        sum -= over > 0 ? over * *stock.supply : 0;
    }
    return sum <= 0 ? 0 : (sum + worths.share - 1) / worths.share;
}

/// Empty when the parts leave nothing out and each of them bounds by lower_bound.
inline std::string wrong_parts(const hemline::JointJob& job, const hemline::JointPlan& plan) {
    std::vector<Bits> all(job.edges.size(), 0);
    for (const hemline::JointPart& part : plan.parts) {
        if (part.classes.size() != job.edges.size() || plan.extra_laps > 15) {
            return "parts of another job";
        }
        if (bound_of_part(job, plan, part, all) < plan.lower_bound) {
            return "worths that do not bound";
        }
    }
    return leaves_nothing_out(plan.parts, all) ? "" : "parts that leave plans out";
}

}  // namespace joint_checker
