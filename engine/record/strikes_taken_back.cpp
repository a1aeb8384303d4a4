#include "engine/record/strikes_taken_back.h"

#include <map>

namespace hemline {

std::set<EventId> strikes_taken_back(std::span<const Event> events) {
    std::multimap<EventId, EventId> targets;  // of strikes
    for (const Event& event : events) {
        if (const auto target = struck_by(event.fact)) {
            targets.emplace(event.id, *target);
        }
    }
    std::set<EventId> taken_back;
    // A device's last strike first: no later strike can take it back.
    for (auto strike = targets.rbegin(); strike != targets.rend(); ++strike) {
        const auto& [id, target] = *strike;
        if (taken_back.count(id) == 0 && target.device == id.device &&
            target.sequence < id.sequence) {
            taken_back.insert(target);
        }
    }
    return taken_back;
}

}  // namespace hemline
