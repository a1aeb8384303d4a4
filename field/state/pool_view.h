// What screens ask about a pool (runs that share the sticks of a trim): its sticks, its proof.
#pragma once

#include <string>
#include <vector>

#include "field/state/state.h"

namespace hemline {

/// A pool of the plan, named by its first run.
struct PoolView {
    std::string pool, trim;
    std::string edge;
    TrimRole role = TrimRole::main;
};

/// In the order of the plan's runs.
std::vector<PoolView> pools_on(const State& state);
/// The pool of where.edge and where.role, else the first pool. Nullopt: no pool yet.
std::optional<PoolView> pool_at(const State& state);
/// The next pool; after the last comes the first.
PoolView next_pool(const State& state, const PoolView& pool);
/// The screen of that kind for this pool.
Where at_pool(Screen screen, const PoolView& pool);

/// Whether that trim of the edge shares the pool's sticks.
bool is_of_pool(const State& state, const std::string& edge, TrimRole role,
                const std::string& pool);

/// "Rolled eave trim": as the catalogue calls it.
Text trim_name(const State& state, const std::string& trim);

/// Planned sticks that are cut alike, from alike metal.
struct SticksAlike {
    std::vector<const PlannedStick*> sticks;
    struct Piece {
        Length from, cut;
        std::vector<std::string> names;  ///< "A/2", one for each stick
    };
    std::vector<Piece> pieces;
};
/// The pool's sticks, those cut alike together; the longest first cut comes first.
std::vector<SticksAlike> sticks_of(const State& state, const std::string& pool);

/// Nothing in the pool is cut, styled or picked, so the proof of its plan holds for every way to
/// divide its edges, not only for the pieces as they are.
bool is_undecided(const State& state, const std::string& pool);

/// "9 sticks to open; 9 is the fewest possible for these pieces: proved."
Text proof_words(const State& state, const std::string& pool);

/// The choice that is planned now; nullptr: the pool is not divided jointly (a cleat).
const PlanChoice* planned_choice(const State& state, const std::string& pool);
/// A choice that takes fewer sticks than planned, with no more laps and no more unbalanced edges;
/// nullptr: none.
const PlanChoice* better_choice(const State& state, const std::string& pool);

}  // namespace hemline
