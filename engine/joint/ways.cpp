#include "engine/joint/ways.h"

#include <algorithm>

namespace hemline {

namespace {

Balance balance_of(const RunRule& rule, const std::vector<Division>& pieces) {
    const auto count = static_cast<std::int64_t>(pieces.size());
    return is_balanced(pieces, rule)  ? Balance::balanced
           : can_balance(rule, count) ? Balance::unbalanced
                                      : Balance::cannot;
}

/// The division of an edge that is under way.
EdgeWays ways_under_way(const JointEdge& edge) {
    EdgeWays ways;
    ways.is_fixed = true;
    const auto laps = static_cast<std::int64_t>(edge.keeps.size()) - fewest_pieces(edge.rule);
    ways.options.push_back(
        {edge.keeps, std::max(laps, std::int64_t{0}), balance_of(edge.rule, edge.keeps)});
    ways.even.push_back(0);
    return ways;
}

/// Neither can be balanced, their ends differ by as much, and between them are whole sticks: a
/// short piece in the middle is seen, however alike the ends are.
bool as_near(const EdgeOption& a, const EdgeOption& b, const RunRule& rule) {
    const auto is_whole = [&](const Division& d) { return d.covers == rule.stock - rule.lap; };
    const auto whole_between = [&](const EdgeOption& o) {
        return o.pieces.size() < 3 ||
               std::all_of(o.pieces.begin() + 1, o.pieces.end() - 1, is_whole);
    };
    const auto differ = [](const EdgeOption& o) {
        return absolute(o.pieces.front().covers - o.pieces.back().covers);
    };
    return a.balance == Balance::cannot && b.balance == Balance::cannot &&
           a.pieces.size() == b.pieces.size() && differ(a) == differ(b) && whole_between(a) &&
           whole_between(b);
}

EdgeWays ways_of(const JointEdge& edge) {
    if (!edge.keeps.empty()) {
        return ways_under_way(edge);
    }
    const RunRule& rule = edge.rule;
    EdgeWays ways;
    ways.is_free = edge.looks == Looks::free;
    bool even_met = false;
    for (EdgeOption& option : divisions_menu(rule)) {
        const std::size_t index = ways.options.size();
        // The first way that cannot be balanced is the nearest to balance, and so are the ways like
        // it.
        const bool is_even = option.balance == Balance::balanced || !even_met ||
                             as_near(option, ways.options.front(), rule);
        if (!is_even && !ways.is_free) {
            continue;
        }
        if (is_even) {
            even_met = true;
            (option.extra_laps == 0 ? ways.even : ways.even_more).push_back(index);
        } else {
            ways.run_out.push_back(index);
        }
        ways.options.push_back(std::move(option));
    }
    if (ways.even.empty()) {
        ways.even = std::move(ways.even_more);
        ways.even_more.clear();
        ways.is_fixed = true;
        return ways;
    }
    const EdgeOption& even = ways.options[ways.even.front()];
    ways.counts = even.balance == Balance::balanced && even.pieces.size() > 1;
    ways.fulls = static_cast<std::int64_t>(even.pieces.size()) - 1;
    ways.rest = rule.edge + rule.allowance_first + rule.allowance_last +
                ways.fulls * (rule.lap - rule.stock);
    return ways;
}

}  // namespace

std::vector<EdgeWays> ways_of(const JointJob& job) {
    std::vector<EdgeWays> ways;
    ways.reserve(job.edges.size());
    for (const JointEdge& edge : job.edges) {
        ways.push_back(ways_of(edge));
    }
    return ways;
}

EdgeOption option_of_cuts(const RunRule& rule, const std::vector<Length>& cuts) {
    EdgeOption option;
    for (std::size_t i = 0; i < cuts.size(); ++i) {
        Length extra = i == 0 ? rule.allowance_first : Length();
        extra += i + 1 == cuts.size() ? rule.allowance_last : rule.lap;
        option.pieces.push_back({cuts[i], cuts[i] - extra});
    }
    option.extra_laps = static_cast<std::int64_t>(cuts.size()) - fewest_pieces(rule);
    option.balance = balance_of(rule, option.pieces);
    return option;
}

std::size_t add_option(EdgeWays& ways, EdgeOption option) {
    const auto same = [&](const EdgeOption& own) { return own.pieces == option.pieces; };
    const auto found = std::find_if(ways.options.begin(), ways.options.end(), same);
    const auto index = static_cast<std::size_t>(found - ways.options.begin());
    if (found == ways.options.end()) {
        ways.options.push_back(std::move(option));
    }
    return index;
}

CuttingPlan cut_within(const CuttingJob& job, std::int64_t steps, Effort& effort) {
    std::int64_t pieces = 0;
    for (const CutDemand& demand : job.demand) {
        pieces += demand.count;
    }
    const std::int64_t own = std::max(std::int64_t{0}, std::min(steps, effort.left()));
    CuttingPlan plan = plan_cutting(job, {own, effort.cancelled()});
    // So much stock takes next to no memory beside the pieces.
    constexpr std::int64_t stock_free = 300;
    const auto stock = static_cast<std::int64_t>(job.stock.size());
    effort.spend(100 * pieces + std::max(std::int64_t{0}, stock - stock_free) +
                 (plan.proved ? 0 : own));
    return plan;
}

JointPlan cut_chosen(const JointJob& job, const std::vector<EdgeWays>& ways, const Chosen& chosen,
                     std::int64_t steps, Effort& effort) {
    JointPlan plan;
    plan.job.stock = job.stock;
    plan.job.kerf = job.kerf;
    for (std::size_t e = 0; e < ways.size(); ++e) {
        plan.divisions.emplace_back();
        if (ways[e].options.empty()) {
            continue;
        }
        const EdgeOption& option = ways[e].options[chosen[e]];
        plan.divisions.back() = option;
        plan.extra_laps += option.extra_laps;
        plan.unbalanced += option.balance == Balance::unbalanced ? 1 : 0;
        const auto& cut = job.edges[e].cut;
        for (std::size_t i = 0; i < option.pieces.size(); ++i) {
            if (i >= cut.size() || !cut[i]) {
                plan.job.demand.push_back({option.pieces[i].cut, 1});
            }
        }
    }
    plan.cutting = cut_within(plan.job, steps, effort);
    plan.sticks = plan.cutting.sticks;
    return plan;
}

bool as_good(const JointPlan& a, const JointPlan& b) {
    return a.extra_laps <= b.extra_laps && a.unbalanced <= b.unbalanced && a.sticks <= b.sticks &&
           a.cutting.missing.size() <= b.cutting.missing.size();
}

}  // namespace hemline
