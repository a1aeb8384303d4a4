// Faces of a roof of one pitch: in one piece, over their eave, and as wide as they are seen from
// it.
#include <doctest/doctest.h>

#include <algorithm>

#include "engine/body/planes.h"
#include "tests/engine/body/chance_walks.h"

using namespace hemline;
using namespace hemline::test;

namespace {

/// How often a walk round turns back, seen along `way`; twice: every line across it cuts it once.
int turns_back(const std::vector<std::size_t>& walk, const InnerLines& lines, PlanVector way,
               double near) {
    std::vector<double> steps;
    for (std::size_t i = 0; i < walk.size(); ++i) {
        const double step =
            dot(lines.places[walk[(i + 1) % walk.size()]].at - lines.places[walk[i]].at, way);
        if (std::abs(step) > near) {
            steps.push_back(step);
        }
    }
    int turned = 0;
    for (std::size_t i = 0; i < steps.size(); ++i) {
        turned += (steps[i] > 0) != (steps[(i + 1) % steps.size()] > 0) ? 1 : 0;
    }
    return turned;
}

}  // namespace

// Aichholzer, Aurenhammer, Alberts and Gärtner 1995, from memory: each face of a straight skeleton
// is monotone along its edge. So water runs straight down it, to its eave or into a valley.
TEST_CASE("At one pitch each face is in one piece, holds its eave and drains straight down") {
    std::mt19937 random(71);
    int faces = 0;
    for (int i = 0; i < 300; ++i) {
        const auto sides = sides_round(walk_by_chance(random), {2});
        const InnerLines lines = trace_inner_lines(sides);
        REQUIRE(lines.stuck.empty());
        const auto& plane_of = lines.plane_of;
        for (const Plane& plane : planes_of(sides, lines)) {
            if (std::count(plane_of.begin(), plane_of.end(), plane.side) > 1) {
                continue;  // of two eaves in one line
            }
            ++faces;
            CAPTURE(i);
            REQUIRE(plane.pieces.size() == 1);
            const std::vector<std::size_t>& walk = plane.pieces.front();
            const auto begins = std::find(walk.begin(), walk.end(), plane.side);
            REQUIRE(begins != walk.end());
            const auto next = begins + 1 == walk.end() ? walk.begin() : begins + 1;
            CHECK(*next == (plane.side + 1) % sides.size());
            CHECK(turns_back(walk, lines, line_of(sides[plane.side]).along, 1e-6) == 2);
        }
    }
    CHECK(faces > 3000);
}
