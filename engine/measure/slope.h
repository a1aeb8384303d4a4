// Slope of a roof as it was read: rise in 12, degrees of a digital level, or percent.
//
//          /|
//         / | rise        5/12 = 22.62 deg = 41.67 %
//        /θ_|
//         run
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

#include "engine/result.h"

namespace hemline {

enum class SlopeNotation : std::uint8_t { rise_in_12 = 0, degrees = 1, percent = 2 };

/// A slope in the notation it was read in, in exact millionths of its unit.
struct Slope {
    SlopeNotation notation = SlopeNotation::rise_in_12;
    std::int64_t millionths = 0;

    bool operator==(const Slope&) const = default;
};

constexpr Slope rise_in_12(std::int64_t rise) {
    return {SlopeNotation::rise_in_12, rise * 1'000'000};
}

double degrees_of(Slope slope);
double percent_of(Slope slope);
double rise_in_12_of(Slope slope);
/// Sloped length of one unit of run: 1/cosθ.
double slope_factor_of(Slope slope);

/// Error of the reading itself, in degrees, by how it was taken: a rise read to 1/16 in over a 12
/// in level; a digital level's last shown tenth of a degree; half a percent. From memory.
double reading_error_degrees(Slope slope);

/// Reads "5/12", "5:12", "5 in 12", "4 1/2 /12", "4.5/12", "7/10" (any run), "22.6deg", "22.6°",
/// "41%". Legal: 0 up to and below 90 degrees. A bare number is a Problem.
Result<Slope> parse_slope(std::string_view text);

/// "5/12", "4.5/12", "22.6 deg", "41 %"; parse_slope() gives the same Slope back.
std::string print_slope(Slope slope);

}  // namespace hemline
