// The trade's common practice as numbers: the tool's defaults, each editable per job.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "engine/measure/length.h"
#include "engine/measure/tape.h"
#include "engine/result.h"
#include "engine/roof/edge.h"

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
    Length tab_corner_in, tab_wall, tab_open;
    Length cleat_clear = inches(3);          ///< cleat joints this far outside a lap of the trim
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
/// All rules of a file onto the defaults above.
Result<Practice> practice_of(const std::vector<PracticeRule>& rules);

/// What an end adds to the metal of a run fitted from side `first` (TRADE: gable 1 in; outside
/// corner 1 in at the end fitted first, 0 at the other; the rest 0).
Length end_allowance(End end, Side side, Side first, const Practice& practice);

}  // namespace hemline
