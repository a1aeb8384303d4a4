// A corner at an edge's end: which piece lies there, whether it goes over or under its neighbor,
// and the angle that a gauge on both faces shows.
#pragma once

#include "engine/trim/catalogue.h"
#include "engine/trim/practice.h"
#include "engine/words/text.h"

namespace hemline {

struct Run;

bool turns_a_corner(End end);

/// An edge with a run of it; both outlive this.
struct EdgeEnds {
    const Edge& edge;
    const Run& run;
    const Trim* trim = nullptr;  ///< null: not in the catalogue
    const Practice& practice;

    /// Whether that piece of the run (0: any of them) lies at that end of the edge.
    [[nodiscard]] bool holds(Side side, int piece) const;
    /// The side fitted first has the tab and lies under.
    [[nodiscard]] bool lies_over(Side side) const;
};

/// "90°", of the corners of the piece (0: of the edge); both, where they differ. As a gauge on both
/// faces shows it: the plan angle of an outside corner, and 360° less that of an inside one; 90°
/// where none is stated.
Text corner_angles(const EdgeEnds& ends, int piece);
/// "over", "under", or which at which end.
Text corner_sides(const EdgeEnds& ends, int piece);

}  // namespace hemline
