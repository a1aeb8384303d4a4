// A trim's cross-section with its dimensions, as it lies on the roof: a line as bent, ticks at the
// bends, widths beside the legs.
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
};

/// What a finger touched in it.
struct Touched {
    int leg = -1, bend = -1, hem = -1;  ///< a hem by its leg
};

/// Draws it as large as the box allows. A leg can be touched where its width is written.
Touched draw_profile(Ui& ui, const ProfileAsked& asked, Box box);

}  // namespace hemline
