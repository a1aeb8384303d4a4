#include "engine/joint/worth.h"

#include <algorithm>
#include <limits>

#include "engine/cutting/wide.h"

namespace hemline {

namespace {

/// No division: far above any cost, and the sum of a few does not overflow.
constexpr std::int64_t never = std::numeric_limits<std::int64_t>::max() / 64;

}  // namespace

std::int64_t worth_of(const JointWorths& worths, Length piece) {
    const auto after = std::upper_bound(worths.from.begin(), worths.from.end(), piece);
    return after == worths.from.begin()
               ? 0
               : worths.worth[static_cast<std::size_t>(after - worths.from.begin()) - 1];
}

namespace {

/// Places in the rows of LeastWorth; the first row holds only "no metal".
std::int64_t places_of_pricing(const JointNeeds& needs) {
    const std::int64_t stick = needs.stick.nm() / needs.grid.nm();
    std::int64_t places = 0;
    for (std::size_t p = 1; p < needs.metal_least.size(); ++p) {
        places += static_cast<std::int64_t>(p) * stick - needs.metal_least[p] + 1;
    }
    return places;
}

}  // namespace

std::int64_t steps_of_pricing(const JointNeeds& needs, std::size_t lengths) {
    return places_of_pricing(needs) * static_cast<std::int64_t>(lengths) / 40;
}

std::int64_t bytes_of_pricing(const JointNeeds& needs) {
    return places_of_pricing(needs) * static_cast<std::int64_t>(sizeof(std::int64_t));
}

MetalRow::MetalRow(std::int64_t least, std::int64_t most)
    : least_(least),
      costs_(static_cast<std::size_t>(std::max(most - least + 1, std::int64_t{0})), never) {}

std::int64_t MetalRow::at(std::int64_t metal) const {
    return metal < least_ || metal > most() ? never
                                            : costs_[static_cast<std::size_t>(metal - least_)];
}

void MetalRow::lower_by(const MetalRow& before, std::int64_t from, std::int64_t to,
                        std::int64_t top, std::int64_t more) {
    from = std::max({from, least_, before.least_ + top});
    to = std::min({to, most(), before.most() + top});
    if (from > to) {
        return;
    }
    const std::int64_t* of = &before.costs_[static_cast<std::size_t>(from - top - before.least_)];
    std::int64_t* own = &costs_[static_cast<std::size_t>(from - least_)];
    for (std::int64_t i = 0; i <= to - from; ++i) {
        own[i] = std::min(own[i], of[i] + more);
    }
}

LeastWorth::LeastWorth(const JointNeeds& needs, const JointWorths& worths, Effort& effort)
    : grid_(needs.grid) {
    const auto units = [&](Length length) { return length.nm() / grid_.nm(); };
    const std::int64_t longest = units(round_up_to(needs.stick, grid_));
    shortest_ = std::max(units(round_down_to(needs.sliver, grid_)), std::int64_t{1});
    for (std::size_t j = 0; j <= worths.from.size(); ++j) {
        const bool last = j == worths.from.size();
        const std::int64_t next = last ? longest + 1 : units(round_up_to(worths.from[j], grid_));
        const std::int64_t top = std::min(next - 1, longest);
        if (top >= shortest_ && (steps_.empty() || top > steps_.back().top)) {
            steps_.push_back({top, worth_of(worths, top * grid_)});
        }
    }
    table_.emplace_back(0, 0);
    table_.back().lower(0, 0);
    for (std::size_t p = 1; p < needs.metal_least.size(); ++p) {
        const std::int64_t most = static_cast<std::int64_t>(p) * longest;
        MetalRow own(needs.metal_least[p], most);
        const MetalRow& before = table_.back();
        for (const Step& step : steps_) {
            const std::int64_t alone = before.at(0) + step.worth;
            for (std::int64_t s = own.least(); s <= std::min(step.top, most); ++s) {
                own.lower(s, alone);
            }
            own.lower_by(before, step.top + 1, most, step.top, step.worth);
        }
        table_.push_back(std::move(own));
    }
    effort.spend(steps_of_pricing(needs, steps_.size()));
}

std::int64_t LeastWorth::of(std::int64_t pieces, Length metal) const {
    return table_[static_cast<std::size_t>(pieces)].at(metal.nm() / grid_.nm());
}

std::vector<Length> LeastWorth::cuts(std::int64_t pieces, Length metal) const {
    std::vector<Length> cuts;
    for (std::int64_t left = metal.nm() / grid_.nm(); pieces > 0; --pieces) {
        const std::int64_t own = of(pieces, left * grid_);
        for (const Step& step : steps_) {
            const std::int64_t rest = std::max(left - step.top, std::int64_t{0});
            if (of(pieces - 1, rest * grid_) + step.worth == own) {
                cuts.push_back(step.top * grid_);
                left = rest;
                break;
            }
        }
    }
    return cuts;
}

/// Range by range: the least cost of the pieces so far that make up so much metal, where the ranges
/// still to come can make up the rest.
Cheapest LeastWorth::within(const std::vector<LengthRange>& ranges, Length metal,
                            Effort& effort) const {
    const std::int64_t all = metal.nm() / grid_.nm();
    std::vector<std::vector<Step>> choices;  // of each range
    std::int64_t most_left = 0, least_left = 0;
    for (const LengthRange& range : ranges) {
        const std::int64_t least = std::max(range.least.nm() / grid_.nm(), shortest_);
        const std::int64_t most = range.most.nm() / grid_.nm();
        choices.emplace_back();
        for (const Step& step : steps_) {
            if (step.top >= least && (choices.back().empty() || choices.back().back().top < most)) {
                choices.back().push_back({std::min(step.top, most), step.worth});
            }
        }
        least_left += least;
        most_left += most;
        if (least > most) {
            return {never, 0, {}};
        }
    }
    if (least_left > all || most_left < all) {
        return {never, 0, {}};
    }
    std::vector<MetalRow> costs{{0, 0}};
    costs.back().lower(0, 0);
    std::int64_t most_so_far = 0;
    for (std::size_t p = 0; p < ranges.size(); ++p) {
        const std::int64_t most = ranges[p].most.nm() / grid_.nm();
        least_left -= std::max(ranges[p].least.nm() / grid_.nm(), shortest_);
        most_left -= most;
        most_so_far += most;
        const std::int64_t from = std::max(all - most_left, std::int64_t{0});
        MetalRow own(from, std::min(all - least_left, most_so_far));
        const MetalRow& before = costs.back();
        for (const Step& step : choices[p]) {
            for (std::int64_t s = own.least(); s <= std::min(step.top, own.most()); ++s) {
                own.lower(s, before.at(0) + step.worth);
            }
            own.lower_by(before, step.top + 1, own.most(), step.top, step.worth);
        }
        costs.push_back(std::move(own));
        effort.spend((all - least_left - from + 1) * static_cast<std::int64_t>(choices[p].size()) /
                     16);
    }
    Cheapest best{costs.back().at(all), 0, {}};
    std::int64_t left = all;
    for (std::size_t p = ranges.size(); p-- > 0;) {
        for (const Step& step : choices[p]) {
            const std::int64_t rest = std::max(left - step.top, std::int64_t{0});
            if (costs[p].at(rest) + step.worth == costs[p + 1].at(left)) {
                best.cuts.push_back(step.top * grid_);
                left = rest;
                break;
            }
        }
    }
    return best;
}

Cheapest cheapest(const EdgeNeeds& edge, const DivisionSet& allowed, const JointWorths& worths,
                  const LeastWorth& least, Effort& effort) {
    Cheapest best{never, 0, {}};
    for (std::size_t c = 0; c < edge.size(); ++c) {
        if ((allowed.classes >> c & 1U) == 0) {
            continue;
        }
        const NeedClass& own = edge[c];
        const std::int64_t priced =
            own.laps * worths.lap + (own.is_unbalanced ? worths.unbalanced : 0);
        for (const std::vector<Length>& way : own.ways) {
            if (!in_ranges(allowed, way, least.grid())) {
                continue;
            }
            std::int64_t cost = priced;
            for (const Length cut : way) {
                cost += worth_of(worths, cut);
            }
            if (cost < best.cost) {
                best = {cost, c, way};
            }
        }
        if (own.pieces > 0 && !allowed.ranges.empty()) {
            Cheapest within = least.within(allowed.ranges, own.metal, effort);
            if (within.cost + priced < best.cost) {
                best = {within.cost + priced, c, std::move(within.cuts)};
            }
        } else if (own.pieces > 0 && least.of(own.pieces, own.metal) + priced < best.cost) {
            best = {least.of(own.pieces, own.metal) + priced, c, least.cuts(own.pieces, own.metal)};
        }
    }
    return best;
}

CuttingTask sticks_for(const JointJob& job, const std::vector<Length>& lengths) {
    CuttingJob every{job.stock, {}, job.kerf};
    Length longest;
    for (const StockLength& stock : job.stock) {
        longest = std::max(longest, stock.length + job.kerf);
    }
    for (const Length length : lengths) {
        every.demand.push_back({length, longest.nm() / (length + job.kerf).nm()});
    }
    CuttingTask task = task_of(every);
    for (TaskStock& stock : task.stock) {
        stock.supply = 0;
        for (const std::size_t from : stock.from) {
            stock.supply += job.stock[from].supply.value_or(0);
        }
    }
    return task;
}

void settle(const JointJob& job, std::int64_t edges, std::int64_t laps, std::int64_t unbalanced,
            JointWorths& worths) {
    const Wide all = static_cast<Wide>(edges) - static_cast<Wide>(laps) * worths.lap -
                     static_cast<Wide>(unbalanced) * worths.unbalanced;
    std::int64_t least = 1;
    for (std::size_t k = 0; k < job.stock.size(); ++k) {
        if (!job.stock[k].on_hand && !job.stock[k].supply) {
            least = std::max(least, worths.stick_worth[k]);
        }
    }
    std::vector<std::int64_t> shares{least};
    for (std::size_t k = 0; k < job.stock.size(); ++k) {
        if (!job.stock[k].on_hand && worths.stick_worth[k] > least) {
            shares.push_back(worths.stick_worth[k]);
        }
    }
    worths.bound = 0;
    worths.share = least;
    for (const std::int64_t share : shares) {
        Wide paid = all;
        for (std::size_t k = 0; k < job.stock.size(); ++k) {
            const StockLength& stock = job.stock[k];
            const std::int64_t over = worths.stick_worth[k] - (stock.on_hand ? 0 : share);
            const std::int64_t supply = std::clamp(stock.supply.value_or(cut_pieces_most),
                                                   std::int64_t{0}, cut_pieces_most);
            paid -= over > 0 ? static_cast<Wide>(supply) * over : 0;
        }
        const auto bound =
            paid <= 0 ? std::int64_t{0} : static_cast<std::int64_t>((paid + share - 1) / share);
        if (bound > worths.bound) {
            worths.bound = bound;
            worths.share = share;
        }
    }
}

}  // namespace hemline
