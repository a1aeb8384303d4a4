// Checks a joint bound by worths in exact integers, sharing no code with the planner: what every
// lawful division of every edge is worth at least, what every stick holds at most, and that the
// parts leave nothing out.
#pragma once

#include <algorithm>
#include <map>
#include <numeric>
#include <optional>
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

/// Ranges of pieces in rising order, in grid units.
using Ranges = std::vector<std::pair<Int, Int>>;

inline Ranges ranges_of(const hemline::DivisionSet& set, Int grid) {
    Ranges ranges;
    for (const auto& own : set.ranges) {
        ranges.emplace_back((own.least.nm() + grid - 1) / grid, own.most.nm() / grid);
    }
    return ranges;
}

inline bool in_ranges(std::vector<Int> units, const Ranges& ranges) {
    std::sort(units.begin(), units.end());
    for (std::size_t i = 0; i < ranges.size(); ++i) {
        if (i >= units.size() || units[i] < ranges[i].first || units[i] > ranges[i].second) {
            return false;
        }
    }
    return true;
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

    /// The same with a piece in each range, whose ends rise: in rising order, too, each lies in its
    /// own.
    [[nodiscard]] Int in(const Ranges& ranges, Int metal) const {
        std::vector<Int> before(static_cast<std::size_t>(metal / grid_) + 1, -1);
        before[0] = 0;
        for (const auto& range : ranges) {
            std::vector<Int> own(before.size(), -1);
            for (const auto& [length, worth] : lengths_) {
                const auto from = static_cast<std::size_t>(length);
                for (std::size_t s = from;
                     range.first <= length && length <= range.second && s < own.size(); ++s) {
                    const Int sum = before[s - from] < 0 ? -1 : before[s - from] + worth;
                    own[s] = sum >= 0 && (own[s] < 0 || sum < own[s]) ? sum : own[s];
                }
            }
            before = std::move(own);
        }
        return before.back();
    }

  private:
    Int grid_;
    std::vector<std::pair<Int, Int>> lengths_;
    std::vector<std::vector<Int>> least_;
};

/// What an edge is worth at least, by class: 2·laps, and one more where it is unbalanced.
using LeastByClass = std::map<int, Int>;

inline void offer(LeastByClass& least, const hemline::JointWorths& worths, Int laps,
                  bool unbalanced, Int worth) {
    const int own = static_cast<int>(2 * laps) + (unbalanced ? 1 : 0);
    worth += laps * worths.lap + (unbalanced ? worths.unbalanced : 0);
    const auto known = least.find(own);
    least[own] = known == least.end() ? worth : std::min(known->second, worth);
}

/// Of an edge still to be divided, every lawful division whose pieces lie in the ranges, if any.
inline LeastByClass least_of_edge(const hemline::JointEdge& edge,
                                  const hemline::JointWorths& worths, Int laps_most,
                                  const Ranges& ranges, AnyDivision& any) {
    LeastByClass least;
    const hemline::RunRule& rule = edge.rule;
    const Edge own = edge_of(rule);
    const auto offer_covers = [&](Int laps, const std::vector<Int>& covers) {
        Int worth = 0;
        std::vector<Int> units;
        for (std::size_t i = 0; i < covers.size(); ++i) {
            const Int cut = covers[i] + extra_of(rule, i, covers.size());
            worth += worth_of(worths, cut);
            units.push_back(cut / rule.grid.nm());
        }
        if (in_ranges(units, ranges)) {
            offer(least, worths, laps, false, worth);
        }
    };
    for (Int laps = 0; laps <= laps_most; ++laps) {
        const Int pieces = own.fewest + laps;
        const auto even = balanced_covers(rule, static_cast<std::size_t>(pieces));
        for (const std::vector<Int>& covers : even) {
            offer_covers(laps, covers);
        }
        const bool is_free = edge.looks == hemline::Looks::free && pieces > 1;
        const Int metal = own.metal + (pieces - 1) * own.lap;
        const bool is_any = ranges.empty();
        const Int worth = !is_free                                    ? Int{-1}
                          : is_any                                    ? any.of(pieces, metal)
                          : static_cast<Int>(ranges.size()) == pieces ? any.in(ranges, metal)
                                                                      : Int{-1};
        if (worth >= 0) {
            offer(least, worths, laps, !even.empty(), worth);
        }
        for (const std::vector<Int>& covers :
             !is_free && laps == 0 && even.empty()
                 ? nearest_covers(rule, static_cast<std::size_t>(pieces))
                 : std::vector<std::vector<Int>>{}) {
            offer_covers(0, covers);
        }
    }
    return least;
}

