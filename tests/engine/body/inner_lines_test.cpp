// Planes and inner lines, against closed forms: hips, gables and wings by hand; the lower envelope
// of planes over a convex walk; areas; and what turning, mirroring and scaling may not change.
#include "engine/body/inner_lines.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <random>

#include "engine/body/planes.h"
#include "tests/engine/body/chance_walks.h"

using namespace hemline;
using namespace hemline::test;

namespace {

double areas_together(const std::vector<MovingSide>& sides, const InnerLines& lines) {
    double area = 0;
    for (const Plane& plane : planes_of(sides, lines)) {
        area += area_of(plane, lines);
    }
    return area;
}

/// The height of a side's plane over a place in plan.
double height_over(const MovingSide& side, PlanVector place) {
    const MovingLine line = line_of(side);
    return (dot(place, line.inside) - line.begin) / line.inward;
}

double plan_length(const InnerLines& lines, const InnerLine& line) {
    return length_of(lines.places[line.to].at - lines.places[line.from].at);
}

}  // namespace

TEST_CASE("A hip's ridge is the length less the width; each hip goes in by half the width") {
    const auto sides = sides_round({{0, 0}, {40, 0}, {40, 24}, {0, 24}}, {2});
    const InnerLines lines = trace_inner_lines(sides);
    REQUIRE(lines.stuck.empty());
    REQUIRE(lines.lines.size() == 5);
    int hips = 0;
    for (const InnerLine& line : lines.lines) {
        const LinePlace &from = lines.places[line.from], &to = lines.places[line.to];
        if (from.height == to.height) {
            CHECK(plan_length(lines, line) == doctest::Approx(16));
            CHECK(from.height == doctest::Approx(6));  // half of 24 at 6 in 12
        } else {
            ++hips;
            CHECK(plan_length(lines, line) == doctest::Approx(12 * std::sqrt(2)));
        }
    }
    CHECK(hips == 4);
}

TEST_CASE("A gable stands still, and a lean-to's roof ends at its high side") {
    const auto gable = sides_round({{0, 0}, {40, 0}, {40, 24}, {0, 24}}, {2, 0});
    const InnerLines lines = trace_inner_lines(gable);
    const auto planes = planes_of(gable, lines);
    REQUIRE(planes.size() == 2);
    CHECK(area_of(planes[0], lines) == doctest::Approx(480));
    CHECK(area_of(planes[1], lines) == doctest::Approx(480));
    const auto lean_to = sides_round({{0, 0}, {40, 0}, {40, 24}, {0, 24}}, {2, 0, 0, 0});
    const InnerLines high = trace_inner_lines(lean_to);
    CHECK(areas_together(lean_to, high) == doctest::Approx(960));
    double most = 0;
    for (const LinePlace& place : high.places) {
        most = std::max(most, place.height);
    }
    CHECK(most == doctest::Approx(12));
}

TEST_CASE("An L of equal wings has a valley and a hip on one line, and ridges half a wing in") {
    const auto sides = sides_round({{0, 0}, {40, 0}, {40, 20}, {20, 20}, {20, 40}, {0, 40}}, {2});
    const InnerLines lines = trace_inner_lines(sides);
    REQUIRE(lines.stuck.empty());
    CHECK(lines.lines.size() == 8);
    CHECK(std::count_if(lines.lines.begin(), lines.lines.end(),
                        [](const InnerLine& line) { return line.inside_corner; }) == 1);
    for (const InnerLine& line : lines.lines) {
        if (line.inside_corner) {
            CHECK(lines.places[line.to].at.x == doctest::Approx(10));
            CHECK(lines.places[line.to].at.y == doctest::Approx(10));
        }
    }
}

TEST_CASE(
    "A wing's gable at an inside corner grows along its line and stands over the lower roof") {
    // The wing's wall (side 3, upright) begins at the inside corner (20, 20).
    const auto sides =
        sides_round({{0, 0}, {40, 0}, {40, 20}, {20, 20}, {20, 40}, {0, 40}}, {2, 0, 2, 0, 2, 0});
    const InnerLines lines = trace_inner_lines(sides);
    REQUIRE(lines.stuck.empty());
    CHECK(areas_together(sides, lines) == doctest::Approx(1200));
    CHECK(std::any_of(lines.lines.begin(), lines.lines.end(), [&](const InnerLine& line) {
        return line.inside_corner && line.left == 2 && line.right == 3 &&
               std::abs(lines.places[line.to].at.x - 20) < 1e-9;
    }));
}

