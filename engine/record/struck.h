// Which events no longer count, because a strike says so.
#pragma once

#include <set>
#include <span>

#include "engine/record/event.h"

namespace hemline {

/// The targets of all strikes that count. A strike counts though it is struck itself (two that
/// strike each other would have no answer), unless its own device wrote the other after it: so a
/// strike that the disk would not take is taken back.
std::set<EventId> struck_in(std::span<const Event> events);

}  // namespace hemline
