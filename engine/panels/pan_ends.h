// What a pan's metal adds to the deck at its foot and its top, by what lies there.
//
//   foot  eave     lip + gap + hem past the deck's edge        ▪ = line on the deck
//         valley   − (half the open valley − gap − hem)
//   top   ridge …  − what the flat stops short + turn-up       sloped lines: square to them, so
//         hip      turn-up − gap                               along y it is sqrt(1 + s²) times
//         that
#pragma once

#include <optional>

#include "engine/panels/deck_plane.h"
#include "engine/panels/movement.h"
#include "engine/quantity/length.h"

namespace hemline {

/// Of one plane: its fixed line and what moves.
struct PanEnds {
    FixedLine fixed = FixedLine::eave;
    std::optional<Movement> movement;  ///< of its longest panel; none: no temperature is said
    Length lip, gap, hem;              ///< at the eave
    Length top_back;                   ///< the flat stops short of the top line by this
    Length turn_up;                    ///< of the top end
    Length side_gap, seam_height;
    Length valley_open;  ///< width at a valley's head
    Length order_grid;
};

/// Fixed at the eave: lip as practice says (3/4 in), gap 1/4 in, hem 1 in, and the flat stops 1 in
/// short, or what it grows and 1/2 in more; at the ridge as movement_of() says.
PanEnds pan_ends(const Practice& practice, const std::optional<Movement>& movement);

/// Past the line below, down the slope, in nanometers; below 0 the metal stops short of it.
double past_foot(const PanEnds& ends, const DeckBound& bound, double x);
/// Past the line above, up the slope.
double past_top(const PanEnds& ends, const DeckBound& bound, double x);

/// Half the open width of a valley, so far below its head: at which it is `open`, 4 in by a
/// historic federal rule, and 1 in more each 8 ft (from memory).
Length half_open_valley(Length below_head, Length open);

}  // namespace hemline
