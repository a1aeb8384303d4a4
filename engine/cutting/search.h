// Tries every way to cut a task from so many new sticks: finds a plan, or proves that there is
// none.
//
//   the longest piece left lies on some stick: one branch for each stock, and for each filling of
//   it that takes that piece and has no room for another
#pragma once

#include <vector>

#include "engine/cutting/cutting_task.h"
#include "engine/cutting/effort.h"
#include "engine/cutting/worth_bound.h"

namespace hemline {

enum class Found { plan, no_plan, not_yet };

struct SearchResult {
    Found found = Found::not_yet;
    Cutting cutting;  ///< when there is a plan
};

/// Looks for a cutting of the whole task from at most `sticks_most` new sticks. A branch is given
/// up when it wastes more than `budgets` allow. no_plan is a proof in integers that no plan begins
/// with the fillings `begun`; when `begun` is empty, that there is no plan at all.
SearchResult search(const CuttingTask& task, std::int64_t sticks_most,
                    const std::vector<Worths>& budgets, Effort& effort,
                    const std::vector<Filling>& begun = {});

}  // namespace hemline
