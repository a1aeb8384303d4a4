// The roof that a walk round its eaves and the pitches make: planes, and the edges between and
// above them.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "engine/body/body_sides.h"
#include "engine/body/inner_lines.h"
#include "engine/body/planes.h"
#include "engine/quantity/space.h"
#include "engine/roof/edge.h"

namespace hemline {

/// An edge of the roof, worked out. `from` is its left end, on a slope its foot.
struct BodyEdge {
    std::string id;
    EdgeKind kind = EdgeKind::eave;
    std::vector<std::size_t> sides;   ///< the walk's sides that it comes from: one, or the pair
    std::vector<std::size_t> planes;  ///< by their first sides: the planes that end at it
    End left = End::open, right = End::open;
    std::optional<double> corner_degrees;  ///< plan angle inside between a hip's or valley's eaves
    Space from, to;     ///< x along the first side, y to its left, z up from the eave
    double length = 0;  ///< true length, in nm
    double off = 0;     ///< how far that may be off, in nm
};

struct BodyPlane {
    std::size_t body = 0;            ///< of the roof's
    std::size_t side = 0;            ///< its first side
    std::vector<std::size_t> eaves;  ///< all of its sides, in walking order
    std::vector<std::vector<Space>> pieces;
    std::vector<std::vector<Space>> holes;  ///< where another body stands on it, walked clockwise
    double plan_area = 0, deck_area = 0;    ///< nm²
};

/// A side of a walk, closed, where it lies in the roof at the height of its body's eaves.
struct LaidSide {
    Space from, to;
};

struct Body {
    bool closes = false;  ///< else only the miss is known
    Length miss;
    std::vector<LaidSide> walk;  ///< every side, as planes and edges count them
    std::vector<BodyPlane> planes;
    std::vector<BodyEdge> edges;  ///< the sides' in walking order, then inner edges by their foot
};

/// Lengths to a billionth of the house. Edges no longer than they may be off are points and left
/// out. Problem: as close_sides(); sides that do not make a roof; a plane that falls toward an
/// upright side or meets a high eave on a slope: each names the sides.
Result<Body> work_out_body(std::span<const BodySide> sides, Tape tape);

}  // namespace hemline
