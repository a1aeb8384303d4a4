// Sides as a test says them, and edges as it asks for them.
#pragma once

#include <algorithm>
#include <cmath>
#include <string>
#include <vector>

#include "engine/body/roof.h"
#include "engine/measure/length_text.h"

namespace hemline::test {

constexpr double foot = 304.8e6;

inline Length in_feet(double feet) { return nanometres(std::llround(feet * foot)); }

inline BodySide said_side(const std::string& id, SideKind kind, double feet,
                          const std::string& pitch = "", Angle corner = square_out) {
    BodySide made = {id, kind, {}, corner, {}};
    if (feet > 0) {
        made.length = in_feet(feet);
    }
    if (!pitch.empty()) {
        made.pitch = *parse_slope(pitch);
    }
    return made;
}

inline const BodyEdge& edge_of(const Body& body, const std::string& id) {
    return *std::find_if(body.edges.begin(), body.edges.end(),
                         [&](const BodyEdge& edge) { return edge.id == id; });
}

inline std::vector<BodyEdge> edges_of(const Body& body, EdgeKind kind) {
    std::vector<BodyEdge> of_kind;
    for (const BodyEdge& edge : body.edges) {
        if (edge.kind == kind) {
            of_kind.push_back(edge);
        }
    }
    return of_kind;
}

}  // namespace hemline::test
