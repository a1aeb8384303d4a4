// The same edge on a roof that was worked out with other readings.
#pragma once

#include <span>

#include "engine/body/body.h"

namespace hemline {

/// Of the edges that come from the same sides the nearest; null where there is none.
inline const BodyEdge* same_edge(std::span<const BodyEdge> edges, const BodyEdge& edge) {
    const Space middle = (edge.from + edge.to) * 0.5;
    const BodyEdge* same = nullptr;
    double nearest = 0;
    for (const BodyEdge& other : edges) {
        const double away = length_of((other.from + other.to) * 0.5 - middle);
        if (other.sides == edge.sides && (same == nullptr || away < nearest)) {
            same = &other;
            nearest = away;
        }
    }
    return same;
}

}  // namespace hemline
