#include "engine/joint/joint_search.h"

#include <algorithm>
#include <limits>
#include <tuple>

#include "engine/joint/split.h"

namespace hemline {

namespace {

/// The most steps for a relaxation that is one of many.
constexpr std::int64_t steps_of_one = 300'000;
/// For a single relaxation, a large part of all steps.
constexpr std::int64_t parts_of_the_effort = 4;
/// For all relaxations of a bound together.
constexpr std::int64_t parts_of_looking = 16;
/// The most plans side by side: a large job has room for fewer, and nobody looks through more.
std::int64_t plans_most(std::int64_t pieces) {
    return std::max(std::int64_t{16}, 500'000 / std::max(pieces, std::int64_t{1}));
}
/// With more ways to share out laps, only the total metal bounds.
constexpr std::size_t shares_most = 30;
constexpr std::int64_t relaxations_most = 3000;
/// Nobody accepts more extra laps than this to save sticks, and beyond it only the total metal
/// bounds.
constexpr std::int64_t laps_more_most = 8;

}  // namespace

JointSearch::JointSearch(const JointJob& job, const CuttingEffort& effort)
    : job_(job),
      effort_(effort),
      ways_(ways_of(job)),
      alike_(alike_edges(job)),
      can_relax_(can_relax(job, ways_)) {
    for (const EdgeWays& ways : ways_) {
        laps_least_ += ways.even.empty() ? 0 : ways.options[ways.even.front()].extra_laps;
        counted_ += ways.is_free && ways.counts ? 1 : 0;
        pieces_ += ways.options.empty()
                       ? 0
                       : static_cast<std::int64_t>(ways.options.front().pieces.size());
    }
}

bool JointSearch::try_chosen(const Chosen& chosen) {
    if (!tried_.insert(chosen).second) {
        return false;
    }
    JointPlan plan = cut_chosen(job_, ways_, chosen, steps_of_one, effort_);
    const auto beats = [&](const Kept& kept) { return as_good(kept.plan, plan); };
    if (std::any_of(kept_.begin(), kept_.end(), beats)) {
        return false;
    }
    const auto is_beaten = [&](const Kept& kept) { return as_good(plan, kept.plan); };
    kept_.erase(std::remove_if(kept_.begin(), kept_.end(), is_beaten), kept_.end());
    const auto is_no_dearer = [&](const Kept& kept) { return kept.plan.sticks <= plan.sticks; };
    const bool has_room = static_cast<std::int64_t>(kept_.size()) < plans_most(pieces_);
    if (!has_room && std::any_of(kept_.begin(), kept_.end(), is_no_dearer)) {
        return false;
    }
    kept_.push_back({std::move(plan), chosen});
    return true;
}

void JointSearch::try_relaxed(const Relaxed& relaxed) {
    const auto chosen = realise(relaxed, job_, ways_);
    if (!chosen) {
        return;
    }
    try_chosen(*chosen);
    const auto kept = std::find_if(kept_.begin(), kept_.end(),
                                   [&](const Kept& k) { return k.chosen == *chosen; });
    if (kept != kept_.end() && turned_.insert(*chosen).second) {
        try_other_options(static_cast<std::size_t>(kept - kept_.begin()), relaxed.bound.sticks);
    }
}

std::optional<std::int64_t> JointSearch::fewest(Allowed allowed) const {
    std::optional<std::int64_t> sticks;
    for (const Kept& kept : kept_) {
        if (kept.plan.extra_laps <= allowed.extra_laps &&
            kept.plan.unbalanced <= allowed.unbalanced && kept.plan.cutting.missing.empty()) {
            sticks = std::min(sticks.value_or(kept.plan.sticks), kept.plan.sticks);
        }
    }
    return sticks;
}

const AllowedBound& JointSearch::bound_of_free(std::int64_t extra_laps) {
    const auto known = of_free_.find(extra_laps);
    if (known != of_free_.end()) {
        return known->second;
    }
    AllowedBound least;
    least.sticks = metal_bound(job_, ways_, laps_least_);
    least.from = "metal in all";
    const std::int64_t laps = std::max(std::int64_t{0}, extra_laps - laps_least_);
    std::vector<std::vector<std::int64_t>> shares;
    for (std::int64_t shared = 0; shared <= laps && shares.size() <= shares_most; ++shared) {
        const auto more = groups_of(shared);
        shares.insert(shares.end(), more.begin(), more.end());
    }
    if (can_relax_ && shares.size() <= shares_most) {
        Relaxation relaxation;
        for (const EdgeWays& ways : ways_) {
            relaxation.ask.push_back(ways.is_free || laps > 0 ? Ask::anything : Ask::even);
        }
        AllowedBound found;
        std::vector<JointBound> all;
        for (const auto& groups : shares) {
            relaxation.groups = groups;
            const std::int64_t steps =
                shares.size() == 1 ? effort_.left() / parts_of_the_effort : steps_of_one;
            const Relaxed relaxed = relax(job_, ways_, relaxation, steps, effort_);
            if (all.empty() || relaxed.bound.sticks < found.sticks) {
                found.sticks = relaxed.bound.sticks;
                found.from = relaxed.plan.bound_from;
            }
            all.push_back(relaxed.bound);
            try_relaxed(relaxed);
        }
        found.relaxed = kept(std::move(all));
        if (found.sticks > least.sticks) {
            least = std::move(found);
        }
    }
    return of_free_.emplace(extra_laps, std::move(least)).first->second;
}

AllowedBound JointSearch::look_through(Allowed allowed) {
    AllowedBound found;
    std::vector<JointBound> all;
    const std::int64_t kept_back = effort_.left() - effort_.left() / parts_of_looking;
    const auto visit = [&](const Relaxation& relaxation) {
        const bool is_first = allowed.extra_laps == laps_least_ && allowed.unbalanced == 0;
        const std::int64_t steps = is_first ? effort_.left() / parts_of_the_effort : steps_of_one;
        const Relaxed relaxed = relax(job_, ways_, relaxation, steps, effort_);
        if (all.empty() || relaxed.bound.sticks < found.sticks) {
            found.sticks = relaxed.bound.sticks;
            found.from = relaxed.plan.bound_from;
        }
        all.push_back(relaxed.bound);
        if (relaxed.bound.sticks < fewest(allowed).value_or(relaxed.bound.sticks + 1)) {
            try_relaxed(relaxed);
        }
        return is_first || effort_.left() > kept_back;
    };
    // A lap no shorter than a sliver leaves room for small ends with two more laps.
    const bool small_ends_only_once =
        allowed.extra_laps <= laps_least_ + 1 ||
        std::all_of(job_.edges.begin(), job_.edges.end(),
                    [](const JointEdge& e) { return e.rule.sliver > e.rule.lap; });
    const bool looked =
        small_ends_only_once &&
        every_relaxation(ways_, alike_, allowed, laps_least_, relaxations_most, visit);
    if (!looked) {
        return {};
    }
    found.relaxed = kept(std::move(all));
    return found;
}

std::shared_ptr<const std::vector<JointBound>> JointSearch::kept(std::vector<JointBound> relaxed) {
    std::int64_t bytes = 0;
    for (const JointBound& bound : relaxed) {
        bytes += static_cast<std::int64_t>(sizeof(JointBound) +
                                           bound.relaxed.demand.size() *
                                               (sizeof(CutDemand) + sizeof(std::int64_t)));
    }
    if (bytes > table_bytes_most / 4 - kept_bytes_) {
        return nullptr;
    }
    kept_bytes_ += bytes;
    return std::make_shared<const std::vector<JointBound>>(std::move(relaxed));
}

const AllowedBound& JointSearch::bound(Allowed allowed) {
    const std::pair key{allowed.extra_laps, allowed.unbalanced};
    const auto known = bounds_.find(key);
    if (known != bounds_.end()) {
        return known->second;
    }
    AllowedBound best = bound_of_free(allowed.extra_laps);
    const bool nothing_free =
        laps_least_ == allowed.extra_laps &&
        std::none_of(ways_.begin(), ways_.end(), [](const EdgeWays& ways) { return ways.is_free; });
    const auto is_open = [&] { return fewest(allowed).value_or(best.sticks + 1) > best.sticks; };
    const auto take = [&](AllowedBound found) {
        const bool is_too_large = best.is_too_large || found.is_too_large;
        if (found.sticks > best.sticks) {
            best = std::move(found);
        }
        best.is_too_large = is_too_large;
    };
    if (is_open()) {
        take(branch(allowed));
    }
    if (is_open() && (can_relax_ || nothing_free)) {
        take(look_through(allowed));
    }
    return bounds_.emplace(key, std::move(best)).first->second;
}

/// Every edge by its first even way, or by its first way that runs out where it has one.
Chosen JointSearch::all_by(Ask ask) const {
    Chosen chosen;
    for (const EdgeWays& ways : ways_) {
        const bool runs_out = ask == Ask::anything && !ways.run_out.empty();
        chosen.push_back(runs_out            ? ways.run_out.front()
                         : ways.even.empty() ? 0
                                             : ways.even.front());
    }
    return chosen;
}

void JointSearch::find_even() {
    try_chosen(all_by(Ask::even));
    bound({laps_least_, 0});
}

/// Run out wherever an edge is free to, with more and more laps while they can save a stick.
void JointSearch::find_fewest_sticks() {
    try_chosen(all_by(Ask::anything));
    const std::int64_t kept_back = effort_.left() / 2;
    const std::int64_t laps_most = laps_least_ + (can_relax_ ? laps_more_most : 0);
    for (std::int64_t laps = laps_least_; laps <= laps_most && effort_.left() > kept_back; ++laps) {
        bound_of_free(laps);
        const auto sticks = fewest({laps, counted_});
        if (sticks && *sticks <= metal_bound(job_, ways_, laps + 1)) {
            break;
        }
    }
    try_balancing();
}

/// One more unbalanced edge at a time, until no further edge would save a stick.
void JointSearch::look_at_laps(std::int64_t extra_laps) {
    const std::int64_t least = bound_of_free(extra_laps).sticks;
    for (std::int64_t unbalanced = 0; unbalanced <= counted_ && !effort_.is_spent(); ++unbalanced) {
        const auto sticks = fewest({extra_laps, unbalanced});
        if (sticks && *sticks <= least) {
            return;
        }
        bound({extra_laps, unbalanced});
    }
}

void JointSearch::find_first(Prefer prefer) {
    find_even();
    if (prefer != Prefer::sticks) {
        return;
    }
    find_fewest_sticks();
    // The fewest laps, then the fewest unbalanced edges, with which the fewest sticks are reached.
    const auto sticks = fewest({std::numeric_limits<std::int64_t>::max(), counted_});
    std::int64_t laps = laps_least_;
    while (sticks && laps <= laps_least_ + laps_more_most &&
           fewest({laps, counted_}).value_or(*sticks + 1) > *sticks) {
        ++laps;
    }
    for (std::int64_t unbalanced = 0; sticks && !effort_.is_spent(); ++unbalanced) {
        const auto own = fewest({laps, unbalanced});
        if (unbalanced >= counted_ || (own && *own <= *sticks)) {
            return;
        }
        bound({laps, unbalanced});
    }
}

void JointSearch::find_choices() {
    find_even();
    look_at_laps(laps_least_);
    find_fewest_sticks();
    const std::int64_t laps_most = laps_least_ + (can_relax_ ? laps_more_most : 0);
    for (std::int64_t laps = laps_least_; laps <= laps_most && !effort_.is_spent(); ++laps) {
        look_at_laps(laps);
        const auto sticks = fewest({laps, 0});
        if (sticks && *sticks <= metal_bound(job_, ways_, laps + 1)) {
            break;
        }
    }
    try_gaps();
    try_balancing();
}

std::vector<JointPlan> JointSearch::plans() {
    // Working out a bound may find a plan that beats others: repeat until every plan left has its
    // bound.
    for (std::size_t i = 0; i < kept_.size();) {
        const Allowed allowed{kept_[i].plan.extra_laps, kept_[i].plan.unbalanced};
        const bool known = bounds_.count({allowed.extra_laps, allowed.unbalanced}) > 0;
        bound(allowed);
        i = known ? i + 1 : 0;
    }
    std::vector<JointPlan> plans;
    for (const Kept& kept : kept_) {
        const AllowedBound& own = bound({kept.plan.extra_laps, kept.plan.unbalanced});
        JointPlan plan = kept.plan;
        plan.lower_bound = own.sticks;
        plan.bound_from = own.from;
        plan.bounds = own.relaxed ? *own.relaxed : std::vector<JointBound>{};
        plan.parts = own.parts;
        const bool whole = plan.cutting.missing.empty() &&
                           std::none_of(plan.divisions.begin(), plan.divisions.end(),
                                        [](const EdgeOption& o) { return o.pieces.empty(); });
        plan.proved = whole && plan.sticks == plan.lower_bound;
        plan.is_too_large = !plan.proved && (own.is_too_large || plan.cutting.is_too_large);
        plans.push_back(std::move(plan));
    }
    std::sort(plans.begin(), plans.end(), [](const JointPlan& a, const JointPlan& b) {
        return std::tie(a.extra_laps, a.unbalanced, a.sticks) <
               std::tie(b.extra_laps, b.unbalanced, b.sticks);
    });
    return plans;
}

}  // namespace hemline
