// Pans cut on the slant that come from one length: their cuts lie together.
//
//    hip pan    /|                 the rest of a hip pan is a valley pan of the same slant, with
//              / |  valley pan     nothing turned; two hip pans, or two valley pans: one is turned
//             |  /|                end for end, so that its seam legs change sides
//             | / |
#pragma once

#include <span>
#include <utility>
#include <vector>

#include "engine/panels/laid_pans.h"

namespace hemline {

enum class SeamLegs { of_two_kinds, alike };

struct PanPair {
    std::size_t first = 0, second = 0;  ///< of the pans
    bool turned = false;                ///< one of them end for end
    Length length;                      ///< to order, up to the grid
    Length saved;                       ///< of what both would be ordered at
};

/// The pairing that saves most metal; pairs by their first pan. Only pans as wide as each other,
/// cut straight across at one end. One is turned only where legs are alike: the legs are checked.
std::vector<PanPair> pan_pairs(std::span<const LaidPan> pans, SeamLegs legs, Length order_grid);

}  // namespace hemline
