// Labels in rows below the marks they name, each joined to its mark by a line that bends where it
// must.
//
//   ┬┬──────────┬┬       marks on the tape
//   │└──┐     ┌─┘│
//   ▔▔▔ ▔▔▔ ▔▔▔  │       the upper row; a leader to a lower one goes down between its labels
//               ▔▔▔
// In each half of the piece the labels are in the order of the tape, row by row, as words are read.
#pragma once

#include <vector>

#include "engine/roof/edge.h"
#include "field/touch/box.h"

namespace hemline {

struct LabelWanted {
    float at;    ///< pixel of its mark
    float w, h;  ///< of its words
    Side half;   ///< of the piece, in which its mark lies
};

struct Spot {
    float x, y;
};

struct LabelPlaced {
    Box box;
    std::vector<Spot> leader;  ///< from the mark down to the top of the box
};

struct LabelRows {
    std::vector<LabelPlaced> labels;  ///< in the order of the wanted ones
    float height = 0;
    float bent = 0;  ///< sum of the pixels that leaders go sideways

    void move_down(float by);
};

/// The fewest rows that fit the width of the box, with the least bending of leaders: no leader
/// crosses another or a label. `labels` in the order of the tape; `mm`: pixels in a millimeter.
LabelRows rows_of(const std::vector<LabelWanted>& labels, Box box, float mm);

}  // namespace hemline
