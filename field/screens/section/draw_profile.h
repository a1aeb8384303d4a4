// A trim's cross-section with its dimensions, as it lies on the roof: one line as bent, its corners
// sharp, widths beside the legs; small hems again, larger, in a circle.
//
//   [flange 4 in]──╲___          edited: every dimension is a button, led out by a line where it
//                      │         has no room beside its leg
//        [bend 30° up]─┤──[face 3 1/2 in]
//                      ⊂
#pragma once

#include <vector>

#include "engine/trim/girth.h"
#include "field/touch/ui.h"

namespace hemline {

struct ProfileAsked {
    const Section& section;
    const std::vector<double>& bends;
    double deck_degrees = 0;  ///< slope of the deck, seen with the building at the left
    int leg = -1, bend = -1;  ///< what is being keyed in, drawn in chalk
    Marks marks = Marks::sixteenth;
    int hem = -1;                  ///< the leg of the hem that is asked about: shown large
    std::vector<Text> names = {};  ///< what the legs are called; empty: as in the section
    bool edited = false;           ///< widths, bends and hems are buttons
};

/// What a finger touched in it.
struct Touched {
    int leg = -1, bend = -1, hem = -1;  ///< a hem by its leg
};

/// Draws it as large as the box allows. A leg can be touched where its width is written.
Touched draw_profile(Ui& ui, const ProfileAsked& asked, Box box);

}  // namespace hemline
