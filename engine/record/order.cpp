// The one order of all tablets' events, the next time stamp in it, and what undo would strike.
#include <algorithm>
#include <limits>
#include <tuple>

#include "engine/record/event_bytes.h"
#include "engine/record/job.h"
#include "engine/record/struck.h"

namespace hemline {
namespace {

/// By time, device, sequence; two that share all three (a copied tablet) by their bytes, so that
/// neither is lost and the order does not depend on which was read first.
bool comes_before(const Event& a, const Event& b) {
    const auto key_a = std::tie(a.when, a.id), key_b = std::tie(b.when, b.id);
    if (key_a != key_b) {
        return key_a < key_b;
    }
    return frame_of(a) < frame_of(b);
}

bool same(const Event& a, const Event& b) {
    return a.id == b.id && a.when == b.when && frame_of(a) == frame_of(b);
}

}  // namespace

std::vector<Event> in_order(std::vector<Event> events) {
    std::sort(events.begin(), events.end(), comes_before);
    events.erase(std::unique(events.begin(), events.end(), same), events.end());
    return events;
}

HybridTime time_after(HybridTime last, std::int64_t wall_ms) {
    if (wall_ms > last.wall_ms) {
        return {wall_ms, 0};
    }
    if (last.counter < std::numeric_limits<std::uint32_t>::max()) {
        return {last.wall_ms, last.counter + 1};
    }
    return {last.wall_ms + 1, 0};
}

HybridTime next_time(std::span<const Event> seen, std::int64_t wall_ms) {
    if (seen.empty()) {
        return {wall_ms, 0};
    }
    HybridTime last = seen.front().when;
    for (const Event& event : seen) {
        last = std::max(last, event.when);
    }
    return time_after(last, wall_ms);
}

std::optional<EventId> undo_target(std::span<const Event> events, std::uint64_t device) {
    const std::set<EventId> struck = struck_in(events);
    std::optional<EventId> last;
    for (const Event& event : events) {
        if (event.id.device == device && !std::holds_alternative<Struck>(event.fact) &&
            struck.count(event.id) == 0 && (!last || last->sequence < event.id.sequence)) {
            last = event.id;
        }
    }
    return last;
}

}  // namespace hemline
