// The sticks of a plan: offcuts of a pool first, then new sticks, each cut longest piece first.
#include <algorithm>
#include <map>
#include <utility>

#include "engine/cutting/cutting.h"
#include "engine/plan/plan_parts.h"
#include "engine/words/path_text.h"

namespace hemline {

namespace {

/// Where an uncut piece stands in the plan.
struct Place {
    std::size_t run = 0, piece = 0;
};

struct Pool {
    std::string name, trim;
    std::vector<Place> places;
};

const Trim* trim_of(const Edge& edge, TrimRole role, const Catalogue& catalogue) {
    return role == TrimRole::main ? main_trim(edge, catalogue)
                                  : catalogue.default_for(edge.kind, role);
}

/// The pools of all runs, in the order of the runs.
std::vector<Pool> pools_of(const Job& job, const Catalogue& catalogue, const Plan& plan) {
    std::vector<Pool> pools;
    std::map<std::string, std::size_t> known;
    for (std::size_t r = 0; r < plan.runs.size(); ++r) {
        const Run& run = plan.runs[r];
        const EdgeWork* work = job.find(run.edge);
        const Trim* trim = catalogue.find(run.trim);
        require(work != nullptr && trim != nullptr, "a run has its edge and its trim");
        std::string name = pool_of(work->edge, *trim);
        const auto [place, is_new] = known.emplace(name, pools.size());
        if (is_new) {
            pools.push_back({std::move(name), run.trim, {}});
        }
        for (std::size_t p = 0; p < run.pieces.size(); ++p) {
            if (!run.pieces[p].is_cut) {
                pools[place->second].places.push_back({r, p});
            }
        }
    }
    return pools;
}

/// The pool of each trim of each edge, each worked out once.
class PoolNames {
  public:
    PoolNames(const Job& job, const Catalogue& catalogue) : job_(job), catalogue_(catalogue) {}

    /// Empty where the job has no such edge, or the edge no such trim.
    const std::string& of(const std::string& edge, TrimRole role) {
        const auto [name, is_new] = names_.try_emplace({edge, role});
        if (is_new) {
            const EdgeWork* work = job_.find(edge);
            const Trim* trim = work == nullptr ? nullptr : trim_of(work->edge, role, catalogue_);
            name->second = trim == nullptr ? std::string() : pool_of(work->edge, *trim);
        }
        return name->second;
    }

