#include "field/state/pool_view.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>
#include <utility>
#include "engine/plan/make_plan.h"
#include "engine/words/path_text.h"

namespace hemline {

namespace {

std::string pool_name(const State& state, const Run& run) {
    const EdgeWork* work = state.job.find(run.edge);
    const Trim* trim = state.catalogue.find(run.trim);
    return work == nullptr || trim == nullptr ? std::string() : pool_of(work->edge, *trim);
}

const Proof* proof_of(const State& state, const std::string& pool) {
    const auto& proofs = state.plan.proofs;
    const auto found = std::find_if(proofs.begin(), proofs.end(),
                                    [&](const Proof& proof) { return proof.pool == pool; });
    return found == proofs.end() ? nullptr : &*found;
}

/// What the plan lays on each stick of the pool, in order from its end.
std::map<int, SticksAlike> laid_in(const State& state, const std::string& pool) {
    std::map<int, SticksAlike> laid;
    for (const PlannedStick& stick : state.plan.sticks) {
        if (stick.pool == pool) {
            laid[stick.number].sticks = {&stick};
        }
    }
    for (const Run& run : state.plan.runs) {
        for (const PlannedPiece& piece : run.pieces) {
            const auto own = piece.source ? laid.find(piece.source->stick) : laid.end();
            if (own != laid.end()) {
                own->second.pieces.push_back({piece.source->from,
                                              piece.cut,
                                              {run.edge + "/" + std::to_string(piece.number)}});
            }
        }
    }
    for (auto& [number, own] : laid) {
        std::sort(own.pieces.begin(), own.pieces.end(),
                  [](const auto& a, const auto& b) { return a.from < b.from; });
    }
    return laid;
}

/// What makes two sticks count as cut alike: the metal, and each cut.
using CutAlike = std::tuple<Length, bool, std::vector<std::pair<Length, Length>>>;

CutAlike cut_alike(const SticksAlike& own) {
    std::vector<std::pair<Length, Length>> cuts;
    for (const SticksAlike::Piece& piece : own.pieces) {
        cuts.emplace_back(piece.from, piece.cut);
    }
    const PlannedStick& stick = *own.sticks.front();
    return {stick.length, stick.offcut.has_value(), std::move(cuts)};
}

std::vector<Length> cuts_of(const SticksAlike& sticks) {
    std::vector<Length> cuts;
    for (const SticksAlike::Piece& piece : sticks.pieces) {
        cuts.push_back(piece.cut);
    }
    return cuts;
}

/// Whether a piece of the pool has no stick.
bool pieces_wait(const State& state, const std::string& pool) {
    return std::any_of(state.plan.runs.begin(), state.plan.runs.end(), [&](const Run& run) {
        return pool_name(state, run) == pool &&
               std::any_of(run.pieces.begin(), run.pieces.end(),
                           [](const PlannedPiece& p) { return !p.is_cut && !p.source; });
    });
}

}  // namespace

std::vector<PoolView> pools_on(const State& state) {
    std::vector<PoolView> pools;
    std::set<std::string> known;
    for (const Run& run : state.plan.runs) {
        const std::string name = pool_name(state, run);
        if (known.insert(name).second) {
            pools.push_back({name, run.trim, run.edge, run.role});
        }
    }
    return pools;
}

std::optional<PoolView> pool_at(const State& state) {
    const std::vector<PoolView> pools = pools_on(state);
    if (const Run* run = find_run(state.plan, state.where.edge, state.where.role)) {
        const std::string name = pool_name(state, *run);
        const auto found = std::find_if(pools.begin(), pools.end(),
                                        [&](const PoolView& pool) { return pool.pool == name; });
        if (found != pools.end()) {
            return *found;
        }
    }
    return pools.empty() ? std::nullopt : std::optional(pools.front());
}

PoolView next_pool(const State& state, const PoolView& pool) {
    const std::vector<PoolView> pools = pools_on(state);
    for (std::size_t i = 0; i < pools.size(); ++i) {
        if (pools[i].pool == pool.pool) {
            return pools[(i + 1) % pools.size()];
        }
    }
    return pool;
}

Where at_pool(Screen screen, const PoolView& pool) { return {screen, pool.edge, pool.role}; }

bool is_of_pool(const State& state, const std::string& edge, TrimRole role,
                const std::string& pool) {
    const Run* const run = find_run(state.plan, edge, role);
    return run != nullptr && pool_name(state, *run) == pool;
}

Text trim_name(const State& state, const std::string& id) {
    const Trim* const trim = state.catalogue.find(id);
    return trim == nullptr ? spaced(id) : say(trim->name);
}

std::vector<SticksAlike> sticks_of(const State& state, const std::string& pool) {
    std::vector<SticksAlike> all;
    std::map<CutAlike, std::size_t> known;
    for (auto& [number, own] : laid_in(state, pool)) {
        const auto [place, is_new] = known.emplace(cut_alike(own), all.size());
        if (is_new) {
            all.push_back(own);
            continue;
        }
        SticksAlike& same = all[place->second];
        same.sticks.push_back(own.sticks.front());
        for (std::size_t i = 0; i < own.pieces.size(); ++i) {
            same.pieces[i].names.push_back(own.pieces[i].names.front());
        }
    }
    std::stable_sort(all.begin(), all.end(), [](const SticksAlike& a, const SticksAlike& b) {
        return cuts_of(b) < cuts_of(a);
    });
    return all;
}

bool is_undecided(const State& state, const std::string& pool) {
    return std::none_of(state.plan.runs.begin(), state.plan.runs.end(), [&](const Run& run) {
        return pool_name(state, run) == pool &&
               (run.by != DividedBy::together ||
                std::any_of(run.pieces.begin(), run.pieces.end(),
                            [](const PlannedPiece& piece) { return piece.is_cut; }));
    });
}

Text proof_words(const State& state, const std::string& pool) {
    const Proof* const proof = proof_of(state, pool);
    if (proof == nullptr) {
        return {};
    }
    const std::int64_t sticks = proof->sticks;
    if (proof->proved) {
        return sticks == 0 ? say("No stick to open: what is on hand serves.")
                           : say_count(
                                 "{1} stick to open; {2} is the fewest possible for these "
                                 "pieces: proved.",
                                 "{1} sticks to open; {2} is the fewest possible for these "
                                 "pieces: proved.",
                                 sticks, proof->lower_bound);
    }
    if (proof->is_too_large && !pieces_wait(state, pool)) {
        return say_count(
            "{1} stick to open; not proved, for the job is larger than the proof has room for: at "
            "least {2}.",
            "{1} sticks to open; not proved, for the job is larger than the proof has room for: at "
            "least {2}.",
            sticks, proof->lower_bound);
    }
    return pieces_wait(state, pool)
               ? say_count("{1} stick to open, and not every piece has one.",
                           "{1} sticks to open, and not every piece has one.", sticks)
               : say_count("{1} stick to open; not proved within the time: at least {2}.",
                           "{1} sticks to open; not proved within the time: at least {2}.", sticks,
                           proof->lower_bound);
}

const PlanChoice* planned_choice(const State& state, const std::string& pool) {
    const auto& choices = state.plan.choices;
    const auto found = std::find_if(choices.begin(), choices.end(),
                                    [&](const PlanChoice& choice) { return choice.pool == pool; });
    return found == choices.end() ? nullptr : &*found;
}

const PlanChoice* better_choice(const State& state, const std::string& pool) {
    const PlanChoice* const planned = planned_choice(state, pool);
    const PlanChoice* best = nullptr;
    for (const PlanChoice& choice : state.choices) {
        const bool better =
            planned != nullptr && choice.pool == pool && choice.extra_laps <= planned->extra_laps &&
            choice.unbalanced <= planned->unbalanced && choice.sticks < planned->sticks;
        if (better && (best == nullptr || choice.sticks < best->sticks)) {
            best = &choice;
        }
    }
    return best;
}

}  // namespace hemline