TEST_CASE("Walls alone make no roof, nor do two pitches on one line") {
    CHECK(trace_inner_lines(sides_round({{0, 0}, {40, 0}, {40, 24}, {0, 24}}, {0})).stuck.size() ==
          4);
    // When the notch has closed, both sides of it lie on one line with other pitches.
    const auto sides =
        sides_round({{0, 0}, {60, 0}, {60, 20}, {40, 20}, {40, 18}, {20, 18}, {20, 20}, {0, 20}},
                    {2, 2, 2, 1, 1, 1, 3, 2});
    CHECK_FALSE(trace_inner_lines(sides).stuck.empty());
}

TEST_CASE("Over a convex walk of eaves the roof is the lowest of its planes") {
    std::mt19937 random(7);
    std::uniform_real_distribution<double> angle(0, 2 * std::numbers::pi), pitch(0.6, 4);
    for (int house = 0; house < 100; ++house) {
        std::vector<double> around(5 + static_cast<std::size_t>(house) % 12);
        std::generate(around.begin(), around.end(), [&] { return angle(random); });
        std::sort(around.begin(), around.end());
        PlanWalk walk;
        std::vector<double> inward;
        for (const double a : around) {
            walk.push_back({30 * std::cos(a), 30 * std::sin(a)});
            inward.push_back(pitch(random));
        }
        const auto sides = sides_round(walk, inward);
        const InnerLines lines = trace_inner_lines(sides);
        REQUIRE(lines.stuck.empty());
        for (const LinePlace& place : lines.places) {
            double lowest = 1e9;
            for (const MovingSide& side : sides) {
                lowest = std::min(lowest, height_over(side, place.at));
            }
            CHECK(std::abs(lowest - place.height) < 60e-9);
        }
        CHECK(std::abs(areas_together(sides, lines) / plan_area(sides) - 1) < 1e-9);
    }
}

TEST_CASE("Planes fill the walk, and agree along every line between them") {
    std::mt19937 random(11);
    std::uniform_int_distribution<int> way(0, 2), one_in_four(0, 3);
    std::uniform_real_distribution<double> pitch(1, 4);
    int stuck = 0;
    for (int house = 0; house < 1000; ++house) {
        const PlanWalk walk = walk_by_chance(random);
        const int how = way(random);
        std::vector<double> inward;
        for (std::size_t i = 0; i < walk.size(); ++i) {
            inward.push_back(how == 0   ? 2
                             : how == 1 ? pitch(random)
                                        : (one_in_four(random) == 0 ? 0 : 2));
        }
        const auto sides = sides_round(walk, inward);
        const InnerLines lines = trace_inner_lines(sides);
        if (!lines.stuck.empty()) {
            CHECK(how != 0);  // equal pitches all round always make a roof
            ++stuck;
            continue;
        }
        CHECK(std::abs(areas_together(sides, lines) / plan_area(sides) - 1) < 1e-9);
        for (const InnerLine& line : lines.lines) {
            for (const std::size_t plane : {line.left, line.right}) {
                for (const std::size_t end : {line.from, line.to}) {
                    if (sides[plane].inward > 0) {
                        CHECK(std::abs(height_over(sides[plane], lines.places[end].at) -
                                       lines.places[end].height) < 100e-9);
                    }
                }
            }
        }
    }
    CHECK(stuck < 300);
}

TEST_CASE("Turned, mirrored or scaled, a walk has the roof turned, mirrored or scaled") {
    std::mt19937 random(13);
    const auto areas = [](const PlanWalk& walk) {
        const auto sides = sides_round(walk, {2});
        const InnerLines lines = trace_inner_lines(sides);
        std::vector<double> all;
        for (const Plane& plane : planes_of(sides, lines)) {
            all.push_back(area_of(plane, lines));
        }
        std::sort(all.begin(), all.end());
        return all;
    };
    for (int house = 0; house < 100; ++house) {
        const PlanWalk walk = walk_by_chance(random);
        PlanWalk turned, mirrored, scaled;
        for (const PlanVector corner : walk) {
            turned.push_back({corner.x * 0.6 - corner.y * 0.8, corner.x * 0.8 + corner.y * 0.6});
            mirrored.insert(mirrored.begin(), PlanVector{-corner.x, corner.y});
            scaled.push_back(corner * 1e7);
        }
        const std::vector<double> was = areas(walk);
        for (const auto& [other, times] :
             {std::pair(turned, 1.0), std::pair(mirrored, 1.0), std::pair(scaled, 1e14)}) {
            const std::vector<double> is = areas(other);
            REQUIRE(is.size() == was.size());
            for (std::size_t i = 0; i < was.size(); ++i) {
                CHECK(is[i] / times == doctest::Approx(was[i]).epsilon(1e-7));
            }
        }
    }
}
