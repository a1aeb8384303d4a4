// Closures of a plane, counted and sized from its pans.
#pragma once

#include <cstdint>
#include <span>
#include <string>
#include <vector>

#include "engine/panels/laid_pans.h"

namespace hemline {

struct Practice;

/// So many closures of one length.
struct ClosureBlanks {
    std::int64_t count = 0;
    Length blank;
};

struct PanClosures {
    std::string edge;
    std::int64_t count = 0;             ///< pans that touch the line, on this plane alone
    Length blank;                       ///< the longest
    std::vector<ClosureBlanks> blanks;  ///< each length there is, the longest first
};

/// Of every edge at whose line the pans end with a closure, in the order of the plane's bounds. A
/// blank is the pan's clear width (less seam_foot) along the line, and two ears, up to the cut
/// grid.
std::vector<PanClosures> pan_closures(const DeckPlane& plane, std::span<const LaidPan> pans,
                                      const Practice& practice);

}  // namespace hemline
