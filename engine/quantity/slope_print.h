// A slope as it was read, and how it is printed.
#pragma once

#include <cstdint>
#include <string>

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

/// "5/12", "4.5/12", "22.6 deg", "41 %"; parse_slope() gives the same Slope back.
std::string print_slope(Slope slope);

}  // namespace hemline
