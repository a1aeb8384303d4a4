// What an end of a run adds to the metal, and what is done there, from the edge and its trim.
//
//   inside the piece   |· end of the edge       past ·|· tab ·|  end of the metal
//   ___________________|______________________________|_______|
#pragma once

#include <optional>

#include "engine/trim/catalogue.h"
#include "engine/trim/practice.h"

namespace hemline {

/// What an end of a piece is: the end of the edge, or half of a lap.
enum class EndWork {
    gable_tab,     ///< 1 in tab folded flat to the gable
    corner_tab,    ///< outside corner, fitted first: tab wraps behind the neighbor
    corner_mitre,  ///< outside corner, fitted second: stops at the corner line
    corner_in,     ///< inside corner: face stops at the line, flange runs past it
    square,        ///< wall or open end, or a butt joint
    underlap,      ///< lies under the next piece: carries the lap, the beads, the hem notch
    overlap,       ///< lies over the piece before it
    eave_return,   ///< a gable's foot: plumb fold, tab turned across the eave's face
    peak,          ///< a gable's top: face cut plumb, the flange folded over the peak
    folded,        ///< folded over to close it, or to lie under the cap that covers it
    turn_up,       ///< turned up against a wall
    kick_out,      ///< a sidewall's foot, turned out so that water leaves the wall
    apron_corner,  ///< a headwall past a corner of its wall: its wall leg wrapped round the corner
    wall_foot,     ///< a sidewall's foot on that metal, its wall leg wrapped round over it
    eave_foot,     ///< a hip's or valley's foot: both legs cut along the two eaves
    top_mitre,     ///< a valley's top: both legs cut along the ridge
};

/// Which ends of an edge carry the tab of their corner, where the two edges of a corner do not
/// settle it by the side that each is fitted from; none: the side fitted first carries it.
struct CornerTabs {
    std::optional<bool> left, right;

    bool operator==(const CornerTabs&) const = default;
};

struct EndMetal {
    EndWork work = EndWork::square;
    Length tab;   ///< folded, lapped or turned past the end of the edge
    Length past;  ///< from geometry: metal past the end of the edge, before the tab
    /// A gable's face: its lower edge lies this far from the top of a plumb cut. A sidewall's wall
    /// leg at a corner: its free edge lies this far uphill of the plumb fold's foot.
    Length plumb;
    /// An eave's square-cut face at a corner: at its lower edge it ends this far in from its end at
    /// the bend; negative past it.
    Length lean;
    Length wrap;  ///< of what is past: so much of the wall leg is wrapped round the corner
    /// How far back from the end of the edge the outer edge of the leg on this roof (on the other
    /// roof) is cut; negative past it. None where there is no such cut, or a pitch is missing.
    std::optional<Length> near_back, far_back;

    [[nodiscard]] Length added() const { return tab + past; }
};

/// The metal at an end of a run of `trim` on the edge. Tabs come from practice; lengths that
/// geometry gives are rounded to practice.cut_grid, and are 0 while a pitch is missing. Common
/// practice, no published source.
EndMetal end_metal(const Edge& edge, Side side, const Trim& trim, const Practice& practice,
                   const CornerTabs& tabs = {});

}  // namespace hemline
