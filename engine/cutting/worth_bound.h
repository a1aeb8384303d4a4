// Lower bounds on the number of sticks: give each kind of piece a worth, find the most worth that a
// stick can hold, and divide.
#pragma once

#include "engine/cutting/cutting_task.h"

namespace hemline {

/// A worth for each kind of piece, and the most that a stick of each stock can hold of it.
struct Worths {
    std::vector<std::int64_t> piece;
    std::vector<std::int64_t> stick;
    std::int64_t share = 1;
    std::int64_t bound = 0;
};

/// Chooses the share that bounds best and fills in share and bound. Exact.
void settle(const CuttingTask& task, Worths& worths);

/// The worth that may be wasted when the whole task is cut from `sticks` new sticks: no plan wastes
/// more, and below 0 there is no such plan.
std::int64_t worth_to_spare(const CuttingTask& task, const Worths& worths, std::int64_t sticks);

/// The total length of the pieces against that of the sticks.
Worths volume_bound(const CuttingTask& task);

/// Martello and Toth's L2 as worths: over a threshold a, pieces longer than capacity − a are worth
/// a stick, pieces from a to there their size, shorter ones nothing. Needs one longest, unlimited
/// new stock and nothing on hand; elsewhere the volume.
Worths l2_bound(const CuttingTask& task);

Certificate certificate_of(const CuttingTask& task, const CuttingJob& job, const Worths& worths);

}  // namespace hemline