/// Of an edge under way, or with no division as it should be: what was taken is all.
inline LeastByClass least_as_taken(const hemline::JointEdge& edge, const hemline::EdgeOption& taken,
                                   const hemline::JointWorths& worths) {
    Int worth = 0;
    std::vector<Int> covers;
    for (std::size_t i = 0; i < taken.pieces.size(); ++i) {
        const bool is_cut = i < edge.cut.size() && edge.cut[i];
        worth += is_cut ? 0 : worth_of(worths, taken.pieces[i].cut.nm());
        covers.push_back(taken.pieces[i].covers.nm());
    }
    LeastByClass least;
    offer(least, worths,
          std::max(Int{0}, static_cast<Int>(covers.size()) - edge_of(edge.rule).fewest),
          !balanced(edge.rule, covers) && can_balance(edge.rule, covers.size()), worth);
    return least;
}

/// Some divisions of one edge. No ranges: the pieces may have any length.
struct Region {
    Bits classes = 0;
    Ranges ranges;
};

/// Narrows one end of one range to `to`, and what rises with it.
inline Region with_end(Region region, std::size_t place, bool is_most, Int to) {
    for (std::size_t i = 0; i < region.ranges.size(); ++i) {
        Int& own = is_most ? region.ranges[i].second : region.ranges[i].first;
        own = is_most && i <= place    ? std::min(own, to)
              : !is_most && i >= place ? std::max(own, to)
                                       : own;
    }
    return region;
}

/// Where `part` does not hold all of the region: what of it the part may hold, and the rest.
inline std::optional<std::pair<Region, Region>> apart(const Region& region, const Region& part,
                                                      Int longest) {
    if ((region.classes & ~part.classes) != 0) {
        return std::pair(Region{region.classes & part.classes, region.ranges},
                         Region{region.classes & ~part.classes, region.ranges});
    }
    Region own = region;
    own.ranges.resize(part.ranges.size(), {0, longest});
    for (std::size_t i = own.ranges.size(); i-- > 0;) {
        const Int to = part.ranges[i].second;
        if (to < own.ranges[i].second) {
            return std::pair(with_end(own, i, true, to), with_end(own, i, false, to + 1));
        }
    }
    for (std::size_t i = 0; i < part.ranges.size(); ++i) {
        const Int to = part.ranges[i].first;
        if (to > own.ranges[i].first) {
            return std::pair(with_end(own, i, false, to), with_end(own, i, true, to - 1));
        }
    }
    return std::nullopt;
}

inline bool meet(const Region& region, const Region& part) {
    bool meets = region.classes == 0 || (region.classes & part.classes) != 0;
    for (std::size_t i = 0; i < region.ranges.size() && i < part.ranges.size(); ++i) {
        meets = meets && region.ranges[i].first <= part.ranges[i].second &&
                part.ranges[i].first <= region.ranges[i].second;
    }
    return meets;
}

/// True when some part of these holds every choice of one division for each edge.
inline bool leaves_nothing_out(const std::vector<std::vector<Region>>& parts,
                               const std::vector<Region>& all, const std::vector<Int>& longest) {
    for (const std::vector<Region>& part : parts) {
        bool meets = true;
        for (std::size_t e = 0; e < all.size(); ++e) {
            meets = meets && meet(all[e], part[e]);
        }
        if (!meets) {
            continue;
        }
        for (std::size_t e = 0; e < all.size(); ++e) {
            if (const auto sides = apart(all[e], part[e], longest[e])) {
                std::vector<Region> inside = all, outside = all;
                inside[e] = sides->first;
                outside[e] = sides->second;
                return leaves_nothing_out(parts, inside, longest) &&
                       leaves_nothing_out(parts, outside, longest);
            }
        }
        return true;
    }
    return false;
}

