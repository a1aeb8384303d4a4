// Spans of the clock.
#pragma once

#include <cstdint>

namespace hemline {

constexpr std::int64_t minute_ms = 60'000, hour_ms = 60 * minute_ms, day_ms = 24 * hour_ms;

}  // namespace hemline
