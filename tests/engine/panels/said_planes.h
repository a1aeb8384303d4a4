// Planes for the tests of panels, from walks as a test says them.
#pragma once

#include <doctest/doctest.h>

#include <random>

#include "engine/panels/panel_layout.h"
#include "engine/roof/nearest.h"
#include "tests/engine/body/said_sides.h"
#include "tests/engine/roof/in.h"

namespace hemline::test {

/// The plane over an eave of a roof of those bodies.
inline DeckPlane said_plane(const std::vector<RoofBody>& bodies, const std::string& eave = "A") {
    const Result<Roof> roof = work_out_roof(bodies, Tape());
    REQUIRE(roof.ok());
    for (const BodyPlane& plane : roof->planes) {
        if (sides_of(bodies)[plane.side]->id == eave) {
            return deck_plane(*roof, bodies, plane);
        }
    }
    FAIL("no plane");
    return {};
}

/// A house of that many inches with two eaves, A and C; `left` and `right` of A are gables or what
/// is said.
inline std::vector<RoofBody> gable_roof(double long_inches, double deep_feet,
                                        SideKind right = SideKind::gable,
                                        SideKind left = SideKind::gable) {
    return {{"house",
             {said_side("A", SideKind::eave, long_inches / 12, "6/12"),
              said_side("B", right, deep_feet, right == SideKind::eave ? "6/12" : ""),
              said_side("C", SideKind::eave, long_inches / 12, "6/12"),
              said_side("D", left, deep_feet, left == SideKind::eave ? "6/12" : "")},
             {}}};
}
inline std::vector<RoofBody> hip_roof(double long_inches, double deep_feet) {
    return gable_roof(long_inches, deep_feet, SideKind::eave, SideKind::eave);
}
/// Hips all around, an inside corner after A: its plane has a hip left and a valley right.
inline std::vector<RoofBody> l_roof() {
    const auto eave = [](const std::string& id, double feet, Angle corner = square_out) {
        return said_side(id, SideKind::eave, feet, "6/12", corner);
    };
    return {{"house",
             {eave("A", 20, square_in), eave("B", 10), eave("C", 24), eave("D", 34), eave("E", 44),
              eave("F", 24)},
             {}}};
}

/// With a dormer on A, 8 ft wide, its front 4 ft up the plan.
inline std::vector<RoofBody> dormer_roof(double long_inches, double along_inches) {
    std::vector<RoofBody> bodies = gable_roof(long_inches, 24);
    bodies.push_back(
        {"dormer",
         {said_side("E", SideKind::gable, 8), said_side("F", SideKind::eave, 0, "4/12"),
          said_side("G", SideKind::open, 0), said_side("H", SideKind::eave, 0, "4/12")},
         RunsInto{"A", in_feet(along_inches / 12), in_feet(4), in_feet(4)}});
    return bodies;
}

/// The same everywhere, unlike the library's distributions.
inline std::int64_t within(std::mt19937& random, std::int64_t least, std::int64_t most) {
    return least + static_cast<std::int64_t>(random()) % (most - least + 1);
}

inline PanelLayout laid(const DeckPlane& plane, const PanelJob& job = {},
                        const std::vector<Penetration>& through = {}) {
    const Result<PanelLayout> layout = lay_panels(plane, job, through);
    REQUIRE(layout.ok());
    return *layout;
}

}  // namespace hemline::test
