// A sketch of an edge as described: level or sloped, its ends by their words, and which side is
// fitted first.
#pragma once

#include <optional>

#include "engine/roof/edge.h"
#include "field/touch/ui.h"

namespace hemline {

/// What is marked as being asked, and which ends have been answered.
struct EdgeSketch {
    const Edge& edge;
    std::optional<Side> asked = {};
    bool left_said = true, right_said = true;
};

constexpr float edge_sketch_mm = 15;

void draw_edge_sketch(Ui& ui, const EdgeSketch& sketch, Box box);

}  // namespace hemline
