// A cutting job in plain integers: equal lengths joined, longest first, in the coarsest exact unit.
#pragma once

#include <cstdint>
#include <vector>

#include "engine/cutting/cutting.h"

namespace hemline {

/// Sticks of the same capacity (stick + one kerf) and cost.
struct TaskStock {
    std::int64_t capacity = 0;
    std::int64_t supply = 0;  ///< never more than there are pieces
    bool unlimited = false;
    bool on_hand = false;
    std::vector<std::size_t> from;  ///< indices of the job's stock
};

/// Pieces of the same size (piece + one kerf).
struct TaskPiece {
    std::int64_t size = 0;
    std::int64_t count = 0;
    std::vector<std::size_t> from;  ///< indices of the job's demand, one for each piece
};

struct CuttingTask {
    std::vector<TaskStock> stock;   ///< on hand first, then longest first
    std::vector<TaskPiece> pieces;  ///< longest first, each fits some stock
    std::vector<CutDemand> missing;
};

/// Pieces of a stick: counts by kind of piece, kinds in rising order (longest first).
struct Filling {
    struct Part {
        std::size_t piece = 0;
        std::int64_t count = 0;

        bool operator==(const Part&) const = default;
    };
    std::size_t stock = 0;
    std::int64_t times = 1;
    std::vector<Part> parts;
};

/// A way to cut the task, and what it leaves uncut.
struct Cutting {
    std::vector<Filling> fillings;
    std::vector<std::int64_t> uncut;  ///< one for each kind of piece
    std::int64_t new_sticks = 0;
    std::int64_t stock_total = 0;  ///< capacity of the new sticks
    std::int64_t uncut_size = 0;
};

CuttingTask task_of(const CuttingJob& job);

/// Fills in what follows from the fillings: uncut, sticks and sums.
void count_up(const CuttingTask& task, Cutting& cutting);

/// Less uncut, then fewer new sticks, then less new metal.
bool better(const Cutting& a, const Cutting& b);

/// Swaps each new stick for the shortest new stock that holds its pieces and is left.
void take_shorter_sticks(const CuttingTask& task, Cutting& cutting);

/// The plan in the indices of the job: sticks on hand first, identical sticks together, longest
/// pieces first.
CuttingPlan plan_of(const CuttingTask& task, const CuttingJob& job, const Cutting& cutting);

}  // namespace hemline