/// The part's divisions of one edge; none where its classes have other numbers of pieces than it
/// has ranges, or its ranges do not rise.
inline std::optional<Region> region_of(const hemline::RunRule& rule,
                                       const hemline::DivisionSet& set, Bits known) {
    Region region{set.classes & known, ranges_of(set, rule.grid.nm())};
    const Ranges& ranges = region.ranges;
    for (Int of_class = 0; of_class < 32 && !ranges.empty(); ++of_class) {
        if ((region.classes >> of_class & 1U) != 0 &&
            edge_of(rule).fewest + of_class / 2 != static_cast<Int>(ranges.size())) {
            return std::nullopt;
        }
    }
    for (std::size_t i = 1; i < ranges.size(); ++i) {
        if (ranges[i].first < ranges[i - 1].first || ranges[i].second < ranges[i - 1].second) {
            return std::nullopt;
        }
    }
    return region;
}

/// Where a part holds no plan at all.
constexpr Int no_plan = 1'000'000'000;

/// New sticks that any plan needs that takes only the divisions of this part; below 0: not worths.
/// Fills in every class of each edge, and what of them the part holds.
inline Int bound_of_part(const hemline::JointJob& job, const hemline::JointPlan& plan,
                         const hemline::JointPart& part, std::vector<Region>& all,
                         std::vector<Region>& held) {
    const hemline::JointWorths& worths = part.worths;
    if (worths.share < 1 || worths.lap < 0 || worths.unbalanced < 0 ||
        worths.stick_worth.size() != job.stock.size() || worths.from.empty() ||
        worths.from.front().nm() < 1 || worths.from.size() != worths.worth.size() ||
        worths.worth.front() < 0 || !std::is_sorted(worths.from.begin(), worths.from.end()) ||
        !std::is_sorted(worths.worth.begin(), worths.worth.end())) {
        return -1;
    }
    Int sum = -plan.extra_laps * worths.lap - plan.unbalanced * worths.unbalanced;
    bool holds_none = false;
    std::map<Int, AnyDivision> any;  // by sliver: grid and stick are the pool's
    for (std::size_t e = 0; e < job.edges.size(); ++e) {
        const hemline::RunRule& rule = job.edges[e].rule;
        const auto own = any.try_emplace(rule.sliver.nm(), rule, worths).first;
        const Int laps = plan.extra_laps;
        LeastByClass least = least_of_edge(job.edges[e], worths, laps, {}, own->second);
        const bool is_taken = !job.edges[e].keeps.empty() || least.empty();
        if (is_taken) {
            least = least_as_taken(job.edges[e], plan.divisions[e], worths);
        }
        for (const auto& [of_class, worth] : least) {
            all[e].classes |= Bits{1} << of_class;
        }
        const auto region = region_of(rule, part.edges[e], all[e].classes);
        if (!region) {
            return -1;
        }
        held.push_back(*region);
        if (!is_taken && !region->ranges.empty()) {
            least = least_of_edge(job.edges[e], worths, laps, region->ranges, own->second);
        }
        Int cheapest = -1;
        for (const auto& [of_class, worth] : least) {
            if ((region->classes >> of_class & 1U) != 0) {
                cheapest = cheapest < 0 ? worth : std::min(cheapest, worth);
            }
        }
        holds_none = holds_none || cheapest < 0;
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
    return holds_none ? no_plan : sum <= 0 ? 0 : (sum + worths.share - 1) / worths.share;
}

/// Empty when the parts leave nothing out and each of them bounds by lower_bound.
inline std::string wrong_parts(const hemline::JointJob& job, const hemline::JointPlan& plan) {
    std::vector<Region> all(job.edges.size());
    std::vector<std::vector<Region>> parts;
    std::vector<Int> longest;
    for (const hemline::JointEdge& edge : job.edges) {
        longest.push_back(edge.rule.stock.nm() / edge.rule.grid.nm());
    }
    for (const hemline::JointPart& part : plan.parts) {
        if (part.edges.size() != job.edges.size() || plan.extra_laps > 15) {
            return "parts of another job";
        }
        if (bound_of_part(job, plan, part, all, parts.emplace_back()) < plan.lower_bound) {
            return "worths that do not bound";
        }
    }
    return leaves_nothing_out(parts, all, longest) ? "" : "parts that leave plans out";
}

}  // namespace joint_checker
