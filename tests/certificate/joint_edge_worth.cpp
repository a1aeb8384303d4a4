// The least worth of an edge's divisions. A piece may be lengthened to the longest that is worth no
// more: so many pieces that make up at least the metal are worth no less than it.
#include <algorithm>
#include <limits>

#include "tests/certificate/joint_edge.h"

namespace certificate {

namespace {

constexpr Int never = std::numeric_limits<Int>::max() / 4;

std::vector<Int> units_of(std::vector<Int> cuts, Int grid) {
    std::sort(cuts.begin(), cuts.end());
    for (Int& cut : cuts) {
        cut /= grid;
    }
    return cuts;
}

bool in_ranges(const std::vector<Int>& units, const Ranges& ranges) {
    for (std::size_t i = 0; i < ranges.size(); ++i) {
        if (i >= units.size() || units[i] < ranges[i].first || units[i] > ranges[i].second) {
            return false;
        }
    }
    return true;
}

}  // namespace

Int worth_of(const JointWorths& worths, Int piece) {
    const auto after = std::upper_bound(worths.from.begin(), worths.from.end(), piece);
    return after == worths.from.begin()
               ? 0
               : worths.worth[static_cast<std::size_t>(after - worths.from.begin()) - 1];
}

LeastWorth::LeastWorth(const JointEdge& edge, const JointWorths& worths)
    : grid_(edge.grid),
      shortest_(std::max<Int>(1, edge.sliver / edge.grid)),
      longest_(edge.stick / edge.grid) {
    for (Int length = shortest_; length <= longest_; ++length) {
        const Int worth = worth_of(worths, length * grid_);
        if (steps_.empty() || worth != steps_.back().worth) {
            steps_.push_back({length, worth});
        }
        steps_.back().top = length;
    }
}

void LeastWorth::widen(std::size_t width) {
    const std::size_t pieces = least_.size();
    least_.assign(1, std::vector<Int>(width, never));
    least_[0][0] = 0;
    while (least_.size() < pieces) {
        least_.emplace_back();
    }
}

std::optional<Int> LeastWorth::of(Int pieces, Int metal) {
    const Int units = metal / grid_;
    if (units < pieces * shortest_ || units > pieces * longest_) {
        return std::nullopt;
    }
    if (least_.empty() || static_cast<Int>(least_.front().size()) <= units) {
        widen(static_cast<std::size_t>(units + longest_ + 1));
    }
    while (static_cast<Int>(least_.size()) <= pieces) {
        least_.emplace_back();
    }
    for (std::size_t p = 1; p <= static_cast<std::size_t>(pieces); ++p) {
        if (!least_[p].empty()) {
            continue;
        }
        const std::vector<Int>& before = least_[p - 1];
        std::vector<Int> own(before.size(), never);
        for (const Step& step : steps_) {
            const auto top = static_cast<std::size_t>(step.top);
            for (std::size_t s = 0; s < own.size(); ++s) {
                own[s] = std::min(own[s], before[s > top ? s - top : 0] + step.worth);
            }
        }
        least_[p] = std::move(own);
    }
    return least_[static_cast<std::size_t>(pieces)][static_cast<std::size_t>(units)];
}

std::optional<Int> LeastWorth::within(const Ranges& ranges, Int metal) const {
    const Int units = metal / grid_;
    Int least = 0, most = 0;
    std::vector<Int> before(static_cast<std::size_t>(units) + 1, never);
    before[0] = 0;
    for (const auto& [shorter, longer] : ranges) {
        const Int low = std::max(shorter, shortest_), high = std::min(longer, longest_);
        if (low > high) {
            return std::nullopt;
        }
        least += low;
        most += high;
        std::vector<Int> own(before.size(), never);
        Int begins = shortest_;
        for (const Step& step : steps_) {
            const auto top = static_cast<std::size_t>(std::min(step.top, high));
            for (std::size_t s = 0; step.top >= low && begins <= high && s < own.size(); ++s) {
                own[s] = std::min(own[s], before[s > top ? s - top : 0] + step.worth);
            }
            begins = step.top + 1;
        }
        before = std::move(own);
    }
    return units < least || units > most ? std::nullopt : std::optional(before.back());
}

std::map<int, Int> least_by_class(const Divisions& divisions, const JointEdge& edge,
                                  const JointWorths& worths, const Ranges& ranges,
                                  LeastWorth& least) {
    std::map<int, Int> by_class;
    const auto offer = [&](Int laps, bool unbalanced, Int worth) {
        worth += laps * worths.lap + (unbalanced ? worths.unbalanced : 0);
        const auto known = by_class.try_emplace(class_of(laps, unbalanced), worth).first;
        known->second = std::min(known->second, worth);
    };
    for (const Listed& own : divisions.listed) {
        // An edge under way has some pieces cut already, so it has no other division.
        if (edge.taken || in_ranges(units_of(own.cuts, edge.grid), ranges)) {
            Int worth = 0;
            for (const Int cut : own.cuts) {
                worth += worth_of(worths, cut);
            }
            offer(own.laps, own.unbalanced, worth);
        }
    }
    for (const AnyWay& own : divisions.any) {
        if (!ranges.empty() && static_cast<Int>(ranges.size()) != own.pieces) {
            continue;
        }
        const auto worth =
            ranges.empty() ? least.of(own.pieces, own.metal) : least.within(ranges, own.metal);
        if (worth) {
            offer(own.laps, own.unbalanced, *worth);
        }
    }
    return by_class;
}

}  // namespace certificate
