// Making the plan of a whole job, from scratch after every event.
#pragma once

#include "engine/cutting/cutting.h"
#include "engine/plan/plan.h"

namespace hemline {

class Catalogue;
struct Edge;
struct Job;
struct Practice;

/// More pieces are no roof's: what is past them is not planned, and said.
constexpr std::int64_t plan_pieces_most = 50'000;

/// Which of a pool's choices a plan lists. The planned one is the first by preference: with looks
/// or laps first both find the same; with sticks first the look through all may find one better.
enum class ListedChoices : std::uint8_t { planned, all };

struct PlanOptions {
    bool wrap = true;  ///< plan the wraps that edges ask for
    bool cleat = true;
    CuttingEffort effort = {};          ///< for each pool; the planned choice alone takes a part
    std::optional<Prefer> prefer = {};  ///< in place of the job's own
    ListedChoices choices = ListedChoices::planned;
};

/// Plans every edge whose length is agreed. Pure and total: an edge that cannot be planned becomes
/// a problem of the plan, and the others are planned all the same.
Plan make_plan(const Job& job, const Catalogue& catalogue, const PlanOptions& options = {});

/// The plans worth a choice, pool by pool, those with fewer laps first: every edge not begun may
/// run out, unless it must be balanced or has its own style. Takes as many steps as it is given,
/// where not all is proved before.
std::vector<PlanChoice> find_choices(const Job& job, const Catalogue& catalogue,
                                     const CuttingEffort& effort);

/// The run rule of a trim on an edge: its lap (0 for a cleat) and what its two ends add.
RunRule run_rule(const Edge& edge, const Trim& trim, Length length, const Practice& practice);

/// Sticks are shared only within one pool: trim, face and flange, metal, thickness and colour.
std::string pool_of(const Edge& edge, const Trim& trim);

}  // namespace hemline
