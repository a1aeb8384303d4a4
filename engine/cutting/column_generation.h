// Finds the ways to fill a stick that matter (cutting patterns, called fillings here) and, from the
// prices of the pieces, a lower bound in integers. This is column generation: Gilmore and Gomory,
// Operations Research 9 (1961) 849-859.
#pragma once

#include <vector>

#include "engine/cutting/cutting_task.h"
#include "engine/cutting/effort.h"
#include "engine/cutting/stick_program.h"
#include "engine/cutting/worth_bound.h"

namespace hemline {

/// What is still to be cut, and from what.
struct Rest {
    std::vector<std::int64_t> uncut;   ///< one for each kind of piece
    std::vector<std::int64_t> supply;  ///< one for each stock
};

/// All of the task, without new stock that is not needed because longer unlimited stock exists.
Rest whole(const CuttingTask& task);

/// What columns are generated for: a bound of the whole task, which ends the work as soon as it is
/// as good as it can get, or the fillings that cut the rest best.
enum class Seek { bound, fillings };

/// Offers the program fillings of the rest until none would save anything or the effort runs out.
/// Every filling found is kept in `fillings` too. Returns the worths of the best bound met, settled
/// for the whole task; no bound when only fillings are sought.
Worths generate_columns(const CuttingTask& task, const Rest& rest, Seek seek, StickProgram& program,
                        std::vector<Filling>& fillings, Effort& effort);

}  // namespace hemline
