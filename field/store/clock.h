// The wall clock: read here, so that the engine need not.
#pragma once

#include <cstdint>

namespace hemline {

/// Unix time in milliseconds; 0 when the tablet's clock stands before 1970.
std::int64_t wall_ms();

}  // namespace hemline