  private:
    const Job& job_;
    const Catalogue& catalogue_;
    std::map<std::pair<std::string, TrimRole>, std::string> names_;
};

}  // namespace

Stocks::Stocks(const Job& job, const Catalogue& catalogue) : job_(job) {
    PoolNames names(job, catalogue);
    for (const Offcut& offcut : job.offcuts) {
        const std::string& pool = names.of(offcut.edge, offcut.role);
        if (!pool.empty() && offcut.length > Length() && offcut.length <= longest_readable()) {
            offcuts_[pool].push_back(&offcut);
        }
    }
    for (auto& [pool, offcuts] : offcuts_) {
        // Shortest first, so that the longer ones stay whole.
        std::stable_sort(offcuts.begin(), offcuts.end(),
                         [](const Offcut* a, const Offcut* b) { return a->length < b->length; });
    }
    // The last event about anything in the pool decides.
    for (const SupplySaid& said : job.supplies) {
        if (const std::string& pool = names.of(said.edge, said.role); !pool.empty()) {
            supplies_[pool] = said.supply;
        }
    }
}

PoolStock Stocks::of(const std::string& pool) const {
    PoolStock stock;
    const auto said = supplies_.find(pool);
    const bool only_on_hand = said != supplies_.end() && said->second == Supply::on_hand_only;
    const auto add_new = [&](Length length) {
        stock.lengths.push_back(
            {length, only_on_hand ? std::optional<std::int64_t>(0) : std::nullopt, false});
        stock.on_hand.push_back(nullptr);
    };
    add_new(job_.practice.stock);
    for (const Length length : job_.stock_shorter) {
        add_new(length);
    }
    const auto offcuts = offcuts_.find(pool);
    for (const Offcut* offcut :
         offcuts == offcuts_.end() ? std::vector<const Offcut*>{} : offcuts->second) {
        stock.lengths.push_back({offcut->length, offcut->count, true});
        stock.on_hand.push_back(offcut);
    }
    return stock;
}

namespace {

CuttingJob cutting_job(const Pool& pool, const PoolStock& stock, const Plan& plan,
                       const Practice& practice) {
    CuttingJob cutting;
    cutting.kerf = practice.kerf;
    cutting.stock = stock.lengths;
    for (const Place& place : pool.places) {
        cutting.demand.push_back({plan.runs[place.run].pieces[place.piece].cut, 1});
    }
    return cutting;
}

/// Lays the pieces of a layout along a new stick of the plan.
void lay(const Layout& layout, const CuttingJob& cutting, const Pool& pool, const PoolStock& stock,
         Plan& plan) {
    PlannedStick stick;
    stick.number = static_cast<int>(plan.sticks.size()) + 1;
    stick.pool = pool.name;
    stick.trim = pool.trim;
    stick.length = cutting.stock[layout.stock].length;
    if (const Offcut* offcut = stock.on_hand[layout.stock]) {
        stick.offcut = offcut->left_by;
    }
    for (const std::size_t cut : layout.cuts) {
        const Place& place = pool.places[cut];
        PlannedPiece& piece = plan.runs[place.run].pieces[place.piece];
        piece.source = FromStick{stick.number, stick.used};
        stick.used = std::min(stick.used + piece.cut + cutting.kerf, stick.length);
    }
    stick.left = stick.length - stick.used;
    plan.sticks.push_back(std::move(stick));
}

/// The pieces for which there is no stick, edge by edge.
PlanProblem without_sticks(const Pool& pool, const PoolStock& stock, const Plan& plan,
                           const Catalogue& catalogue) {
    constexpr std::int64_t pieces_named_most = 40;
    std::vector<Text> pieces;
    std::int64_t missing = 0;
    for (const Place& place : pool.places) {
        const Run& run = plan.runs[place.run];
        if (!run.pieces[place.piece].source) {
            ++missing;
            if (missing <= pieces_named_most) {
                pieces.emplace_back(run.edge + "/" +
                                    std::to_string(run.pieces[place.piece].number));
            }
        }
    }
    if (missing > pieces_named_most) {
        pieces.push_back(say("{1} more", missing - pieces_named_most));
    }
    const bool only_on_hand = stock.lengths.front().supply.has_value();
    const Trim* const trim = catalogue.find(pool.trim);
    return {plan.runs[pool.places.front().run].edge, "stock", Severity::problem,
            say("No stick for these pieces of {1}: {2}.",
                trim == nullptr ? spaced(pool.trim) : say(trim->name), joined(pieces, ", ")),
            only_on_hand ? say("Count more sticks on hand, or let new ones be had.")
                         : say("Set a longer stock.")};
}

}  // namespace

void plan_sticks(const Job& job, const Catalogue& catalogue, const CuttingEffort& effort,
                 Plan& plan) {
    const Stocks stocks(job, catalogue);
    for (const Pool& pool : pools_of(job, catalogue, plan)) {
        const PoolStock stock = stocks.of(pool.name);
        const CuttingJob cutting = cutting_job(pool, stock, plan, job.practice);
        const CuttingPlan cut = plan_cutting(cutting, effort);
        for (const Layout& layout : cut.layouts) {
            for (std::int64_t time = 0; time < layout.times; ++time) {
                lay(layout, cutting, pool, stock, plan);
            }
        }
        if (!cut.missing.empty()) {
            plan.problems.push_back(without_sticks(pool, stock, plan, catalogue));
        }
        plan.proofs.push_back({pool.trim, pool.name, cut.sticks, cut.lower_bound, cut.proved,
                               cut.bound_from, cut.is_too_large});
    }
}

}  // namespace hemline
