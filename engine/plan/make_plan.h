// Making the plan of a whole job, from scratch after every event.
#pragma once

#include "engine/cutting/cutting.h"
#include "engine/plan/plan.h"

namespace hemline {

class Catalogue;
struct Edge;
struct Job;
struct Practice;

/// No roof has more pieces: what is past them is not planned, and the plan says so.
constexpr std::int64_t plan_pieces_most = 50'000;

/// Which of a pool's choices a plan lists. The plan takes the first by preference. With looks or
/// laps first, both ways find the same; with sticks first, going through all of them may find a
/// better one.
enum class ListedChoices : std::uint8_t { planned, all };

struct PlanOptions {
    bool wrap = true;  ///< plan the fascia wraps that edges ask for
    bool cleat = true;
    CuttingEffort effort = {};          ///< for each pool; the planned choice alone takes a part
    std::optional<Prefer> prefer = {};  ///< in place of the job's preference
    ListedChoices choices = ListedChoices::planned;
};

/// Plans every edge whose length is agreed. Pure. An edge that cannot be planned becomes a problem
/// of the plan, and the others are planned all the same.
Plan make_plan(const Job& job, const Catalogue& catalogue, const PlanOptions& options = {});

/// The plans worth a choice, pool by pool, those with fewer laps first. Any edge not begun may be
/// divided into full sticks and a rest, unless it must be balanced or has a style chosen for it.
/// Stops when all is proved, or after as many steps as it is given.
std::vector<PlanChoice> find_choices(const Job& job, const Catalogue& catalogue,
                                     const CuttingEffort& effort);

/// The run rule of a trim on an edge: its lap (0 for a cleat) and what its two ends add.
RunRule run_rule(const Edge& edge, const Trim& trim, Length length, const Practice& practice,
                 const CornerTabs& tabs = {});

/// Sticks are shared only within one pool: trim, face and flange, metal, thickness and color.
std::string pool_of(const Edge& edge, const Trim& trim);

}  // namespace hemline
