// What screens ask about one pool: the trim whose sticks some runs share, its sticks, its proof.
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
/// The pool of where.edge and where.role; the first one where that has none. Nullopt: no pool yet.
std::optional<PoolView> pool_at(const State& state);
/// The one after it, round and round.
PoolView next_pool(const State& state, const PoolView& pool);
/// Where a screen of this pool is.
Where at_pool(Place place, const PoolView& pool);

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
/// The pool's sticks, alike ones together, the longest first cut first.
std::vector<SticksAlike> sticks_of(const State& state, const std::string& pool);

/// Nothing in the pool is cut, styled or picked: what is proved of its plan holds for every way to
/// divide its edges, not for the pieces as they are alone.
bool is_undecided(const State& state, const std::string& pool);

/// "9 sticks to open; 9 is the fewest possible for these pieces: proved."
Text proof_words(const State& state, const std::string& pool);

/// The choice that is planned now; nullptr: the pool is not divided jointly (a cleat).
const PlanChoice* planned_choice(const State& state, const std::string& pool);
/// One of the choices found that takes fewer sticks than planned, with no more laps and no more
/// unbalanced edges; nullptr: none.
const PlanChoice* better_choice(const State& state, const std::string& pool);

}  // namespace hemline
