// Equal pitches: the walk at a height is the outline offset inward. Boost.Geometry offsets it, in
// 200 small steps, each from the walk before, with miters up to 6: one large offset is another
// shape where the walk falls into two.
#include <doctest/doctest.h>

#include <algorithm>

#include "engine/body/planes.h"
#include "tests/engine/body/boost_polygons.h"
#include "tests/engine/body/chance_walks.h"

using namespace hemline;
using namespace hemline::test;

namespace {

BoostPolygons offset_inward(const BoostPolygons& from, double by) {
    BoostPolygons to;
    bg::buffer(from, to, bg::strategy::buffer::distance_symmetric<double>(-by),
               bg::strategy::buffer::side_straight(), bg::strategy::buffer::join_miter(6),
               bg::strategy::buffer::end_flat(), bg::strategy::buffer::point_square());
    return to;
}

/// Of a plane what lies higher than that, in plan: its walk cut at a level line.
double area_above(const std::vector<std::size_t>& piece, const InnerLines& lines, double height) {
    std::vector<PlanVector> kept;
    for (std::size_t i = 0; i < piece.size(); ++i) {
        const LinePlace &a = lines.places[piece[i]],
                        &b = lines.places[piece[(i + 1) % piece.size()]];
        if (a.height >= height) {
            kept.push_back(a.at);
        }
        if ((a.height < height) != (b.height < height)) {
            kept.push_back(a.at + (b.at - a.at) * ((height - a.height) / (b.height - a.height)));
        }
    }
    double area = 0;
    for (std::size_t i = 0; i < kept.size(); ++i) {
        area += turn(kept[i] - kept[0], kept[(i + 1) % kept.size()] - kept[0]) / 2;
    }
    return area;
}

double area_at(const std::vector<MovingSide>& sides, const InnerLines& lines, double height) {
    double area = 0;
    for (const Plane& plane : planes_of(sides, lines)) {
        for (const std::vector<std::size_t>& piece : plane.pieces) {
            area += area_above(piece, lines, height);
        }
    }
    return area;
}

}  // namespace

TEST_CASE("At 20 heights a walk is as large as its outline offset inward in small steps" *
          doctest::test_suite("large")) {
    std::mt19937 random(19);
    for (int house = 0; house < 60; ++house) {
        // No corner is so sharp that a miter of 6 is cut off.
        PlanWalk walk = house % 3 == 0 ? star(random, 4 + below(random, 17)) : rooms(random);
        if (house % 3 == 1 || walk.empty()) {
            walk = steps(random);
        }
        const auto sides = sides_round(walk, {1});
        const InnerLines lines = trace_inner_lines(sides);
        REQUIRE(lines.stuck.empty());
        double highest = 0;
        for (const LinePlace& place : lines.places) {
            highest = std::max(highest, place.height);
        }
        BoostPolygons offset = boost_polygon(walk);
        for (int step = 1; step <= 200; ++step) {
            offset = offset_inward(offset, highest / 200);
            if (step % 10 == 0) {
                const double area = area_at(sides, lines, highest * step / 200);
                CHECK(std::abs(bg::area(offset) - area) < 1e-3 * plan_area(sides));
            }
        }
    }
}
