// Shapes cut into triangles: they fill the shape and nothing else. Areas by the shoelace formula
// (common practice, no published source).
#include "engine/trim/triangles.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

using namespace hemline;

namespace {

double area_of(const FlatOutline& outline) {
    double sum = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const FlatPoint &p = outline[i], &q = outline[(i + 1) % outline.size()];
        sum += static_cast<double>(p.x) * static_cast<double>(q.y) -
               static_cast<double>(q.x) * static_cast<double>(p.y);
    }
    return std::abs(sum) / 2;
}

double filled(const FlatOutline& outline) {
    double sum = 0;
    for (const auto& corners : triangles_of(outline)) {
        sum += std::abs(turn(outline[corners[0]], outline[corners[1]], outline[corners[2]])) / 2;
    }
    return sum;
}

}  // namespace

TEST_CASE("An L, walked either way, is filled, and so is a shape that goes round a hole") {
    FlatOutline ell = {{0, 0}, {46, 0}, {46, 24}, {22, 24}, {22, 42}, {0, 42}};
    CHECK(filled(ell) == doctest::Approx(46 * 24 + 22 * 18));
    std::reverse(ell.begin(), ell.end());
    CHECK(filled(ell) == doctest::Approx(46 * 24 + 22 * 18));
    // A square of 30 with one of 10 left out, by a cut that is walked both ways.
    const FlatOutline holed = {{0, 0},   {30, 0},  {30, 30}, {0, 30},  {0, 0},
                               {10, 10}, {10, 20}, {20, 20}, {20, 10}, {10, 10}};
    CHECK(filled(holed) == doctest::Approx(900 - 100));
}

TEST_CASE("Corners in a line make no triangle, and less than three none at all") {
    CHECK(triangles_of({{0, 0}, {5, 0}, {9, 0}}).empty());
    CHECK(triangles_of({{0, 0}, {5, 0}}).empty());
    CHECK(triangles_of({}).empty());
}

TEST_CASE("A thousand stars by chance are filled, each by two triangles fewer than its corners") {
    std::mt19937 chance(7);
    std::uniform_real_distribution<double> far(1e6, 9e6);
    for (int i = 0; i < 1000; ++i) {
        FlatOutline star;
        const int corners = 3 + i % 12;
        for (int k = 0; k < corners; ++k) {
            const double way = 6.283185307 * k / corners, out = far(chance);
            star.push_back({std::llround(out * std::cos(way)), std::llround(out * std::sin(way))});
        }
        CAPTURE(i);
        CHECK(triangles_of(star).size() == star.size() - 2);
        CHECK(filled(star) == doctest::Approx(area_of(star)));
    }
}
