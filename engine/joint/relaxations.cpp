#include "engine/joint/relaxations.h"

#include <algorithm>

namespace hemline {

namespace {

/// With more laps there are too many ways to share them out.
constexpr std::int64_t shared_most = 12;

bool alike(const JointEdge& a, const JointEdge& b) {
    return a.rule.edge == b.rule.edge && a.rule.allowance_first == b.rule.allowance_first &&
           a.rule.allowance_last == b.rule.allowance_last && a.rule.stock == b.rule.stock &&
           a.rule.lap == b.rule.lap && a.rule.sliver == b.rule.sliver &&
           a.rule.grid == b.rule.grid && a.looks == b.looks && a.keeps == b.keeps && a.cut == b.cut;
}

/// Chooses how many edges of each kind run out and how many take one more lap.
class Chooser {
  public:
    Chooser(const std::vector<EdgeWays>& ways, const std::vector<std::vector<std::size_t>>& alike,
            std::int64_t most, const std::function<bool(const Relaxation&)>& visit)
        : ways_(ways), alike_(alike), left_(most), visit_(visit) {
        for (const EdgeWays& own : ways) {
            const bool asked = !own.is_free || own.counts || own.is_fixed;
            relaxation_.ask.push_back(asked ? Ask::even : Ask::anything);
        }
        run_outs_from_.assign(alike.size() + 1, 0);
        for (std::size_t k = alike.size(); k-- > 0;) {
            run_outs_from_[k] = run_outs_from_[k + 1] + run_outs_in(k);
        }
    }

    /// `laps` on as many edges with small ends, `run_outs` edges that run out. False: stopped.
    bool choose(const std::vector<std::int64_t>& groups, std::int64_t laps, std::int64_t run_outs) {
        relaxation_.groups = groups;
        return choose_from(0, laps, run_outs);
    }

  private:
    [[nodiscard]] std::int64_t run_outs_in(std::size_t kind) const {
        const EdgeWays& own = ways_[alike_[kind].front()];
        return own.is_free && own.counts ? static_cast<std::int64_t>(alike_[kind].size()) : 0;
    }

    /// An edge that runs out never needs more sticks than an even edge, so as many run out as are
    /// allowed.
    bool choose_from(std::size_t kind, std::int64_t laps, std::int64_t run_outs) {
        if (kind == alike_.size()) {
            return laps > 0 || (left_-- > 0 && visit_(relaxation_));
        }
        const std::vector<std::size_t>& edges = alike_[kind];
        const auto count = static_cast<std::int64_t>(edges.size());
        const bool has_more = !ways_[edges.front()].even_more.empty();
        const bool runs_out = run_outs_in(kind) > 0;
        const Ask before = relaxation_.ask[edges.front()];
        bool going = true;
        for (std::int64_t more = 0; going && more <= (has_more ? std::min(laps, count) : 0);
             ++more) {
            const std::int64_t out_most = runs_out ? std::min(run_outs, count - more) : 0;
            // The kinds after this one cannot run out more often than they have edges.
            const std::int64_t out_least =
                std::max(std::int64_t{0}, std::min(run_outs - run_outs_from_[kind + 1], out_most));
            for (std::int64_t out = out_most; going && out >= out_least; --out) {
                for (std::int64_t i = 0; i < count; ++i) {
                    relaxation_.ask[edges[static_cast<std::size_t>(i)]] = i < more ? Ask::even_more
                                                                          : i < more + out
                                                                              ? Ask::anything
                                                                              : before;
                }
                going = choose_from(kind + 1, laps - more, run_outs - out);
            }
        }
        for (const std::size_t edge : edges) {
            relaxation_.ask[edge] = before;
        }
        return going;
    }

    const std::vector<EdgeWays>& ways_;
    const std::vector<std::vector<std::size_t>>& alike_;
    std::int64_t left_;
    const std::function<bool(const Relaxation&)>& visit_;
    Relaxation relaxation_;
    std::vector<std::int64_t> run_outs_from_;
};

}  // namespace

std::vector<std::vector<std::size_t>> alike_edges(const JointJob& job) {
    std::vector<std::vector<std::size_t>> kinds;
    for (std::size_t e = 0; e < job.edges.size(); ++e) {
        auto kind = std::find_if(kinds.begin(), kinds.end(), [&](const auto& edges) {
            return alike(job.edges[edges.front()], job.edges[e]);
        });
        if (kind == kinds.end()) {
            kinds.emplace_back();
            kind = kinds.end() - 1;
        }
        kind->push_back(e);
    }
    return kinds;
}

bool every_relaxation(const std::vector<EdgeWays>& ways,
                      const std::vector<std::vector<std::size_t>>& alike, Allowed allowed,
                      std::int64_t laps_least, std::int64_t most,
                      const std::function<bool(const Relaxation&)>& visit) {
    Chooser chooser(ways, alike, most, visit);
    const std::int64_t laps = allowed.extra_laps - laps_least;
    for (std::int64_t small_ends = 0; small_ends <= laps; ++small_ends) {
        const std::int64_t others = laps - small_ends;
        for (std::int64_t shared = 0; shared <= others; ++shared) {
            if (shared > shared_most) {
                return false;
            }
            for (const auto& groups : groups_of(shared)) {
                if (!chooser.choose(groups, small_ends, allowed.unbalanced + others)) {
                    return false;
                }
            }
        }
    }
    return true;
}

}  // namespace hemline
