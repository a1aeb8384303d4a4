// Lower bounds for dividing and cutting together, from a worth that rises with a piece's length.
//
//   worth |          ____     no stick holds more than its share; each edge takes at least the
//         |    _____|         worth of its cheapest division, its laps and balance priced too
//         |___|          length
#pragma once

#include "engine/cutting/cutting_task.h"
#include "engine/joint/needs.h"

namespace hemline {

/// A division, its cuts rising where it is listed, and what it costs.
struct Cheapest {
    std::int64_t cost = 0;
    std::size_t of_class = 0;
    std::vector<Length> cuts;
};

/// The least cost of some pieces by the metal they make up, in grid units, from the least of
/// interest to the most possible. Other amounts are never made up.
class MetalRow {
  public:
    MetalRow(std::int64_t least, std::int64_t most);

    [[nodiscard]] std::int64_t least() const { return least_; }
    [[nodiscard]] std::int64_t most() const {
        return least_ + static_cast<std::int64_t>(costs_.size()) - 1;
    }
    [[nodiscard]] std::int64_t at(std::int64_t metal) const;
    /// Stores the cost if it is less than what is stored; the metal must lie in the row.
    void lower(std::int64_t metal, std::int64_t cost) {
        std::int64_t& own = costs_[static_cast<std::size_t>(metal - least_)];
        own = cost < own ? cost : own;
    }
    /// The same for all metal from `from` to `to`, each with the cost in another row of what lies
    /// `top` below it, plus `more`.
    void lower_by(const MetalRow& before, std::int64_t from, std::int64_t to, std::int64_t top,
                  std::int64_t more);

  private:
    std::int64_t least_ = 0;
    std::vector<std::int64_t> costs_;
};

/// About how many steps the table of LeastWorth takes.
std::int64_t steps_of_pricing(const JointNeeds& needs, std::size_t lengths);
/// The bytes that it takes; within() takes about as many.
std::int64_t bytes_of_pricing(const JointNeeds& needs);

/// The least cost, at given worths, of every number of pieces that make up so much metal. All
/// pieces but one lie on the grid; that one is rounded down to it. None is shorter than the sliver.
class LeastWorth {
  public:
    LeastWorth(const JointNeeds& needs, const JointWorths& worths, Effort& effort);

    [[nodiscard]] Length grid() const { return grid_; }
    [[nodiscard]] std::int64_t of(std::int64_t pieces, Length metal) const;
    /// The cuts of such a division; together at least the metal rounded down to the grid.
    [[nodiscard]] std::vector<Length> cuts(std::int64_t pieces, Length metal) const;
    /// The same with one piece in each range: cost and cuts, without a class.
    [[nodiscard]] Cheapest within(const std::vector<LengthRange>& ranges, Length metal,
                                  Effort& effort) const;

  private:
    struct Step {
        std::int64_t top = 0, worth = 0;  ///< the longest piece, in grid units, that costs no more
    };

    Length grid_;
    std::int64_t shortest_ = 1;  ///< permitted, in grid units
    std::vector<Step> steps_;
    std::vector<MetalRow> table_;  ///< by pieces
};

std::int64_t worth_of(const JointWorths& worths, Length piece);

/// The allowed division of an edge that costs least.
Cheapest cheapest(const EdgeNeeds& edge, const DivisionSet& allowed, const JointWorths& worths,
                  const LeastWorth& least, Effort& effort);

/// A cutting task with a piece of each length, as many as fit one stick, and the job's supply of
/// sticks.
CuttingTask sticks_for(const JointJob& job, const std::vector<Length>& lengths);

/// Fills in the share that bounds best, and the bound, for plans with no more laps and unbalanced
/// edges than these. `edges`: the least cost of all edges together. Exact.
void settle(const JointJob& job, std::int64_t edges, std::int64_t laps, std::int64_t unbalanced,
            JointWorths& worths);

}  // namespace hemline
