// Lower bounds on dividing and cutting together, from a worth that rises with a piece's length.
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

/// What some pieces cost at least, by the metal that they make up, in grid units: from the least of
/// interest to the most there can be. Other metal is never made up.
class MetalRow {
  public:
    MetalRow(std::int64_t least, std::int64_t most);

    [[nodiscard]] std::int64_t least() const { return least_; }
    [[nodiscard]] std::int64_t most() const {
        return least_ + static_cast<std::int64_t>(costs_.size()) - 1;
    }
    [[nodiscard]] std::int64_t at(std::int64_t metal) const;
    /// Takes the cost where it is less than what is there; the metal lies in the row.
    void lower(std::int64_t metal, std::int64_t cost) {
        std::int64_t& own = costs_[static_cast<std::size_t>(metal - least_)];
        own = cost < own ? cost : own;
    }
    /// The same of all from `from` to `to`, each with the cost of what lies `top` below it in
    /// another row, and `more`.
    void lower_by(const MetalRow& before, std::int64_t from, std::int64_t to, std::int64_t top,
                  std::int64_t more);

  private:
    std::int64_t least_ = 0;
    std::vector<std::int64_t> costs_;
};

/// About the steps that the table of LeastWorth takes.
std::int64_t steps_of_pricing(const JointNeeds& needs, std::size_t lengths);
/// The bytes that it takes, and about as many that within() does.
std::int64_t bytes_of_pricing(const JointNeeds& needs);

/// What every number of pieces costs at least that make up so much metal, at some worths. The
/// pieces lie on the grid but one, which is taken down to it; none is shorter than the sliver.
class LeastWorth {
  public:
    LeastWorth(const JointNeeds& needs, const JointWorths& worths, Effort& effort);

    [[nodiscard]] Length grid() const { return grid_; }
    [[nodiscard]] std::int64_t of(std::int64_t pieces, Length metal) const;
    /// The cuts of such a division; together at least the metal taken down to the grid.
    [[nodiscard]] std::vector<Length> cuts(std::int64_t pieces, Length metal) const;
    /// The same of one piece in each range; cost and cuts, of no class.
    [[nodiscard]] Cheapest within(const std::vector<LengthRange>& ranges, Length metal,
                                  Effort& effort) const;

  private:
    struct Step {
        std::int64_t top = 0, worth = 0;  ///< the longest piece, in grid units, that costs no more
    };

    Length grid_;
    std::int64_t shortest_ = 1;  ///< lawful, in grid units
    std::vector<Step> steps_;
    std::vector<MetalRow> table_;  ///< by pieces
};

std::int64_t worth_of(const JointWorths& worths, Length piece);

/// The division that costs least among those of one edge that are allowed.
Cheapest cheapest(const EdgeNeeds& edge, const DivisionSet& allowed, const JointWorths& worths,
                  const LeastWorth& least, Effort& effort);

/// A cutting task with a piece of each length and as many as fit one stick; its sticks in the
/// job's own supply.
CuttingTask sticks_for(const JointJob& job, const std::vector<Length>& lengths);

/// Fills in the share that bounds best, and the bound, of a plan with no more laps and unbalanced
/// edges than these. `edges`: what all of them cost at least. Exact.
void settle(const JointJob& job, std::int64_t edges, std::int64_t laps, std::int64_t unbalanced,
            JointWorths& worths);

}  // namespace hemline
