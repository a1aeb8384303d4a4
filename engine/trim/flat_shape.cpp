// The only file that includes Boost.Geometry. Nanometers below 2^53 are whole in a double.
#include "engine/trim/flat_shape.h"

#include <algorithm>
#include <cmath>

// The library's headers warn under clang, and include headers that they call deprecated.
#define BOOST_ALLOW_DEPRECATED_HEADERS
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wunused-parameter"
#pragma GCC diagnostic ignored "-Wdeprecated-copy"
#include <boost/geometry/algorithms/correct.hpp>
#include <boost/geometry/algorithms/difference.hpp>
#include <boost/geometry/geometries/multi_polygon.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>
#pragma GCC diagnostic pop

namespace hemline {

namespace {

namespace bg = boost::geometry;
using Point = bg::model::d2::point_xy<double>;
using Polygon = bg::model::polygon<Point>;
using Polygons = bg::model::multi_polygon<Polygon>;

Polygon polygon_of(const FlatOutline& outline) {
    Polygon polygon;
    for (const FlatPoint& p : outline) {
        polygon.outer().emplace_back(static_cast<double>(p.x), static_cast<double>(p.y));
    }
    bg::correct(polygon);
    return polygon;
}

FlatOutline corners_of(const FlatBox& box) {
    return {{box.x0, box.y0}, {box.x0, box.y1}, {box.x1, box.y1}, {box.x1, box.y0}};
}

std::vector<FlatOutline> outlines_of(const Polygons& polygons) {
    std::vector<FlatOutline> outlines;
    for (const Polygon& polygon : polygons) {
        FlatOutline outline;
        for (const Point& p : polygon.outer()) {
            outline.push_back({std::llround(p.x()), std::llround(p.y())});
        }
        outline = tidy(std::move(outline));
        if (outline.size() >= 3) {
            outlines.push_back(std::move(outline));
        }
    }
    return outlines;
}

#pragma GCC diagnostic push
#ifndef __clang__
#pragma GCC diagnostic ignored "-Wmaybe-uninitialized"  // of a factor that the library sets
#endif
Polygons without(const Polygons& from, const Polygon& cut) {
    Polygons rest;
    bg::difference(from, cut, rest);
    return rest;
}
#pragma GCC diagnostic pop

/// Wider than the outline by a millimeter on each side.
FlatBox around(const FlatOutline& outline) {
    constexpr std::int64_t wider = 1'000'000;
    FlatBox box{outline.front().x, outline.front().y, outline.front().x, outline.front().y};
    for (const FlatPoint& p : outline) {
        box = {std::min(box.x0, p.x), std::min(box.y0, p.y), std::max(box.x1, p.x),
               std::max(box.y1, p.y)};
    }
    return {box.x0 - wider, box.y0 - wider, box.x1 + wider, box.y1 + wider};
}

/// Twice the area, above 0 where the outline runs the right way round.
double twice_area(const FlatOutline& outline) {
    double sum = 0;
    for (std::size_t i = 0; i < outline.size(); ++i) {
        const FlatPoint& p = outline[i];
        const FlatPoint& q = outline[(i + 1) % outline.size()];
        // In mm², so that the products for a long piece stay exact enough.
        sum += static_cast<double>(q.x) * 1e-6 * static_cast<double>(p.y) * 1e-6 -
               static_cast<double>(p.x) * 1e-6 * static_cast<double>(q.y) * 1e-6;
    }
    return sum;
}

bool between(const FlatPoint& a, const FlatPoint& b, const FlatPoint& c) {
    return b == a || (a.x == b.x && b.x == c.x) || (a.y == b.y && b.y == c.y);
}

}  // namespace

std::vector<FlatOutline> cut_out(const FlatBox& box, const std::vector<FlatOutline>& notches) {
    Polygons left{polygon_of(corners_of(box))};
    for (const FlatOutline& notch : notches) {
        left = without(left, polygon_of(notch));
    }
    return outlines_of(left);
}

std::vector<FlatOutline> parts_in(const FlatOutline& outline, const FlatOutline& inside) {
    // What of a box around it lies outside is cut off: one operation of the library instead of two
    // is a fiftieth of the browser's program.
    Polygons parts{polygon_of(outline)};
    const Polygons outside = without({polygon_of(corners_of(around(outline)))}, polygon_of(inside));
    for (const Polygon& part : outside) {
        parts = without(parts, part);
    }
    return outlines_of(parts);
}

double shared_mm2(const FlatOutline& a, const FlatOutline& b) {
    double shared = 0;
    for (const FlatOutline& part : parts_in(a, b)) {
        shared += area_mm2(part);
    }
    return shared;
}

double area_mm2(const FlatOutline& outline) { return std::abs(twice_area(outline)) / 2; }

FlatOutline tidy(FlatOutline outline) {
    if (twice_area(outline) < 0) {
        std::reverse(outline.begin(), outline.end());
    }
    for (std::size_t i = 0; outline.size() >= 3 && i < outline.size();) {
        const FlatPoint& before = outline[(i + outline.size() - 1) % outline.size()];
        const FlatPoint& after = outline[(i + 1) % outline.size()];
        if (between(before, outline[i], after)) {
            outline.erase(outline.begin() + static_cast<std::ptrdiff_t>(i));
            i = 0;  // its neighbors may be collinear now
        } else {
            ++i;
        }
    }
    const auto least = std::min_element(
        outline.begin(), outline.end(),
        [](const FlatPoint& a, const FlatPoint& b) { return a.x != b.x ? a.x < b.x : a.y < b.y; });
    std::rotate(outline.begin(), least, outline.end());
    return outline;
}

}  // namespace hemline
