// The moves from a joint plan to a better one: a single edge is turned, balanced or divided again.
#include <algorithm>

#include "engine/joint/gaps.h"
#include "engine/joint/joint_search.h"

namespace hemline {

/// Changes single edges of a plan to another division that looks no worse, while that saves sticks.
void JointSearch::try_other_options(std::size_t from, std::int64_t wanted) {
    Kept best = kept_[from];
    for (std::size_t e = 0; e < ways_.size(); ++e) {
        for (std::size_t o = 0; o < ways_[e].options.size(); ++o) {
            if (best.plan.sticks <= wanted || effort_.is_spent()) {
                return;
            }
            const EdgeOption& option = ways_[e].options[o];
            const EdgeOption& own = ways_[e].options[best.chosen[e]];
            const bool no_worse =
                option.extra_laps <= own.extra_laps &&
                (option.balance != Balance::unbalanced || own.balance == Balance::unbalanced);
            if (o == best.chosen[e] || !no_worse) {
                continue;
            }
            Chosen chosen = best.chosen;
            chosen[e] = o;
            if (try_chosen(chosen)) {
                best = kept_.back();
            }
        }
    }
}

/// Balances edges where that costs nothing, in the most unbalanced plans first.
void JointSearch::try_balancing() {
    std::vector<Kept> from = kept_;
    for (Kept& best : from) {
        for (std::size_t e = ways_.size(); e-- > 0 && !effort_.is_spent();) {
            if (ways_[e].options.empty() ||
                ways_[e].options[best.chosen[e]].balance != Balance::unbalanced) {
                continue;
            }
            for (const std::size_t even : ways_[e].even) {
                Chosen chosen = best.chosen;
                chosen[e] = even;
                if (ways_[e].options[even].extra_laps <=
                        ways_[e].options[best.chosen[e]].extra_laps &&
                    try_chosen(chosen) && kept_.back().plan.sticks <= best.plan.sticks) {
                    best = kept_.back();
                    break;
                }
            }
        }
    }
}

/// Divides single free edges to fit what the others leave, while that saves sticks or looks better.
void JointSearch::try_gaps() {
    // Every edge looks at all pieces, and that is not counted as steps: skip it for so large a job.
    constexpr std::int64_t looks_most = 5'000'000;
    if (static_cast<std::int64_t>(ways_.size()) * pieces_ > looks_most) {
        return;
    }
    std::set<Chosen> looked_at;
    for (std::size_t i = 0; i < kept_.size() && !effort_.is_spent();) {
        if (!looked_at.insert(kept_[i].chosen).second || !kept_[i].plan.cutting.missing.empty()) {
            ++i;
            continue;
        }
        const Kept from = kept_[i];
        i = 0;  // the new plan may beat earlier plans, or save more with another edge
        for (std::size_t e = 0; e < ways_.size() && !effort_.is_spent(); ++e) {
            if (!ways_[e].is_free || ways_[e].is_fixed || ways_[e].options.empty()) {
                continue;
            }
            const std::int64_t least = ways_[e].fulls + 1;
            for (std::int64_t pieces = least; pieces <= least + 1; ++pieces) {
                auto option = divide_by_gaps(job_, from.plan, e, pieces);
                if (!option) {
                    continue;
                }
                Chosen chosen = from.chosen;
                chosen[e] = add_option(ways_[e], std::move(*option));
                try_chosen(chosen);
            }
        }
    }
}

}  // namespace hemline
