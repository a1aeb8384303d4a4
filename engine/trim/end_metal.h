// What an end of a run adds to the metal, and what is done there, from the edge and its trim.
//
//   inside the piece   |· end of the edge       past ·|· tab ·|  end of the metal
//   ___________________|______________________________|_______|
#pragma once

#include <optional>

#include "engine/trim/catalogue.h"
#include "engine/trim/practice.h"

namespace hemline {

/// What an end of a piece is: the end of the edge, or one half of a lap.
enum class EndWork {
    gable_tab,     ///< 1 in tab folded flat to the gable
    corner_tab,    ///< outside corner, fitted first: tab wraps behind the neighbour
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
    eave_foot,     ///< a hip's or valley's foot: both legs cut along the two eaves
    top_mitre,     ///< a valley's top: both legs cut along the ridge
};

struct EndMetal {
    EndWork work = EndWork::square;
    Length tab;    ///< folded, lapped or turned past the end of the edge
    Length past;   ///< metal past the end of the edge before the tab, by geometry
    Length plumb;  ///< a gable's face: its lower edge lies this far from the top of a plumb cut
    /// From the end of the edge back to where the outer edge of the leg on this roof (on the other
    /// roof) is cut, negative past it. None where nothing is cut so, or a pitch is missing.
    std::optional<Length> near_back, far_back;

    [[nodiscard]] Length added() const { return tab + past; }
};

/// The metal at one end of a run of `trim` on the edge. Tabs are practice's; lengths that geometry
/// gives lie on practice.cut_grid, 0 while a pitch is missing. Common practice, no published
/// source.
EndMetal end_metal(const Edge& edge, Side side, const Trim& trim, const Practice& practice);

}  // namespace hemline
