// The plan of a whole job: runs, sticks, and what is proved.
#pragma once

#include <cstdint>
#include <functional>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/dividing/run.h"
#include "engine/record/event_id.h"
#include "engine/trim/catalogue.h"
#include "engine/trim/end_metal.h"

namespace hemline {

struct PanelLayout;  // engine/panels/panel_layout.h

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
    CornerTabs tabs = {};           ///< of its edge's ends
    Panels panels = Panels::under;  ///< of the trim
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

/// How a run is divided in a plan, in fitting order.
struct ChosenDivision {
    std::string edge;
    TrimRole role = TrimRole::main;
    std::vector<Division> pieces;
};

/// A way to plan a pool. No other way found is as good in laps, unbalanced edges and sticks
/// together. Its bound holds for the runs as they are cut, styled or picked already.
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

/// The edges around the corners at an edge's ends; empty: none there, or not known.
struct CornerNeighbors {
    std::string left, right;
};

/// What a plane should measure by the walk round it: slope lengths at both ends, or square to the
/// eave, and both diagonals.
struct PlaneExpected {
    Length left, right, rising, falling;
};

/// The panels of a plane.
struct PlannedPanels {
    std::string eave;           ///< the plane's first
    Side begins = Side::left;   ///< the end of that eave where laying begins
    bool up_the_slope = false;  ///< both sides of the plane
    PlaneExpected expected;
    std::shared_ptr<const PanelLayout> layout;  ///< null: a problem of the plan says why
};

struct Plan {
    std::vector<Run> runs;  ///< edge by edge: main trim, then wrap, then cleat
    std::map<std::string, std::size_t, std::less<>> first_runs;  ///< of each edge, its first run
    std::int64_t pieces = 0;                                     ///< of all runs
    std::vector<PlannedStick> sticks;
    std::vector<Proof> proofs;
    std::vector<PlanProblem> problems;
    std::map<std::string, CornerTabs, std::less<>> corner_tabs;  ///< where a corner needs a word
    std::map<std::string, CornerNeighbors, std::less<>> corner_neighbors;
    std::vector<PlanChoice> choices;  ///< pool by pool: the planned choice, or all that are listed
    /// By their item on the job, once plan_panels() has laid them.
    std::map<std::string, PlannedPanels, std::less<>> panels;
};

const Run* find_run(const Plan& plan, std::string_view edge, TrimRole role);
const PlannedStick* find_stick(const Plan& plan, int number);
/// Null: not on a plane that is worked out.
const PlannedPanels* find_panels(const Plan& plan, std::string_view panels);

}  // namespace hemline
