// The flat metal of a pan as it is cut: its corners along both sides, from its lower end.
//
//     top    /|      x from its left seam, y from the lowest metal; foot and top are cut from side
//           / |      to side, in several parts where a line meets another within the pan
//          |  |
//     foot |__|
#pragma once

#include <vector>

#include "engine/panels/laid_pans.h"

namespace hemline {

/// A corner of the metal, in whole nanometers.
struct CutCorner {
    Length x, y;
};
struct PanCut {
    std::vector<CutCorner> foot, top;  ///< from the left side to the right

    [[nodiscard]] bool is_square(const std::vector<CutCorner>& end) const {
        for (const CutCorner& corner : end) {
            if (absolute(corner.y - end.front().y) > same_place) {
                return false;
            }
        }
        return true;
    }
};

/// With the metal that lies past the deck's lines, below and above.
PanCut pan_cut(const DeckPlane& plane, const LaidPan& pan, const PanEnds& ends);

}  // namespace hemline
