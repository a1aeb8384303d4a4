// Roofs in plan, and room for all of them on the page at one scale: the first in a corner, the
// others wherever they stay clear of it and of each other, in its inside corners too.
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "field/screens/roof/roof_sheet.h"

namespace hemline {

/// A roof in plan, nm, before it has its place.
struct PackedLine {
    SheetLine line;
    PlanVector from, to, inside;
};
struct PlanPlane {
    std::vector<std::vector<PlanVector>> pieces, holes;
    std::vector<std::pair<PlanVector, PlanVector>> seams;
    PlanVector falls;
    std::optional<Slope> pitch;
};
struct PlanRoof {
    std::vector<PackedLine> lines;
    std::vector<PlanPlane> planes;
    std::optional<std::pair<PlanVector, PlanVector>> gap;
    double x0 = 1e18, y0 = 1e18, x1 = -1e18, y1 = -1e18;

    void reach(PlanVector p) {
        x0 = std::min(x0, p.x);
        x1 = std::max(x1, p.x);
        y0 = std::min(y0, p.y);
        y1 = std::max(y1, p.y);
    }
    [[nodiscard]] double w() const { return std::max(1.0, x1 - x0); }
    [[nodiscard]] double h() const { return std::max(1.0, y1 - y0); }
};

/// A roof's place on the page.
struct PlacedRoof {
    const PlanRoof* roof;
    float x, y;  ///< of its upper left corner
    double scale;

    [[nodiscard]] ImVec2 at(PlanVector p) const {
        return {x + static_cast<float>((p.x - roof->x0) * scale),
                y + static_cast<float>((roof->y1 - p.y) * scale)};
    }
    [[nodiscard]] static ImVec2 way(PlanVector p) {
        return {static_cast<float>(p.x), -static_cast<float>(p.y)};
    }
};

/// At the largest scale at which all have room; empty: there is none.
std::vector<PlacedRoof> packed(const std::vector<PlanRoof>& roofs, float gap, Box box);

}  // namespace hemline
