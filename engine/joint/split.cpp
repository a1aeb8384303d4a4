#include "engine/joint/split.h"

#include <algorithm>
#include <map>

namespace hemline {

namespace {

struct Part {
    std::size_t edge = 0;
    bool is_rest = false;
    Length length;
};

/// The cuts that each rest is split into, by edge; the last is what is left.
using Splits = std::map<std::size_t, std::vector<Length>>;

class Splitter {
  public:
    Splitter(const JointJob& job, Splits& splits) : job_(job), splits_(splits) {}

    /// Lays the parts on `sticks` sticks, with a single split from each stick to the next.
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
        Length cut = round_down_to(std::min(room, both - rule.sliver), rule.grid);
        Length left = both - cut;
        if (cut < rule.sliver) {
            // A rest too short for two pieces takes from a full stick of its edge.
            cut = std::max(rule.sliver, round_down_to(std::min(room, both), rule.grid));
            left = std::max(both - cut, rule.sliver);
        }
        if (cut > room || cut <= Length() || left <= Length()) {
            return false;
        }
        others.push_back({parts[e].edge, true, left});
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
    cuts.push_back(std::max(left, edge.rule.sliver));
    if (left < edge.rule.sliver && !cuts.empty()) {
        cuts.front() -= edge.rule.sliver - left;
    }
    EdgeOption option = option_of_cuts(edge.rule, cuts);
    for (const Division& piece : option.pieces) {
        if (piece.cut < edge.rule.sliver || piece.cut > edge.rule.stock ||
            piece.covers <= Length()) {
            return std::nullopt;
        }
    }
    return add_option(ways, std::move(option));
}

/// Turns even edges so that the longer end has room on its stick of the relaxed plan.
class Turner {
  public:
    Turner(const Relaxed& relaxed, const JointJob& job)
        : relaxed_(relaxed), first_demand_(job.edges.size(), 0), stick_(relaxed.job.demand.size()) {
        for (std::size_t d = relaxed.from.size(); d-- > 0;) {
            first_demand_[relaxed.from[d].edge] = d;
        }
        for (std::size_t l = 0; l < relaxed.plan.layouts.size(); ++l) {
            const Layout& layout = relaxed.plan.layouts[l];
            Length room = relaxed.job.stock[layout.stock].length + job.kerf;
            for (const std::size_t cut : layout.cuts) {
                stick_[cut] = l;
                room -= relaxed.job.demand[cut].length + job.kerf;
            }
            room_.push_back(room);
        }
    }

    /// The first of these options that fits where the relaxed plan laid its pieces; if none fits,
    /// the first.
    std::size_t turned(const JointEdge& edge, const EdgeWays& ways, std::size_t index,
                       const std::vector<std::size_t>& options) {
        if (relaxed_.plan.missing.empty()) {
            for (const std::size_t option : options) {
                if (fits(edge, ways.options[option], index)) {
                    return option;
                }
            }
        }
        return options.front();
    }

  private:
    /// Takes the room when it fits.
    bool fits(const JointEdge& edge, const EdgeOption& option, std::size_t index) {
        const std::vector<Length> before = room_;
        std::size_t demand = first_demand_[index];
        bool has_room = true;
        for (std::size_t i = 0; i < option.pieces.size(); ++i) {
            if (i < edge.cut.size() && edge.cut[i]) {
                continue;
            }
            Length& room = room_[stick_[demand]];
            room -= option.pieces[i].cut - relaxed_.job.demand[demand].length;
            has_room = has_room && room >= Length();
            ++demand;
        }
        if (!has_room) {
            room_ = before;
        }
        return has_room;
    }

    const Relaxed& relaxed_;
    std::vector<std::size_t> first_demand_, stick_;
    std::vector<Length> room_;  ///< left on each stick
};

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
    Turner turner(relaxed, job);
    for (std::size_t e = 0; e < ways.size(); ++e) {
        if (ways[e].options.empty()) {
            chosen.push_back(0);
            continue;
        }
        const auto split = splits.find(e);
        if (split == splits.end() || split->second.empty()) {
            const EdgeWays& own = ways[e];
            const Ask ask = own.is_fixed ? Ask::even : relaxed.of.ask[e];
            if (ask == Ask::anything) {
                chosen.push_back(own.run_out.empty() ? own.even.front() : own.run_out.front());
            } else {
                chosen.push_back(turner.turned(job.edges[e], own, e,
                                               ask == Ask::even_more ? own.even_more : own.even));
            }
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
