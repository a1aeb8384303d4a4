#include "engine/plan/joint_split.h"

#include <algorithm>
#include <map>

namespace hemline {

namespace {

struct Part {
    std::size_t edge = 0;
    bool is_rest = false;
    Length length;
};

/// The cuts each rest is split into, by edge; the last of them is what is left.
using Splits = std::map<std::size_t, std::vector<Length>>;

class Splitter {
  public:
    Splitter(const JointJob& job, Splits& splits) : job_(job), splits_(splits) {}

    /// Lays the parts on `sticks` sticks with one split from each stick to the next.
    bool split(const std::vector<Part>& parts, std::int64_t sticks) {
        const Length stick = job_.stock.front().length + job_.kerf;
        Length all;
        for (const Part& part : parts) {
            all += part.length + job_.kerf;
        }
        if (all <= stick) {
            return true;
        }
        if (sticks == 1 || parts.size() > parts_most) {
            return false;
        }
        for (std::size_t e = 0; e < parts.size(); ++e) {
            if (!parts[e].is_rest) {
                continue;
            }
            for (std::uint32_t with = 0; with < (1U << parts.size()); ++with) {
                if ((with >> e & 1U) == 0 && --tries_left_ > 0 &&
                    split_at(parts, e, with, sticks, stick)) {
                    return true;
                }
            }
        }
        return false;
    }

  private:
    static constexpr std::size_t parts_most = 14;

    /// Fills a stick with the parts of `with` and as much of part `e` as has room.
    bool split_at(const std::vector<Part>& parts, std::size_t e, std::uint32_t with,
                  std::int64_t sticks, Length stick) {
        const RunRule& rule = job_.edges[parts[e].edge].rule;
        const Length both = parts[e].length + rule.lap;
        Length room = stick - job_.kerf;
        std::vector<Part> others;
        for (std::size_t i = 0; i < parts.size(); ++i) {
            if (with >> i & 1U) {
                room -= parts[i].length + job_.kerf;
            } else if (i != e) {
                others.push_back(parts[i]);
            }
        }
        const Length cut = round_down_to(std::min(room, both - rule.sliver), rule.grid);
        if (cut < rule.sliver || cut <= Length()) {
            return false;
        }
        others.push_back({parts[e].edge, true, both - cut});
        std::vector<Length>& cuts = splits_[parts[e].edge];
        cuts.push_back(cut);
        if (split(others, sticks - 1)) {
            return true;
        }
        splits_[parts[e].edge].pop_back();
        return false;
    }

    const JointJob& job_;
    Splits& splits_;
    int tries_left_ = 20'000;
};

/// Adds the division of an edge with its rest split at these cuts.
std::optional<std::size_t> add_split(const JointEdge& edge, EdgeWays& ways,
                                     const std::vector<Length>& splits) {
    std::vector<Length> cuts(static_cast<std::size_t>(ways.fulls), edge.rule.stock);
    Length left = ways.rest;
    for (const Length cut : splits) {
        cuts.push_back(cut);
        left += edge.rule.lap - cut;
    }
    cuts.push_back(left);
    EdgeOption option = option_of_cuts(edge.rule, cuts);
    for (const Division& piece : option.pieces) {
        if (piece.cut < edge.rule.sliver || piece.cut > edge.rule.stock ||
            piece.covers <= Length()) {
            return std::nullopt;
        }
    }
    for (std::size_t i = 0; i < ways.options.size(); ++i) {
        if (ways.options[i].pieces == option.pieces) {
            return i;
        }
    }
    ways.options.push_back(std::move(option));
    return ways.options.size() - 1;
}

std::size_t unsplit(const EdgeWays& ways, Ask ask) {
    switch (ask) {
        case Ask::even_more:
            return ways.even_more.front();
        case Ask::anything:
            return ways.run_out.empty() ? ways.even.front() : ways.run_out.front();
        case Ask::even:
            break;
    }
    return ways.even.front();
}

}  // namespace

std::optional<Chosen> realise(const Relaxed& relaxed, const JointJob& job,
                              std::vector<EdgeWays>& ways) {
    Splits splits;
    for (const Layout& layout : relaxed.plan.layouts) {
        if (layout.stock < job.stock.size()) {
            continue;
        }
        std::vector<Part> parts;
        for (const std::size_t cut : layout.cuts) {
            const RelaxedPiece& from = relaxed.from[cut];
            const bool splits_well = from.is_rest && ways[from.edge].is_free;
            parts.push_back({from.edge, splits_well, relaxed.job.demand[cut].length});
        }
        const std::int64_t sticks = relaxed.of.groups[layout.stock - job.stock.size()];
        if (!Splitter(job, splits).split(parts, sticks)) {
            return std::nullopt;
        }
    }
    Chosen chosen;
    for (std::size_t e = 0; e < ways.size(); ++e) {
        if (ways[e].options.empty()) {
            chosen.push_back(0);
            continue;
        }
        const auto split = splits.find(e);
        if (split == splits.end() || split->second.empty()) {
            chosen.push_back(unsplit(ways[e], relaxed.of.ask[e]));
            continue;
        }
        const auto option = add_split(job.edges[e], ways[e], split->second);
        if (!option) {
            return std::nullopt;
        }
        chosen.push_back(*option);
    }
    return chosen;
}

}  // namespace hemline
