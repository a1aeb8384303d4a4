// The ways to divide an edge that are worth choosing from.
#include <algorithm>

#include "engine/dividing/divisions.h"
#include "engine/dividing/piece_bounds.h"
#include "engine/words/result.h"

namespace hemline {

namespace {

using Covers = std::vector<Length>;

/// Visible lengths within 1/16 in of each other count as equal.
constexpr Length ends_differ_most = sixteenths(1);

Length whole_of(const RunRule& rule) {
    return rule.edge + rule.allowance_first + rule.allowance_last;
}

bool within_bounds(const RunRule& rule, const Covers& covers) {
    const auto count = static_cast<std::int64_t>(covers.size());
    for (std::int64_t i = 0; i < count; ++i) {
        const PieceBounds bounds = bounds_of(rule, i, count);
        const Length own = covers[static_cast<std::size_t>(i)];
        if (own < bounds.least || own > bounds.most) {
            return false;
        }
    }
    return true;
}

EdgeOption option_of(const RunRule& rule, const Covers& covers, Balance balance) {
    EdgeOption option;
    option.extra_laps = static_cast<std::int64_t>(covers.size()) - fewest_pieces(rule);
    option.balance = balance;
    for (std::size_t i = 0; i < covers.size(); ++i) {
        const PieceBounds bounds =
            bounds_of(rule, static_cast<std::int64_t>(i), static_cast<std::int64_t>(covers.size()));
        option.pieces.push_back({covers[i] + bounds.extra, covers[i]});
    }
    return option;
}

/// Full sticks between a first piece of this cut and whatever is left for the last.
Covers with_first(const RunRule& rule, std::int64_t count, Length first_cut) {
    Covers covers(static_cast<std::size_t>(count), rule.stock - rule.lap);
    covers.front() = first_cut - bounds_of(rule, 0, count).extra;
    covers.back() = rule.edge - covers.front() - (count - 2) * (rule.stock - rule.lap);
    return covers;
}

/// Every balanced division into `count` pieces whose first cut is on the grid or is a whole stick.
std::vector<Covers> balanced_divisions(const RunRule& rule, std::int64_t count) {
    if (count == 1) {
        return whole_of(rule) <= rule.stock ? std::vector<Covers>{{rule.edge}}
                                            : std::vector<Covers>{};
    }
    const Length extra = bounds_of(rule, 0, count).extra;
    const Length ends = rule.edge - (count - 2) * (rule.stock - rule.lap);
    std::vector<Length> cuts;
    const Length least = nanometres((ends - ends_differ_most).nm() / 2) + extra;
    for (Length cut = round_down_to(least, rule.grid); cut <= least + ends_differ_most + rule.grid;
         cut += rule.grid) {
        cuts.push_back(cut);
    }
    cuts.push_back(rule.stock);
    std::vector<Covers> found;
    for (const Length cut : cuts) {
        Covers covers = with_first(rule, count, cut);
        const bool equal = absolute(covers.front() - covers.back()) <= ends_differ_most;
        const bool known = std::find(found.begin(), found.end(), covers) != found.end();
        if (equal && !known && within_bounds(rule, covers)) {
            found.push_back(std::move(covers));
        }
    }
    return found;
}

/// As near to balanced as this number of pieces allows: both ends about half, or one end held at a
/// full stick or at a sliver.
std::vector<Covers> nearest_to_balanced(const RunRule& rule, std::int64_t count) {
    const PieceBounds first_bounds = bounds_of(rule, 0, count);
    const PieceBounds last_bounds = bounds_of(rule, count - 1, count);
    const Length extra = first_bounds.extra;
    const Length ends = rule.edge - (count - 2) * (rule.stock - rule.lap);
    const Length half = round_down_to(nanometres(ends.nm() / 2) + extra, rule.grid);
    const Length least = std::max(first_bounds.least, ends - last_bounds.most) + extra;
    const Length most = std::min(first_bounds.most, ends - last_bounds.least) + extra;
    std::vector<Covers> nearest;
    for (const Length first : {half, half + rule.grid, rule.stock, round_up_to(least, rule.grid),
                               round_down_to(most, rule.grid)}) {
        const Covers covers = with_first(rule, count, first);
        const auto differ = [](const Covers& c) { return absolute(c.front() - c.back()); };
        const bool known = std::find(nearest.begin(), nearest.end(), covers) != nearest.end();
        if (known || !within_bounds(rule, covers)) {
            continue;
        }
        if (!nearest.empty() && differ(covers) < differ(nearest.front())) {
            nearest.clear();
        }
        if (nearest.empty() || differ(covers) == differ(nearest.front())) {
            nearest.push_back(covers);
        }
    }
    return nearest;
}

/// Full sticks from the side fitted first; where that leaves a sliver, some ways to share its
/// length between the last two pieces.
std::vector<Covers> run_outs(const RunRule& rule, std::int64_t count) {
    std::vector<Covers> found;
    const Length rest = whole_of(rule) + (count - 1) * rule.lap - (count - 1) * rule.stock;
    const Length both = rest + rule.stock;
    for (const Length last :
         {rest, rule.sliver, 2 * rule.sliver, both - rule.sliver, nanometres(both.nm() / 2)}) {
        Covers covers;
        for (std::int64_t i = 0; i + 1 < count; ++i) {
            covers.push_back(bounds_of(rule, i, count).most);
        }
        const Length extra = bounds_of(rule, count - 2, count).extra;
        if (last != rest) {
            covers[covers.size() - 1] = round_down_to(both - last, rule.grid) - extra;
        }
        Length left = rule.edge;
        for (const Length own : covers) {
            left -= own;
        }
        covers.push_back(left);
        const bool known = std::find(found.begin(), found.end(), covers) != found.end();
        if (!known && within_bounds(rule, covers)) {
            found.push_back(std::move(covers));
            if (last == rest) {
                break;  // no other division into so many pieces cuts from fewer sticks
            }
        }
    }
    return found;
}

}  // namespace

bool can_balance(const RunRule& rule, std::int64_t pieces) {
    return pieces >= 1 && !balanced_divisions(rule, pieces).empty();
}

std::vector<EdgeOption> balanced_ways(const RunRule& rule, std::int64_t pieces) {
    std::vector<EdgeOption> ways;
    for (const Covers& covers : balanced_divisions(rule, pieces)) {
        ways.push_back(option_of(rule, covers, Balance::balanced));
    }
    return ways;
}

std::vector<EdgeOption> divisions_menu(const RunRule& rule) {
    std::vector<EdgeOption> menu;
    const auto plain = divide_run(rule, Style::balanced);
    if (!plain) {
        return menu;
    }
    const std::int64_t fewest = fewest_pieces(rule);
    for (std::int64_t count = fewest; count <= fewest + 1; ++count) {
        std::vector<Covers> balanced = balanced_divisions(rule, count);
        // The direction that divide_run() takes comes first, so that as few edges as possible
        // change.
        std::stable_partition(balanced.begin(), balanced.end(), [&](const Covers& covers) {
            return option_of(rule, covers, Balance::balanced).pieces == *plain;
        });
        for (const Covers& covers : balanced) {
            menu.push_back(option_of(rule, covers, Balance::balanced));
        }
        if (count > fewest) {
            continue;
        }
        if (balanced.empty() && count > 1) {
            for (const Covers& covers : nearest_to_balanced(rule, count)) {
                menu.push_back(option_of(rule, covers, Balance::cannot));
            }
        }
        for (const Covers& covers : count > 1 ? run_outs(rule, count) : std::vector<Covers>{}) {
            const EdgeOption option =
                option_of(rule, covers, balanced.empty() ? Balance::cannot : Balance::unbalanced);
            if (!is_balanced(option.pieces, rule)) {
                menu.push_back(option);
            }
        }
    }
    if (menu.empty()) {
        const auto count = static_cast<std::int64_t>(plain->size());
        menu.push_back({*plain, count - fewest,
                        is_balanced(*plain, rule)  ? Balance::balanced
                        : can_balance(rule, count) ? Balance::unbalanced
                                                   : Balance::cannot});
    }
    return menu;
}

}  // namespace hemline
