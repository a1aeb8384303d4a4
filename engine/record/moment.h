// When an event was written: its place in the common order, and what the clock said.
#pragma once

#include <compare>
#include <cstdint>
#include <limits>
#include <optional>

#include "engine/record/event_id.h"

namespace hemline {

/// Hybrid logical clock: the device's clock, raised so that it never runs backwards past an event
/// already seen; the counter orders events of one millisecond. Use it for nothing but the order: a
/// single clock that is years ahead raises everybody's.
struct HybridTime {
    std::int64_t wall_ms = 0;  ///< Unix time
    std::uint32_t counter = 0;

    auto operator<=>(const HybridTime&) const = default;
};

/// The latest time that a clock may say, the end of the year 9999; and the last possible logical
/// time. Events after that have the same time, and say what they come after (Moment).
constexpr std::int64_t wall_ms_most = 253'402'300'799'999;
constexpr HybridTime time_last{wall_ms_most + 1, std::numeric_limits<std::uint32_t>::max()};

/// What a device's clock said, right or wrong: shown to people and used for their days, never for
/// the order.
struct WallTime {
    std::int64_t ms = 0;  ///< Unix time

    auto operator<=>(const WallTime&) const = default;
};

/// What the writer's tablet held when it wrote.
struct Moment {
    WallTime clock;
    std::optional<EventId> after;  ///< the last event it held, in the common order; none: the first

    bool operator==(const Moment&) const = default;
};

}  // namespace hemline
