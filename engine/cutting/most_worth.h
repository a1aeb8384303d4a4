// The filling of a stick that is worth most: a bounded knapsack, solved exactly in integers.
#pragma once

#include <vector>

#include "engine/cutting/cutting_task.h"
#include "engine/cutting/effort.h"

namespace hemline {

struct MostWorth {
    std::int64_t worth = 0;  ///< of `parts`
    std::int64_t most = 0;   ///< no filling is worth more; == worth unless the steps ran out
    std::vector<Filling::Part> parts;
};

/// Fills `capacity` from `counts` of the task's pieces. Worths are ≥ 0, and the largest times the
/// capacity must stay below 2^62.
MostWorth most_worth(const CuttingTask& task, const std::vector<std::int64_t>& worth,
                     const std::vector<std::int64_t>& counts, std::int64_t capacity,
                     Effort& effort);

}  // namespace hemline
