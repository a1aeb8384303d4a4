// What was done last on each edge.
#pragma once

#include <map>
#include <span>
#include <string>

#include "engine/record/event.h"
#include "engine/record/job.h"

namespace hemline {

/// For each edge, by id, the latest event about it that is not struck. Points into `events`, which
/// are in_order().
std::map<std::string, const Event*> last_on_edges(std::span<const Event> events, const Job& job);

}  // namespace hemline
