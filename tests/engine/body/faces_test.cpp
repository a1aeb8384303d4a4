// Faces: in one piece and over their eave; at one pitch as wide as they are seen from it, at
// unequal pitches so that no water stands.
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

/// Whether the walk round a plane goes along its eave.
bool holds_eave(const Plane& plane, std::size_t sides) {
    const std::vector<std::size_t>& walk = plane.pieces.front();
    const auto begins = std::find(walk.begin(), walk.end(), plane.side);
    if (begins == walk.end()) {
        return false;
    }
    const auto next = begins + 1 == walk.end() ? walk.begin() : begins + 1;
    return *next == (plane.side + 1) % sides;
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
            CHECK(holds_eave(plane, sides.size()));
            CHECK(turns_back(plane.pieces.front(), lines, line_of(sides[plane.side]).along, 1e-6) ==
                  2);
        }
    }
    CHECK(faces > 3000);
}

// At unequal pitches water runs over a hip from the flatter plane onto the steeper one, so a face
// need not be as wide as its eave. Where heights are linear between places, water stands only at a
// place from which no line leads down: common practice, no published source.
TEST_CASE("At unequal pitches each face is in one piece, holds its eave, and no water stands") {
    std::mt19937 random(72);
    int faces = 0;
    for (int i = 0; i < 300; ++i) {
        CAPTURE(i);
        std::vector<double> inward(static_cast<std::size_t>(3 + below(random, 5)));
        for (double& each : inward) {
            each = 0.5 + 47.5 * share(random) * share(random);  // 24:12 to 1/4:12
        }
        const auto sides = sides_round(walk_by_chance(random), inward);
        const InnerLines lines = trace_inner_lines(sides);
        if (!lines.stuck.empty()) {
            continue;  // two sides in one line, at two pitches
        }
        const auto& plane_of = lines.plane_of;
        for (const Plane& plane : planes_of(sides, lines)) {
            if (std::count(plane_of.begin(), plane_of.end(), plane.side) > 1) {
                continue;
            }
            ++faces;
            CAPTURE(plane.side);
            REQUIRE(plane.pieces.size() == 1);
            CHECK(holds_eave(plane, sides.size()));
        }
        std::vector<double> lowest_beside(lines.places.size(), 1e300);
        for (const InnerLine& line : lines.lines) {
            lowest_beside[line.from] =
                std::min(lowest_beside[line.from], lines.places[line.to].height);
            lowest_beside[line.to] =
                std::min(lowest_beside[line.to], lines.places[line.from].height);
        }
        for (std::size_t place = sides.size(); place < lines.places.size(); ++place) {
            CAPTURE(place);
            const bool is_on_a_line = lowest_beside[place] < 1e300;
            CHECK((!is_on_a_line || lowest_beside[place] < lines.places[place].height));
        }
    }
    CHECK(faces > 3000);
}
