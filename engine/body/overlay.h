// The bodies of a roof over one another, in plan: every line cut where it meets another, and on
// both sides of each piece the plane that is seen from above, the highest there.
#pragma once

#include <cstddef>
#include <optional>
#include <span>
#include <vector>

#include "engine/body/placed_body.h"

namespace hemline {

struct PlanLine {
    PlanVector from, to;
};

/// A piece of a line or of several that lie on one another, with different planes on its sides.
struct OverlayPiece {
    std::size_t from = 0, to = 0;            ///< places
    std::optional<std::size_t> left, right;  ///< planes; none: no roof there
    std::vector<std::size_t> lines;          ///< that lie there
};

struct Overlay {
    double size = 1;  ///< of the whole roof
    std::vector<PlanVector> places;
    std::vector<OverlayPiece> pieces;
};

/// Places nearer than this are the same, heights nearer the same height; of size 1.
constexpr double overlay_hair = 1e-8;

/// What plane_seen_at() sees on both sides. O((lines + crossings)²).
Overlay overlay_of(std::span<const PlacedPlane> planes, std::span<const PlanLine> lines);

/// The highest plane there, of planes as high as one another the first; none under its host.
/// `size`: of the whole roof.
std::optional<std::size_t> plane_seen_at(std::span<const PlacedPlane> planes, PlanVector place,
                                         double size);

/// Where two planes are at one height, as far as it can lie in both; none where they never are.
std::optional<PlanLine> crossing_of(const PlacedPlane& a, const PlacedPlane& b);
/// Where a plane that runs in comes to its host's plane, wherever that ends.
std::optional<PlanLine> host_crossing_of(const PlacedPlane& plane);

}  // namespace hemline
