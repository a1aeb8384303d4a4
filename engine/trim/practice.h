// The trade's common practice as numbers: the program's defaults, each of which a job can change.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/measure/tape.h"
#include "engine/quantity/length.h"
#include "engine/roof/edge.h"
#include "engine/trim/site.h"
#include "engine/words/result_declared.h"

namespace hemline {

/// The one line of a roof where its panels are pinned, so that they grow away from it.
enum class FixedLine : std::uint8_t { unsaid = 0, eave = 1, ridge = 2 };

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
        inches(1);  ///< flange, beyond what geometry gives: on the run fitted first
    Length tab_wall, tab_open;
    Length tab_eave = inches(1);       ///< at the foot of a sloped edge
    Length tab_ridge = inches(1);      ///< over the peak, under the cap
    Length tab_hip = inches(1);        ///< over the hip's line, under the cap
    Length tab_valley = inches(1);     ///< into the valley
    Length turn_up = inches(1);        ///< up a wall, at the end of a trim that carries water
    Length kick_out = inches(4);       ///< a sidewall's foot, past the eave
    Length apron_past = inches(5);     ///< a headwall's metal past an outside corner of its wall
    Length apron_wrap = inches(2);     ///< its wall leg round that corner
    Length wall_lap = inches(4);       ///< a sidewall's foot onto that metal
    Length lap_valley = inches(8);     ///< instead of lap: a valley's laps lie in running water
    Length seam_spacing = inches(16);  ///< from seam to seam of the panels: one closure in each pan
    Length seam_height = sixteenths(24);  ///< of the finished seam above the pan: a closure's web
    Length seam_foot = sixteenths(8);     ///< width a seam and its clip take at the pan
    Length seam_clear = inches(1);        ///< a cap's screw and a seam
    Length boot_clear = inches(1);        ///< between a boot's base and a seam's foot
    Length hole_clear = sixteenths(2);    ///< each side of a pipe, beside what the panel moves
    Length cricket_from = inches(30);     ///< a wider curb takes a cricket
    Length panel_lip = sixteenths(12);    ///< what a panel's hem holds on, past the deck's edge
    Length side_gap = sixteenths(4);      ///< from a gable or wall to the turn-up of the last pan
    Length end_pan_least = inches(4);     ///< no first or last pan is narrower
    Length seam_off = inches(2);          ///< a seam and a curb, a dormer's wall, a valley's top
    Length order_grid = sixteenths(4);    ///< panels are ordered up to this
    Length valley_open = inches(4);       ///< width of a valley between the panels at its head
    Length clip_spacing = inches(24);     ///< on a seam, at most
    Length clip_end = inches(6);          ///< from a seam's end to its first clip
    Length clip_zone;                     ///< width of the zones at edges and corners in high wind
    Length clip_zone_spacing = inches(12);   ///< in them, at most
    Length strip = inches(20);               ///< of coil, from which a pan is formed
    Length closure_leg = inches(1);          ///< both legs of a closure
    Length closure_ear = sixteenths(12);     ///< folded against the seam at each end of a closure
    Length cleat_clear = inches(3);          ///< cleat joints this far outside a lap of the trim
    Length hem_notch_clear = sixteenths(2);  ///< hem notch = lap + this at least (hem_clearance.h)
    Length bead_gap = inches(2);             ///< between the two beads, about the middle of the lap
    Length bead_width = sixteenths(3);
    Length screw_spacing = inches(12);
    Length screw_margin = inches(2);       ///< first screw from an end or a lap
    Length hook_gap_most = sixteenths(1);  ///< between hem and cleat when hooked
    FixedLine fixed_line = FixedLine::unsaid;
    Tape tape;
    Site site;

    bool operator==(const Practice&) const = default;
};

/// A rule as read from assets/practice.csv (key,value,source,meaning).
struct PracticeRule {
    std::string key, value, source, meaning;
};

/// Reads the rules file. Problem: names the line and the key.
Result<std::vector<PracticeRule>> read_practice_rules(std::string_view csv);
/// Sets a rule: "lap", "8 in", or what is said of the site (site.h). Problem when the key is
/// unknown or the value cannot be right (a lap not shorter than the stock, a spacing of 0).
Result<Practice> with_rule(const Practice& practice, std::string_view key, std::string_view value);
/// "screw to screw"; a key without a name is returned as it is.
Text spoken_rule(std::string_view key);
/// The length a rule is set to; none: the key is unknown or does not name a length.
std::optional<Length> rule_length(const Practice& practice, std::string_view key);
/// Sticks of exactly that length. Problem: as with_rule().
Result<Practice> with_stock(const Practice& practice, Length stock);
/// The defaults above with all rules of a file.
Result<Practice> practice_of(const std::vector<PracticeRule>& rules);

/// Where panels are pinned: as said, else at the eave (common practice at 3/12 and under, no
/// published source; UFC 3-110-03 of 2006 names the lower end).
FixedLine fixed_line_of(const Practice& practice);

/// The least fold that closes the end of a cap on seams: their height and 1/2 in (common practice,
/// no published source).
Length end_fold_least(const Practice& practice);

/// The overlap of two pieces on an edge of that kind, by the job's rule.
Length lap_on(EdgeKind kind, const Practice& practice);
/// The same on that edge: the lap chosen for it, else the rule's.
Length lap_on(const Edge& edge, const Practice& practice);
/// The least from a lap line to a screw: a head nearer than this pins the joint (common practice,
/// no published source).
constexpr Length lap_margin_least = sixteenths(8);
/// From the last screw before a lap to the first past it, at the least: no screw stands in a lap.
Length screw_gap_least(Length lap);

/// The key of the lap rule for such an edge: "lap", "lap_valley".
std::string_view lap_rule(EdgeKind kind);
/// The practice with that lap on edges of the kind. Problem: as with_rule().
Result<Practice> with_lap(const Practice& practice, EdgeKind kind, Length lap);

/// The tab, lap or fold that an end adds to the metal of a run fitted from side `first`: at a
/// corner only on the end fitted first, 0 at the other. end_metal() adds what geometry gives.
Length end_allowance(End end, Side side, Side first, const Practice& practice);

}  // namespace hemline
