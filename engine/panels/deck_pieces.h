// What of a plane lies between two lines up the slope: a pan's flat, in one piece or, at a dormer,
// in several.
//
//      |  ____/|
//      | /     |    parts: between neighboring corners, a foot below and a top above
//      |/______|
#pragma once

#include <cstddef>
#include <vector>

#include "engine/panels/deck_plane.h"

namespace hemline {

/// Between x1 and x2; heights at both.
struct DeckPart {
    double x1 = 0, x2 = 0;
    double foot1 = 0, foot2 = 0, top1 = 0, top2 = 0;
    std::size_t foot = 0, top = 0;  ///< the plane's bounds below and above
};

/// Connected parts, from left to right.
using DeckPiece = std::vector<DeckPart>;

/// The lowest piece first. O(b · log b) for each corner between, b bounds.
std::vector<DeckPiece> deck_pieces(const DeckPlane& plane, double from, double to);

double area_of(const DeckPiece& piece);

}  // namespace hemline
