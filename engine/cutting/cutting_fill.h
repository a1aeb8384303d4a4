// Filling sticks one after another: fast plans to start from, nothing proved.
#pragma once

#include "engine/cutting/cutting_task.h"

namespace hemline {

/// How a stick is filled: with the longest piece that still fits, again and again (first-fit
/// decreasing, stick by stick); or with the longest piece and then whatever leaves the least of the
/// stick.
enum class FillBy { longest, least_left };

/// Cuts what `uncut` counts from the stock that `supply` counts, on hand first, then the longest.
Cutting fill_sticks(const CuttingTask& task, FillBy by, std::vector<std::int64_t> uncut,
                    std::vector<std::int64_t> supply);

/// The best of the quick ways over the whole task, with the shortest sticks that do.
Cutting filled(const CuttingTask& task);

}  // namespace hemline
