// The sticks of a plan: offcuts of a pool first, then new sticks, each cut longest piece first.
#include <algorithm>

#include "engine/plan/cutting.h"
#include "engine/plan/plan_parts.h"

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
    for (std::size_t r = 0; r < plan.runs.size(); ++r) {
        const Run& run = plan.runs[r];
        const EdgeWork* work = job.find(run.edge);
        const Trim* trim = catalogue.find(run.trim);
        require(work != nullptr && trim != nullptr, "a run has its edge and its trim");
        const std::string name = pool_of(work->edge, *trim);
        auto pool =
            std::find_if(pools.begin(), pools.end(), [&](const Pool& p) { return p.name == name; });
        if (pool == pools.end()) {
            pools.push_back({name, run.trim, {}});
            pool = pools.end() - 1;
        }
        for (std::size_t p = 0; p < run.pieces.size(); ++p) {
            if (!run.pieces[p].is_cut) {
                pool->places.push_back({r, p});
            }
        }
    }
    return pools;
}

}  // namespace

std::vector<const Offcut*> offcuts_in(const std::string& pool, const Job& job,
                                      const Catalogue& catalogue) {
    std::vector<const Offcut*> offcuts;
    for (const Offcut& offcut : job.offcuts) {
        const EdgeWork* work = job.find(offcut.edge);
        const Trim* trim = work == nullptr ? nullptr : trim_of(work->edge, offcut.role, catalogue);
        const bool usable = offcut.length > Length() && offcut.length <= longest_readable();
        if (usable && trim != nullptr && pool_of(work->edge, *trim) == pool) {
            offcuts.push_back(&offcut);
        }
    }
    std::stable_sort(offcuts.begin(), offcuts.end(),
                     [](const Offcut* a, const Offcut* b) { return a->length < b->length; });
    return offcuts;
}

namespace {

/// The last that was said of anything in the pool.
Supply supply_of(const std::string& pool, const Job& job, const Catalogue& catalogue) {
    for (auto said = job.supplies.rbegin(); said != job.supplies.rend(); ++said) {
        const EdgeWork* work = job.find(said->edge);
        const Trim* trim = work == nullptr ? nullptr : trim_of(work->edge, said->role, catalogue);
        if (trim != nullptr && pool_of(work->edge, *trim) == pool) {
            return said->supply;
        }
    }
    return Supply::as_wanted;
}

}  // namespace

PoolStock stock_of(const std::string& pool, const Job& job, const Catalogue& catalogue) {
    PoolStock stock;
    const auto add_new = [&, only = supply_of(pool, job, catalogue) ==
                                    Supply::on_hand_only](Length length) {
        stock.lengths.push_back(
            {length, only ? std::optional<std::int64_t>(0) : std::nullopt, false});
        stock.on_hand.push_back(nullptr);
    };
    add_new(job.practice.stock);
    for (const Length length : job.stock_shorter) {
        add_new(length);
    }
    for (const Offcut* offcut : offcuts_in(pool, job, catalogue)) {
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

/// Lays the pieces of one layout along a new stick of the plan.
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

/// Which pieces no stick yields, edge by edge.
PlanProblem without_sticks(const Pool& pool, const PoolStock& stock, const Plan& plan) {
    std::vector<Text> pieces;
    for (const Place& place : pool.places) {
        const Run& run = plan.runs[place.run];
        if (!run.pieces[place.piece].source) {
            pieces.emplace_back(run.edge + "/" + std::to_string(run.pieces[place.piece].number));
        }
    }
    const bool only_on_hand = stock.lengths.front().supply.has_value();
    return {plan.runs[pool.places.front().run].edge, "stock", Severity::problem,
            say("No stick for these pieces of {1}: {2}.", pool.trim, joined(pieces, ", ")),
            only_on_hand ? say("Count more sticks on hand, or let new ones be had.")
                         : say("Set a longer stock.")};
}

}  // namespace

void plan_sticks(const Job& job, const Catalogue& catalogue, const CuttingEffort& effort,
                 Plan& plan) {
    for (const Pool& pool : pools_of(job, catalogue, plan)) {
        const PoolStock stock = stock_of(pool.name, job, catalogue);
        const CuttingJob cutting = cutting_job(pool, stock, plan, job.practice);
        const CuttingPlan cut = plan_cutting(cutting, effort);
        for (const Layout& layout : cut.layouts) {
            for (std::int64_t time = 0; time < layout.times; ++time) {
                lay(layout, cutting, pool, stock, plan);
            }
        }
        if (!cut.missing.empty()) {
            plan.problems.push_back(without_sticks(pool, stock, plan));
        }
        plan.proofs.push_back(
            {pool.trim, pool.name, cut.sticks, cut.lower_bound, cut.proved, cut.bound_from});
    }
}

}  // namespace hemline
