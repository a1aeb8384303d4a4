// A plane of the roof laid flat at its true size, as panels lie on it.
//
//     y up the slope     ______ top ______
//     |                 /                 \          bounds: walked with the plane on their left
//     |                /                   \         a hip rises s = tan α / cos θ for each unit of
//     x 0---- x -----   /______ eave _________\        x from the eave's left end, seen from
//     outside
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/body/roof.h"

namespace hemline {

/// What is nearer than this, in nanometers, is the same place: a plane is worked out to a billionth
/// of the house.
constexpr double same_place_nm = 1000;
constexpr Length same_place = nanometres(1000);

inline double nm_of(Length length) { return static_cast<double>(length.nm()); }

/// In nanometers; x is whole, and the same for what lies on one line up the slope.
struct DeckBound {
    std::optional<EdgeKind> kind;  ///< none: an open side
    std::string edge;
    PlanVector from, to;

    [[nodiscard]] bool is_upright() const { return from.x == to.x; }
    [[nodiscard]] double slope() const { return (to.y - from.y) / (to.x - from.x); }
    [[nodiscard]] double y_at(double x) const { return from.y + slope() * (x - from.x); }
    /// Its higher end.
    [[nodiscard]] PlanVector head() const { return from.y > to.y ? from : to; }
};

struct DeckPlane {
    std::string name;               ///< of its first eave
    std::vector<DeckBound> bounds;  ///< of all its pieces and holes
    double left = 0, right = 0;     ///< the least x and the most
    double top = 0;                 ///< the most y
    PlanVector origin, along;       ///< in the roof's plan: where x and y are 0, and x's way
    double stretch = 1;             ///< 1/cos θ
    Length lean;  ///< as read: gables and walls up the slope lean so far to the right at the top
    Length top_rise;  ///< as read: the top rises so much from left to right
};

/// Where a place on the deck lies in the roof's plan.
PlanVector in_plan(const DeckPlane& plane, PlanVector on_deck);

/// The plane as `roof` has it, out of those bodies.
DeckPlane deck_plane(const Roof& roof, std::span<const RoofBody> bodies, const BodyPlane& plane);

}  // namespace hemline
