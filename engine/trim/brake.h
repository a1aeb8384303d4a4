// The order in which a section's bends are made on a leaf brake, and which bends cannot be made.
//
//            \    \  jaw: leans back, so that metal folds up to 135° before it
//             \    \ .
//   throat     \____\.    leaf, turning the free side up by N
//   ────────────────●=========        ● bend line; the metal lies flat on bed and leaf
//          bed |    ||        |
//              |    ||________|
//
//   The model: jaw, bed and leaf are straight bars across the page, the metal a line without
//   thickness, sharp at its bends. Either end of the strip may be clamped; the leaf only turns up,
//   so a bend away from the upper face is made with the sheet turned over. A bend can be made when,
//   from 0° to N by steps of 3°, no leg bent before runs into jaw, bed, leaf or the clamped side,
//   and no leg lies over the bend line; a folded hem is taken 1/32 in narrower. A hem is turned as
//   far as the jaw lets it, then pressed flat.
#pragma once

#include <string>
#include <vector>

#include "engine/trim/girth.h"

namespace hemline {

/// The brake's bars; common practice, no published source: measure yours.
struct Brake {
    Length jaw_foot = sixteenths(20);  ///< width of the jaw on the metal: 1 1/4 in
    Angle jaw_lean = degrees(45);      ///< back from upright
    Length jaw_height = inches(6);     ///< along the jaw
    Length bed_depth = inches(2);
    Length leaf_depth = sixteenths(24);  ///< 1 1/2 in
    Length bars_height = inches(6);      ///< of bed and leaf, below the metal
    Angle hem_turn = degrees(135);       ///< a hem is turned this far, then pressed
};

enum class Clamped { first_legs, last_legs };  ///< which end of the strip is under the jaw
enum class FaceUp { upper, under };            ///< which face is toward the jaw

struct BrakeStep {
    std::size_t bend = 0;  ///< index into bends and marks
    Length mark;           ///< from the first leg's free edge
    double degrees = 0;    ///< the brake turns this much, above 0
    Clamped clamped = Clamped::first_legs;
    FaceUp up = FaceUp::upper;
    Text in_the_way;  ///< empty: the bend can be made; else what is in the way, and where
};

/// All bends, in an order that blocks the fewest; among such orders hems first, then from the outer
/// bends inward. A bend of 0° is left out.
std::vector<BrakeStep> brake_order(const Section& section, const std::vector<double>& bends,
                                   const Blank& blank, const Brake& brake = {});

}  // namespace hemline
