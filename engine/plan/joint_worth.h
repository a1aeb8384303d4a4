// Lower bounds on dividing and cutting together, from a worth that rises with a piece's length.
//
//   worth |          ____     no stick holds more than its share; each edge takes at least the
//         |    _____|         worth of its cheapest division, its laps and balance priced too
//         |___|          length
#pragma once

#include "engine/plan/cutting_task.h"
#include "engine/plan/joint_needs.h"

namespace hemline {

/// A division, its cuts rising where it is listed, and what it costs.
struct Cheapest {
    std::int64_t cost = 0;
    std::size_t of_class = 0;
    std::vector<Length> cuts;
};

/// About the steps that the table of LeastWorth takes.
std::int64_t steps_of_pricing(const JointNeeds& needs, std::size_t lengths);

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
    [[nodiscard]] std::size_t place(std::int64_t pieces, Length metal) const;

    Length grid_;
    std::int64_t shortest_ = 1;  ///< lawful, in grid units
    std::vector<Step> steps_;
    std::size_t width_ = 0;
    std::vector<std::int64_t> table_;  ///< by pieces, then metal in grid units
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
