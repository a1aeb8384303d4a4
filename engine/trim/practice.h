// The trade's common practice as numbers: the tool's defaults, each editable per job.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/measure/tape.h"
#include "engine/quantity/length.h"
#include "engine/roof/edge.h"
#include "engine/words/result.h"

namespace hemline {

struct Practice {
    Length stock = feet(10);
    Length lap = inches(6);
    Length sliver = inches(24);       ///< a shorter piece looks wrong
    Length offcut_kept = inches(24);  ///< a shorter offcut is scrap
    Length cut_grid = sixteenths(1);  ///< cuts lie on this
    Length kerf;                      ///< 0 for snips
    Length tab_gable = inches(1);
    Length tab_corner_out = inches(1);  ///< on the run fitted first: at its first side
    Length tab_corner_in =
        inches(1);  ///< flange, past the corner line's own: on the run fitted first
    Length tab_wall, tab_open;
    Length tab_eave = inches(1);       ///< at the foot of a sloped edge
    Length tab_ridge = inches(1);      ///< over the peak, under the cap
    Length tab_hip = inches(1);        ///< over the hip's line, under the cap
    Length tab_valley = inches(1);     ///< into the valley
    Length turn_up = inches(1);        ///< up a wall, at the end of what carries water along it
    Length kick_out = inches(2);       ///< a sidewall's foot, past the eave
    Length lap_valley = inches(8);     ///< instead of lap: a valley's laps lie in running water
    Length seam_spacing = inches(16);  ///< from seam to seam of the panels: one closure in each pan
    Length cleat_clear = inches(3);    ///< cleat joints this far outside a lap of the trim
    Length hem_notch_clear = sixteenths(2);  ///< hem notch = lap + this
    Length bead_gap = inches(2);             ///< between the two beads, about the middle of the lap
    Length bead_width = sixteenths(3);
    Length screw_spacing = inches(12);
    Length screw_margin = inches(2);       ///< first screw from an end or a lap
    Length hook_gap_most = sixteenths(1);  ///< between hem and cleat when hooked
    Tape tape;

    bool operator==(const Practice&) const = default;
};

/// One rule as read from assets/practice.csv (key,value,source,meaning).
struct PracticeRule {
    std::string key, value, source, meaning;
};

/// Reads the rules file. Problem: names the line and the key.
Result<std::vector<PracticeRule>> read_practice_rules(std::string_view csv);
/// Sets one rule: "lap", "8 in". Problem when the key is unknown or the value cannot be right (a
/// lap not shorter than the stock, a spacing of 0).
Result<Practice> with_rule(const Practice& practice, std::string_view key, std::string_view value);
/// "screw to screw"; a key that has no name is its own.
Text spoken_rule(std::string_view key);
/// The length a rule is set to; none: the key is unknown or no length's.
std::optional<Length> rule_length(const Practice& practice, std::string_view key);
/// Sticks of exactly that length. Problem as of with_rule().
Result<Practice> with_stock(const Practice& practice, Length stock);
/// All rules of a file onto the defaults above.
Result<Practice> practice_of(const std::vector<PracticeRule>& rules);

/// The overlap of two pieces on an edge of that kind, by the job's rule.
Length lap_on(EdgeKind kind, const Practice& practice);
/// The same on that edge: its own lap, else the rule's.
Length lap_on(const Edge& edge, const Practice& practice);
/// The key of the rule that laps such an edge: "lap", "lap_valley".
std::string_view lap_rule(EdgeKind kind);
/// The practice with that lap on edges of the kind. Problem as of with_rule().
Result<Practice> with_lap(const Practice& practice, EdgeKind kind, Length lap);

/// The tab, lap or fold that an end adds to the metal of a run fitted from side `first`: at a
/// corner on the end fitted first, 0 at the other. What geometry adds beside it is end_metal()'s.
Length end_allowance(End end, Side side, Side first, const Practice& practice);

}  // namespace hemline
