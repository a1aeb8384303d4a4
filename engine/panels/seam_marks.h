// What trims get of the seams: marks along an eave or ridge in one tape reading, laps that lie too
// near to one, screws of a cap by its pans.
//
//   0          16         32         eave's left end: every mark is read from there
//   |          |          |
//   ===========+==========+=====     lap of an eave trim: at least 2 in off a seam
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/panels/panel_layout.h"

namespace hemline {

/// Seams that reach a level line of the plane.
struct LineMarks {
    std::string edge;
    EdgeKind kind = EdgeKind::eave;
    Length begins, ends;        ///< of the line, from the left end of the plane's eave
    std::vector<Length> seams;  ///< from there too
};
/// Of each eave, ridge, headwall, high eave and transition, in the order of the plane's bounds. The
/// ends of a top that lies aside of the eave are where it lies.
std::vector<LineMarks> seam_marks(const PanelLayout& layout);

/// Which laps lie nearer than `off` to a seam, all from the same end. The trim's next division is
/// then the one to take: seams stay.
std::vector<std::size_t> laps_on_seams(std::span<const Length> laps, std::span<const Length> seams,
                                       Length off);

/// The screws of what stands on a plane's closures: two a pan, a quarter of what of the pan lies
/// under the line from either seam (common practice, no published source).
struct CapScrews {
    std::string edge;
    std::vector<Length> along;  ///< on the cut grid, from the line's foot; of a level one from its
                                ///< left end, as the plane's eave is seen
};
/// Of every edge at whose line the pans end with a closure, in the order of the plane's bounds.
std::vector<CapScrews> cap_screws(const PanelLayout& layout, const Practice& practice);

/// Closures at an edge from the pans of all planes that end there.
PanClosures closures_at(std::span<const PanelLayout> layouts, const std::string& edge);

}  // namespace hemline
