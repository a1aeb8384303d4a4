// Strikes that no longer count because the device that wrote them took them back.
#pragma once

#include <set>
#include <span>

#include "engine/record/event.h"

namespace hemline {

/// Strikes that do not count. A strike counts even if it is struck (two that strike each other
/// would have no answer), unless the same device struck it later: so is a strike taken back that
/// the disk refused.
std::set<EventId> strikes_taken_back(std::span<const Event> events);

}  // namespace hemline
