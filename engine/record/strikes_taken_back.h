// Strikes that no longer count, because their own device says so.
#pragma once

#include <set>
#include <span>

#include "engine/record/event.h"

namespace hemline {

/// Strikes that do not count. A strike counts though it is struck (two that strike each other would
/// have no answer), unless its own device wrote the other after it: so a strike that the disk would
/// not take is taken back.
std::set<EventId> strikes_taken_back(std::span<const Event> events);

}  // namespace hemline
