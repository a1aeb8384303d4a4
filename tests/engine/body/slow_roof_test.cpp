// Unequal pitches and upright sides against the second, slow roof; equal pitches against the
// outline offset inward by Boost.Geometry in small steps.
#include "tests/engine/body/slow_roof.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "engine/body/planes.h"

using namespace hemline;
using namespace hemline::test;

namespace {

double highest_of(const InnerLines& lines) {
    double most = 0;
    for (const LinePlace& place : lines.places) {
        most = std::max(most, place.height);
    }
    return most;
}

std::vector<double> plane_areas(const std::vector<MovingSide>& sides, const InnerLines& lines) {
    std::vector<double> areas(sides.size(), 0.0);
    for (const Plane& plane : planes_of(sides, lines)) {
        areas[plane.side] += area_of(plane, lines);
    }
    return areas;
}

}  // namespace

TEST_CASE("Planes are what a second, slow roof sweeps: unequal pitches and upright sides" *
          doctest::test_suite("large")) {
    std::mt19937 random(17);
    int compared = 0, with_upright = 0;
    for (int house = 0; house < 400 && compared < 200; ++house) {
        const PlanWalk walk = house % 4 < 2 ? star(random, 4 + below(random, 12))
                                            : uncrossed(random, 4 + below(random, 10));
        const bool upright = house % 2 == 0;
        std::vector<double> inward;
        for (std::size_t i = 0; i < walk.size(); ++i) {
            inward.push_back(upright && below(random, 4) == 0 ? 0 : 0.6 + 3 * share(random));
        }
        const auto sides = sides_round(walk, inward);
        const InnerLines lines = trace_inner_lines(sides);
        if (!lines.stuck.empty()) {
            continue;
        }
        constexpr int steps_to_top = 4000;
        const double step = highest_of(lines) / steps_to_top;
        const auto swept = swept_areas(sides, step, 2 * steps_to_top);
        REQUIRE(swept);
        ++compared;
        with_upright += upright ? 1 : 0;
        double round = 0;
        for (const MovingSide& side : sides) {
            round += length_of(side.to - side.from);
        }
        // A step sweeps the walk before it; what happens within it is seen at its end.
        const double within = 4 * round * 3.6 * step;
        const std::vector<double> areas = plane_areas(sides, lines);
        for (std::size_t i = 0; i < sides.size(); ++i) {
            if (lines.plane_of[i] == i) {
                CHECK(std::abs(areas[i] - (*swept)[i]) < within);
            }
        }
        CHECK(within < 0.04 * plan_area(sides));
    }
    CHECK(compared == 200);
    CHECK(with_upright > 50);
}
