// What counts of all that was said and done, whatever the order it came in: what was struck or
// crossed out by a pick, what was lost, and what still disagrees with what.
#pragma once

#include <set>
#include <span>
#include <vector>

#include "engine/record/conflict.h"
#include "engine/record/event.h"

namespace hemline {

struct Standing {
    std::set<EventId> struck;        ///< crossed out, by a strike or because another was picked
    std::set<EventId> spoiled_cuts;  ///< cuts that a loss took, and spare cuts
    std::set<EventId> spare_cuts;    ///< another cut of the same piece was picked
    std::set<EventId> settling;      ///< readings whose writer had seen others that disagree
    /// In the order of their first sides, numbers used twice last. Two events that say the same
    /// agree; two cuts of the same piece never do, because both used metal.
    std::vector<Conflict> conflicts;
};

/// Of events that are in_order(). O(n log n) in the events and in what they supersede.
Standing standing_of(std::span<const Event> events);

}  // namespace hemline
