// Folded metal as facets to draw from back to front (the painter's algorithm), exact for plane
// faces that meet, lie on each other or pass through each other.
//
//   faces ──triangles──▶ facets ──each cut by the planes of the others──▶ back to front
//
//   For a screen: near_end(), fold it up, facets_of(), back_to_front(), then fill each facet and
//   stroke its rims in turn; what lies behind gets painted over.
#pragma once

#include <cstdint>
#include <vector>

#include "engine/trim/folding.h"

namespace hemline {

/// What kind of line a side of a facet is.
enum class Rim : std::uint8_t {
    none,    ///< inside a face
    cut,     ///< an edge of the metal
    fold,    ///< a bend, or a tab's fold
    broken,  ///< the piece goes on here but is not shown
};

/// A convex plane part of a face.
struct Facet {
    std::vector<Space> corners;
    std::vector<Rim> rims;  ///< of the side from corner i to the next
    Space normal;           ///< of the upper face
    std::size_t leg = 0;
    bool is_tab = false;
};

/// One end of the pattern, to `reach` from it, with that end's tabs; closed hems are left open by a
/// few degrees, so that they do not lie in the plane of the metal they are folded on.
FlatPattern near_end(const FlatPattern& pattern, Side side, Length reach);

/// The facets of the pattern's faces as fold_up() gives them; `broken_at`: where the pattern was
/// cut off by near_end(), nm along the piece.
std::vector<Facet> facets_of(const FlatPattern& pattern, const std::vector<Face>& faces,
                             std::int64_t broken_at);

/// A plane figure, inside corners and all, its corners one after another: its sides are rims.
std::vector<Facet> plane_facets(const std::vector<Space>& corners, std::size_t leg);

/// The facets, cut where they pass through each other's planes, in an order in which each may be
/// drawn over those before it, as seen by an eye far away in that direction. O(n²) for n facets.
std::vector<Facet> back_to_front(std::vector<Facet> facets, const Space& toward_eye);

}  // namespace hemline
