// The wall clock and the local calendar, read here so that the engine need not.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "engine/work/day_sheet.h"

namespace hemline {

/// Unix time in milliseconds; 0 when the tablet's clock is before 1970.
std::int64_t wall_ms();

/// "9:41", local time.
std::string clock_time(WallTime time);
/// "4 May 2026".
Text day_name(WallTime time);

/// The local day that holds this time: midnight to midnight, 23 or 25 hours where the clocks are
/// moved.
DaySpan day_around(std::int64_t ms);
/// "2026-05-04"; none where there is no such day.
std::optional<DaySpan> day_named(std::string_view date);

}  // namespace hemline
