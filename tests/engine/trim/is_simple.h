// Whether an outline crosses or touches itself, by Boost.Geometry.
#pragma once

#define BOOST_ALLOW_DEPRECATED_HEADERS
#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wunused-parameter"
#pragma GCC diagnostic ignored "-Wdeprecated-copy"
#include <boost/geometry/algorithms/correct.hpp>
#include <boost/geometry/algorithms/is_valid.hpp>
#include <boost/geometry/geometries/point_xy.hpp>
#include <boost/geometry/geometries/polygon.hpp>
#pragma GCC diagnostic pop

#include "engine/trim/flat_shape.h"

namespace hemline_test {

inline bool is_simple(const hemline::FlatOutline& outline) {
    namespace bg = boost::geometry;
    bg::model::polygon<bg::model::d2::point_xy<double>> polygon;
    for (const hemline::FlatPoint& p : outline) {
        polygon.outer().emplace_back(static_cast<double>(p.x), static_cast<double>(p.y));
    }
    bg::correct(polygon);
    return outline.size() >= 3 && bg::is_valid(polygon);
}

}  // namespace hemline_test
