// What was done last on each edge.
#pragma once

#include <map>
#include <span>
#include <string>

#include "engine/record/event.h"
#include "engine/record/job.h"

namespace hemline {

/// The latest event about each edge that is not struck, by the edge's id; they point into `events`,
/// which are in_order().
std::map<std::string, const Event*> last_on_edges(std::span<const Event> events, const Job& job);

}  // namespace hemline
