// The plan of a whole job, computed from scratch after every event: runs, sticks, and what is
// proved.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/plan/choices.h"
#include "engine/plan/cutting.h"
#include "engine/plan/run.h"
#include "engine/record/job.h"
#include "engine/roof/pitch_check.h"
#include "engine/trim/catalogue.h"
#include "engine/trim/practice.h"

namespace hemline {

/// Where a piece comes from: a stick of the plan, and where on it the piece begins.
struct FromStick {
    int stick = 0;  ///< number of the stick, 1…, unique over the whole plan
    Length from;
};

struct PlannedPiece {
    int number = 0;  ///< 1…, in fitting order
    Length cut;
    Length covers;
    Length begins;                    ///< along the edge from the side fitted first
    std::optional<FromStick> source;  ///< none when cut already, or when stock is missing
    bool is_cut = false;
};

struct Run {
    std::string edge;
    std::string trim;
    TrimRole role = TrimRole::main;
    Length lap;  ///< 0 when butted
    std::vector<PlannedPiece> pieces;
};

struct PlannedStick {
    int number = 0;
    std::string pool;  ///< pool_of() the edge and trim
    std::string trim;
    Length length;
    Length used;
    Length left;
    std::optional<EventId> offcut;  ///< the event that left this offcut; none: a new stick
};

struct Proof {
    std::string trim;
    std::string pool;
    std::int64_t sticks = 0;  ///< new sticks still to open
    std::int64_t lower_bound = 0;
    bool proved = false;
    std::string bound_from;
};

enum class Severity { problem, measure_again, note };

struct PlanProblem {
    std::string edge, field;
    Severity severity = Severity::problem;
    std::string what, mend;
};

/// One way to plan a pool that no other found is as good as in laps, unbalanced edges and sticks.
struct PlanChoice {
    std::string trim;
    std::string pool;
    std::int64_t extra_laps = 0;
    std::int64_t unbalanced = 0;
    std::int64_t sticks = 0;
    std::int64_t lower_bound = 0;  ///< for no more laps and unbalanced edges
    bool proved = false;
};

struct Plan {
    std::vector<Run> runs;  ///< edge by edge: main trim, then wrap, then cleat
    std::vector<PlannedStick> sticks;
    std::vector<Proof> proofs;
    std::vector<PlanProblem> problems;
    std::vector<PlanChoice> choices;  ///< when planned by preference, pool by pool
};

struct PlanOptions {
    bool wrap = true;  ///< plan the wraps that edges ask for
    bool cleat = true;
    CuttingEffort effort = {};          ///< for each pool
    std::optional<Prefer> prefer = {};  ///< divides uncut runs together; none: each in its style
};

/// Plans every edge whose length is agreed. Pure and total: an edge that cannot be planned becomes
/// a problem of the plan, and the others are planned all the same.
Plan make_plan(const Job& job, const Catalogue& catalogue, const PlanOptions& options = {});

/// The run rule of a trim on an edge: its lap (0 for a cleat) and what its two ends add.
RunRule run_rule(const Edge& edge, const Trim& trim, Length length, const Practice& practice);

/// Sticks are shared only within one pool: trim, face and flange, metal, thickness and colour.
std::string pool_of(const Edge& edge, const Trim& trim);

const Run* find_run(const Plan& plan, std::string_view edge, TrimRole role);
const PlannedStick* find_stick(const Plan& plan, int number);

}  // namespace hemline
