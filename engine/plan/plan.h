// The plan of a whole job, computed from scratch after every event: runs, sticks, and what is
// proved.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

#include "engine/cutting/cutting.h"
#include "engine/dividing/run.h"
#include "engine/joint/joint.h"
#include "engine/record/job.h"
#include "engine/trim/catalogue.h"
#include "engine/trim/pitch_check.h"
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

/// What says how a run is divided: all of its pool together, the style chosen for the edge, or the
/// plan that the crew picked.
enum class DividedBy : std::uint8_t { together, style, plan_chosen };

struct Run {
    std::string edge;
    std::string trim;
    TrimRole role = TrimRole::main;
    Length lap;  ///< 0 when butted
    std::vector<PlannedPiece> pieces;
    DividedBy by = DividedBy::together;
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
    bool is_too_large = false;  ///< not proved: the job is larger than the proof has room for
};

enum class Severity { problem, measure_again, note };

struct PlanProblem {
    std::string edge, field;
    Severity severity = Severity::problem;
    Text what, mend;
};

/// How one run is divided in a plan, in fitting order.
struct ChosenDivision {
    std::string edge;
    TrimRole role = TrimRole::main;
    std::vector<Division> pieces;
};

/// One way to plan a pool that no other found is as good as in laps, unbalanced edges and sticks.
/// Its bound holds with runs that are cut, styled or picked as they are.
struct PlanChoice {
    std::string trim;
    std::string pool;
    std::int64_t extra_laps = 0;
    std::int64_t unbalanced = 0;
    std::int64_t sticks = 0;
    std::int64_t lower_bound = 0;  ///< for no more laps and unbalanced edges
    bool proved = false;
    std::string bound_from = {};            ///< how the bound was reached, for people
    std::vector<ChosenDivision> runs = {};  ///< every main and wrap run of the pool
    bool is_too_large = false;  ///< not proved: the job is larger than the proof has room for
};

struct Plan {
    std::vector<Run> runs;  ///< edge by edge: main trim, then wrap, then cleat
    std::map<std::string, std::size_t, std::less<>> first_runs;  ///< of each edge, its first one
    std::int64_t pieces = 0;                                     ///< of all runs
    std::vector<PlannedStick> sticks;
    std::vector<Proof> proofs;
    std::vector<PlanProblem> problems;
    std::vector<PlanChoice> choices;  ///< pool by pool: the one planned, or all that are listed
};

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

struct PoolRun {
    std::string edge;
    TrimRole role = TrimRole::main;
};

/// A pool divided and cut as one problem, and the plans found for it.
struct PoolChoices {
    std::string pool, trim;
    std::vector<PoolRun> runs;  ///< main trims and wraps; one for each edge of the job
    JointJob job;
    std::vector<JointPlan> plans;
};

/// What make_plan() chooses from with the same options.
std::vector<PoolChoices> choices_by_pool(const Job& job, const Catalogue& catalogue,
                                         const PlanOptions& options);

/// The run rule of a trim on an edge: its lap (0 for a cleat) and what its two ends add.
RunRule run_rule(const Edge& edge, const Trim& trim, Length length, const Practice& practice);

/// Sticks are shared only within one pool: trim, face and flange, metal, thickness and colour.
std::string pool_of(const Edge& edge, const Trim& trim);

const Run* find_run(const Plan& plan, std::string_view edge, TrimRole role);
const PlannedStick* find_stick(const Plan& plan, int number);

}  // namespace hemline
