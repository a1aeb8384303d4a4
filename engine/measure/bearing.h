// A bearing as a compass shows it: from north by way of east, in degrees or as one of the 16
// points.
//
//            N 0        parse_bearing("W") = parse_bearing("270") = 270°
//      W 270  +  E 90
//           S 180
#pragma once

#include <array>
#include <string_view>

#include "engine/quantity/angle.h"
#include "engine/words/result_declared.h"

namespace hemline {

/// N, NNE, NE, … clockwise, 22.5° apart.
constexpr std::array<std::string_view, 16> compass_points = {"N",  "NNE", "NE", "ENE", "E",  "ESE",
                                                             "SE", "SSE", "S",  "SSW", "SW", "WSW",
                                                             "W",  "WNW", "NW", "NNW"};
constexpr Angle between_points = microdegrees(22'500'000);

/// Reads a point of the compass, or degrees as parse_degrees() does.
Result<Angle> parse_bearing(std::string_view text);

/// "W", or "280°" where it lies between the points.
std::string print_bearing(Angle bearing);

}  // namespace hemline
