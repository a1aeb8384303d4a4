// Diving turns the fractions of the linear program into whole sticks: fix what it uses whole, round
// the rest one filling at a time, solve again.
#pragma once

#include <optional>
#include <vector>

#include "engine/cutting/cutting_task.h"
#include "engine/cutting/effort.h"
#include "engine/cutting/worth_bound.h"

namespace hemline {

/// A whole cutting from at most `sticks_most` new sticks, or none on this way down. `turn`: 0
/// follows the program everywhere; n takes its second choice at the n-th choice. Once few pieces
/// are left they are searched through within the `budgets`. Keeps the fillings it finds.
std::optional<Cutting> dive(const CuttingTask& task, std::int64_t sticks_most, int turn,
                            const std::vector<Worths>& budgets, std::vector<Filling>& fillings,
                            Effort& effort);

}  // namespace hemline
