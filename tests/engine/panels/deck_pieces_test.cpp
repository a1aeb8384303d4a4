#include "engine/panels/deck_pieces.h"

#include <doctest/doctest.h>

#include <cmath>

using namespace hemline;

namespace {

/// Walks with the plane on their left, in feet.
DeckPlane walked(const std::vector<std::vector<PlanVector>>& walks) {
    constexpr double foot = 304.8e6;
    DeckPlane plane;
    for (const auto& walk : walks) {
        for (std::size_t i = 0; i < walk.size(); ++i) {
            plane.bounds.push_back({{}, "", walk[i] * foot, walk[(i + 1) % walk.size()] * foot});
        }
    }
    return plane;
}

std::vector<double> areas_between(const DeckPlane& plane, double from, double to) {
    constexpr double foot = 304.8e6;
    std::vector<double> areas;
    for (const DeckPiece& piece : deck_pieces(plane, from * foot, to * foot)) {
        areas.push_back(area_of(piece) / foot / foot);
    }
    return areas;
}

std::vector<double> about(std::vector<double> areas) {
    for (double& area : areas) {
        area = std::round(area * 1e6) / 1e6;
    }
    return areas;
}

}  // namespace

TEST_CASE("A strip is in one piece beside a hole, in two across it, the lower first") {
    const DeckPlane plane =
        walked({{{0, 0}, {12, 0}, {12, 10}, {0, 10}}, {{4, 3}, {4, 6}, {8, 6}, {8, 3}}});
    CHECK(about(areas_between(plane, 0, 4)) == std::vector<double>{40});
    CHECK(about(areas_between(plane, 5, 7)) == std::vector<double>{6, 8});
    CHECK(about(areas_between(plane, 3, 5)) == std::vector<double>{17});
    CHECK(about(areas_between(plane, 3, 9)) == std::vector<double>{60 - 12});
    CHECK(about(areas_between(plane, 12, 13)).empty());
}

TEST_CASE("Pieces that touch in a corner alone are two") {
    const DeckPlane plane = walked({{{0, 0}, {5, 4}, {0, 8}}, {{5, 4}, {10, 0}, {10, 8}}});
    CHECK(about(areas_between(plane, 0, 10)) == std::vector<double>{20, 20});
    CHECK(about(areas_between(plane, 1, 2)) == std::vector<double>{8 * 0.7});
}
