// A temperature of metal as it is read from a thermometer: "60 F", "-5 C".
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "engine/words/result_declared.h"

namespace hemline {

/// In whole tenths of a degree Fahrenheit.
struct Temperature {
    std::int32_t tenths = 0;

    auto operator<=>(const Temperature&) const = default;
};

constexpr Temperature fahrenheit(std::int32_t degrees) { return {degrees * 10}; }
constexpr double fahrenheit_of(Temperature t) { return t.tenths / 10.0; }

/// Reads whole degrees with F or C, -60 F to 250 F; without a letter they are F. Celsius to the
/// nearest tenth of a degree Fahrenheit.
Result<Temperature> parse_temperature(std::string_view text);

/// "60 F"; "59.5 F" where it is not whole.
std::string print_temperature(Temperature t);

}  // namespace hemline
