#include "engine/joint/needs.h"

#include <algorithm>

namespace hemline {

namespace {

constexpr std::int64_t laps_counted_most = 15;

std::vector<Length> uncut_of(const JointEdge& edge, const EdgeOption& option) {
    std::vector<Length> cuts;
    for (std::size_t i = 0; i < option.pieces.size(); ++i) {
        if (i >= edge.cut.size() || !edge.cut[i]) {
            cuts.push_back(option.pieces[i].cut);
        }
    }
    std::sort(cuts.begin(), cuts.end());
    return cuts;
}

void add_way(EdgeNeeds& needs, const JointEdge& edge, const EdgeOption& option) {
    const std::int64_t own = 2 * option.extra_laps + (option.balance == Balance::unbalanced);
    if (own < static_cast<std::int64_t>(needs.size())) {
        needs[static_cast<std::size_t>(own)].ways.push_back(uncut_of(edge, option));
    }
}

EdgeNeeds needs_of(const JointEdge& edge, const EdgeWays& ways, std::int64_t laps_most) {
    EdgeNeeds needs(static_cast<std::size_t>(2 * laps_most + 2));
    for (std::size_t c = 0; c < needs.size(); ++c) {
        needs[c].laps = static_cast<std::int64_t>(c / 2);
        needs[c].is_unbalanced = c % 2 == 1;
    }
    for (const EdgeOption& option : ways.options) {
        add_way(needs, edge, option);
    }
    if (!edge.keeps.empty()) {
        return needs;
    }
    const RunRule& rule = edge.rule;
    const Length metal = rule.edge + rule.allowance_first + rule.allowance_last;
    for (std::int64_t laps = 0; laps <= laps_most; ++laps) {
        const std::int64_t pieces = fewest_pieces(rule) + laps;
        const std::vector<EdgeOption> even = balanced_ways(rule, pieces);
        for (const EdgeOption& option : even) {
            add_way(needs, edge, option);
        }
        const Length all = metal + (pieces - 1) * rule.lap;
        if (ways.is_free && pieces > 1 && all >= pieces * rule.sliver) {
            NeedClass& own = needs[static_cast<std::size_t>(2 * laps + (even.empty() ? 0 : 1))];
            own.pieces = pieces;
            own.metal = all;
        }
    }
    return needs;
}

/// After whole sticks are taken off: what the fewer pieces left make up.
void note_rests(const NeedClass& own, JointNeeds& needs) {
    const std::int64_t stick = needs.stick.nm() / needs.grid.nm();
    std::int64_t left = own.metal.nm() / needs.grid.nm();
    for (std::int64_t pieces = own.pieces; pieces > 0; --pieces, left -= stick) {
        const auto place = static_cast<std::size_t>(pieces);
        while (needs.metal_least.size() <= place) {
            const auto size = static_cast<std::int64_t>(needs.metal_least.size());
            needs.metal_least.push_back(size * stick);
        }
        needs.metal_least[place] = std::clamp(left, std::int64_t{0}, needs.metal_least[place]);
    }
}

}  // namespace

std::optional<JointNeeds> needs_of(const JointJob& job, const std::vector<EdgeWays>& ways,
                                   std::int64_t laps_most) {
    if (job.edges.empty() || laps_most > laps_counted_most) {
        return std::nullopt;
    }
    const RunRule& first = job.edges.front().rule;
    JointNeeds needs{{}, first.grid, first.stock, first.sliver, {0}};
    for (std::size_t e = 0; e < job.edges.size(); ++e) {
        const RunRule& rule = job.edges[e].rule;
        if (rule.grid != needs.grid || rule.stock != needs.stick ||
            rule.stock.nm() % rule.grid.nm() != 0 || rule.sliver.nm() % rule.grid.nm() != 0) {
            return std::nullopt;
        }
        needs.sliver = std::min(needs.sliver, rule.sliver);
        needs.edges.push_back(ways[e].options.empty() ? EdgeNeeds()
                                                      : needs_of(job.edges[e], ways[e], laps_most));
        for (const NeedClass& own : needs.edges.back()) {
            note_rests(own, needs);
        }
    }
    return needs;
}

DivisionSets all_divisions(const JointNeeds& needs) {
    DivisionSets all;
    for (const EdgeNeeds& edge : needs.edges) {
        all.emplace_back();
        for (std::size_t c = 0; c < edge.size(); ++c) {
            all.back().classes |= edge[c].ways.empty() && edge[c].pieces == 0 ? 0U : 1U << c;
        }
    }
    return all;
}

bool in_ranges(const DivisionSet& set, const std::vector<Length>& rising, Length grid) {
    for (std::size_t i = 0; i < set.ranges.size(); ++i) {
        const Length own = i < rising.size() ? round_down_to(rising[i], grid) : Length();
        if (own < set.ranges[i].least || own > set.ranges[i].most) {
            return false;
        }
    }
    return true;
}

bool has_division(const JointNeeds& needs, std::size_t edge, const DivisionSet& set) {
    Length least, most;
    bool any_in_each = true;
    for (const LengthRange& range : set.ranges) {
        const Length own = std::max({range.least, needs.sliver, needs.grid});
        any_in_each = any_in_each && own <= range.most;
        least += own;
        most += range.most;
    }
    for (std::size_t c = 0; c < needs.edges[edge].size(); ++c) {
        const NeedClass& own = needs.edges[edge][c];
        if ((set.classes >> c & 1U) == 0) {
            continue;
        }
        const Length metal = round_down_to(own.metal, needs.grid);
        const bool makes_up =
            set.ranges.empty() || (any_in_each && least <= metal && metal <= most);
        if ((own.pieces > 0 && makes_up) ||
            std::any_of(own.ways.begin(), own.ways.end(), [&](const std::vector<Length>& way) {
                return in_ranges(set, way, needs.grid);
            })) {
            return true;
        }
    }
    return false;
}

}  // namespace hemline
