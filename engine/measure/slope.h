// Slope of a roof as it was read: rise in 12, degrees of a digital level, or percent.
//
//          /|
//         / | rise        5/12 = 22.62 deg = 41.67 %
//        /θ_|
//         run
#pragma once

#include <string_view>

#include "engine/quantity/slope_print.h"
#include "engine/words/result_declared.h"

namespace hemline {

double degrees_of(Slope slope);
double percent_of(Slope slope);
double rise_in_12_of(Slope slope);
/// Sloped length for a run of 1: 1/cosθ.
double slope_factor_of(Slope slope);

/// Error of the reading, in degrees, by how it was taken: a rise read to 1/16 in over a 12 in
/// level; a digital level's last shown tenth of a degree; half a percent. From memory.
double reading_error_degrees(Slope slope);

/// Reads "5/12", "5:12", "5 in 12", "5-12", "4 1/2 /12", "4.5/12", "7:10" (any run), "22.6deg",
/// "22.6°", "41%". Legal: 0 up to and below 90 degrees. A bare number is a Problem, and so is a
/// fraction alone: "1/4" may be 1/4:12 or 1 in 4.
Result<Slope> parse_slope(std::string_view text);

}  // namespace hemline
