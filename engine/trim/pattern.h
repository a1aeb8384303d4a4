// The flat pattern of a piece: the outline to cut, the lines to fold, and the panels between them.
//
//      0                                                     length
//    0 ┌───────────────────────────────────────────────────────┐
//      │ flange                                                 │
//      ├╌┬╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌ bend ╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌╌┤ edges[1]
//      │t┊ face                                                 │
//      └─┴────────────────────────────────────────────────────╴╴┘ girth
//
//   Seen with the upper face up, the piece's left end at the left. Whole nanometers: the other hand
//   is mirrored() exactly. For a screen: draw outline and slits as cuts, folds as dashes.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "engine/trim/end_work.h"
#include "engine/words/result_declared.h"

namespace hemline {

struct FlatLine {
    FlatPoint a, b;

    bool operator==(const FlatLine&) const = default;
};

/// A part of a leg that is folded across the piece at its end.
struct FlatTab {
    Side side = Side::left;
    std::size_t leg = 0;
    FlatLine fold;       ///< from the leg's upper edge on the page to its lower edge
    double degrees = 0;  ///< + away from the upper face
    FlatOutline outline;

    bool operator==(const FlatTab&) const = default;
};

/// A fold line: of a bend of the section, or of a tab.
struct FlatFold {
    FlatLine line;
    double degrees = 0;               ///< + away from the upper face
    std::optional<std::size_t> bend;  ///< index of the section's bend; none: a tab's fold

    bool operator==(const FlatFold&) const = default;
};

struct FlatPattern {
    Length length;
    std::size_t root = 0;       ///< the leg on the deck: it stays while the others fold
    std::size_t main_bend = 0;  ///< the bend that the roof decides; else the first
    FlatLegs legs;
    FlatOutline outline;
    std::vector<FlatFold> folds;
    std::vector<FlatLine> slits;      ///< cut, but no metal falls
    std::vector<FlatOutline> panels;  ///< by leg: what folds with the section's bends
    std::vector<FlatTab> tabs;
    std::vector<Hem> hems;  ///< by leg
};

/// The pattern of a piece `cut` long. Problems: the cuts of the two ends would meet, a cut severs a
/// leg, or a tab would be torn from a leg that it still hangs on.
Result<FlatPattern> flat_pattern(const Section& section, const std::vector<double>& bends,
                                 Length cut, const std::vector<EndStep>& left,
                                 const std::vector<EndStep>& right);

/// The other hand, exactly.
FlatPattern mirrored(const FlatPattern& pattern);

/// The flat piece's area in mm².
double area_mm2(const FlatPattern& pattern);

}  // namespace hemline
