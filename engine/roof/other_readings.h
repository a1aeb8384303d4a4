// What else a reading may have meant: a foot more, an inch less, two digits swapped.
#pragma once

#include <cstdint>
#include <vector>

#include "engine/roof/outline_suspects.h"

namespace hemline {

struct OtherReading {
    SuspectKind kind = SuspectKind::misread_foot;
    Length length;
    std::int64_t units_off = 1;  ///< how many feet, inches …; 1 where digits are swapped
};

/// How the readings of a roof are written.
enum class ReadIn : std::uint8_t { feet_and_inches, metric, either };

/// Feet and inches when every length lies on a tape's 1/64 in, metric when every one lies on a
/// whole millimeter, else either.
ReadIn read_in(const Walk& walk);

/// Other readings that may have been meant instead of `read`: those about `wanted` away from it
/// (the nearest number of feet, and of inches), and all with two digits swapped, however far away.
/// All above 0 and no longer than longest_readable().
std::vector<OtherReading> other_readings(Length read, Length wanted, ReadIn units);

}  // namespace hemline
