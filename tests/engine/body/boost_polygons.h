// Polygons of Boost.Geometry, which no source of engine/body knows: the tests' second opinion.
#pragma once

#define BOOST_ALLOW_DEPRECATED_HEADERS
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wunused-parameter"
#pragma GCC diagnostic ignored "-Wdeprecated-copy"
#pragma GCC diagnostic ignored "-Wconversion"
#ifndef __clang__  // which has no such warning
#pragma GCC diagnostic ignored "-Wmaybe-uninitialized"
#endif
#include <boost/geometry.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>
#pragma GCC diagnostic pop

#include <vector>

#include "engine/body/moving_side.h"

namespace hemline::test {

namespace bg = boost::geometry;
using BoostPoint = bg::model::d2::point_xy<double>;
using BoostPolygon = bg::model::polygon<BoostPoint>;
using BoostPolygons = bg::model::multi_polygon<BoostPolygon>;

inline BoostPolygons boost_polygon(const std::vector<PlanVector>& walk) {
    BoostPolygon polygon;
    for (const PlanVector corner : walk) {
        polygon.outer().emplace_back(corner.x, corner.y);
    }
    bg::correct(polygon);
    return {polygon};
}

}  // namespace hemline::test
