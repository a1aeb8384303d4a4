// The parts of making a plan: an edge's problems, its runs, and the sticks of all runs.
#pragma once

#include <map>
#include <utility>

#include "engine/plan/pool_choices.h"
#include "engine/record/job.h"

namespace hemline {

/// How runs are divided, by edge and part.
using ChosenRuns = std::map<std::pair<std::string, TrimRole>, std::vector<Division>>;

/// The edge's main trim; nullptr when the catalogue has none of that name, kind and part.
const Trim* main_trim(const Edge& edge, const Catalogue& catalogue);

/// Adds what keeps the edge from being planned well: readings that disagree, pitch, seam, trim.
void judge_edge(const EdgeWork& work, const Job& job, const Catalogue& catalogue, Plan& plan);

/// Adds each pair of edges where the metal of one eats the other's. An edge that says no metal is
/// taken to be of what the catalogue's trims are made of, galvanized steel.
void judge_metals(const Job& job, Plan& plan);

/// Exactly one side of each corner carries the tab: for the edges of corners that no side, or both,
/// would carry it to by the side they are fitted from, the edge added first carries it.
std::map<std::string, CornerTabs, std::less<>> corner_tabs_of(const Job& job);
/// Of each level edge around the house the edges around its corners.
std::map<std::string, CornerNeighbors, std::less<>> corner_neighbors_of(const Job& job);
/// What the plan says of the edge's ends.
CornerTabs tabs_on(const Plan& plan, std::string_view edge);

/// Adds each headwall whose metal, by the job's rule, runs less far past a corner of its wall than
/// the deck leg of a sidewall is wide.
void judge_wall_corners(const Job& job, const Catalogue& catalogue, Plan& plan);

/// Says of each level edge that the wind has it fitted from a side, or that its bearing is not
/// said.
void judge_wind(const Job& job, Plan& plan);

/// Divides the main and wrap runs of a draft; each pool is solved as a single problem. A run keeps
/// its division where a piece is cut, where a style was chosen for its edge, and where the crew
/// picked the plan.
std::vector<PoolChoices> divide_pools(const Job& job, const Catalogue& catalogue,
                                      const PlanOptions& options, const Plan& draft);

/// The divisions of the first choice of each pool; adds all of them to the plan.
std::vector<ChosenDivision> first_choices(const std::vector<PoolChoices>& pools, Prefer prefer,
                                          Plan& plan);

/// Adds the runs of an edge whose length is agreed, or the problems that keep them from being made.
void plan_runs(const EdgeWork& work, const Job& job, const Catalogue& catalogue,
               const PlanOptions& options, const ChosenRuns& chosen, Plan& plan);

/// What a pool may be cut from: new sticks first, the longest first, then what is on hand.
struct PoolStock {
    std::vector<StockLength> lengths;
    std::vector<const Offcut*> on_hand;  ///< one for each length; nullptr: new
};

/// The stock of every pool of a job, which must outlive it.
class Stocks {
  public:
    Stocks(const Job& job, const Catalogue& catalogue);
    [[nodiscard]] PoolStock of(const std::string& pool) const;

  private:
    const Job& job_;
    std::map<std::string, std::vector<const Offcut*>> offcuts_;  ///< by pool, as they came
    std::map<std::string, Supply> supplies_;
};

/// Gives every uncut piece of the plan its stick, pool by pool, with a proof for each.
void plan_sticks(const Job& job, const Catalogue& catalogue, const CuttingEffort& effort,
                 Plan& plan);

}  // namespace hemline
