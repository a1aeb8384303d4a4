// The common order of all tablets' events, the next time stamp in it, and what undo would strike.
#include <algorithm>
#include <iterator>
#include <limits>
#include <map>
#include <numeric>
#include <set>
#include <span>
#include <tuple>

#include "engine/record/event_bytes.h"
#include "engine/record/job.h"

namespace hemline {
namespace {

/// By time, device, sequence.
bool comes_before(const Event& a, const Event& b) {
    return std::tie(a.when, a.id) < std::tie(b.when, b.id);
}

/// Events with the same time, device and sequence (of a copied tablet) by their bytes, so that none
/// is lost and the order does not depend on which was read first; each once.
void order_copies(std::vector<Event>::iterator from, std::vector<Event>::iterator to,
                  std::vector<Event>& ordered) {
    if (to - from == 1) {
        ordered.push_back(std::move(*from));
        return;
    }
    std::map<Bytes, const Event*> copies;
    for (auto event = from; event != to; ++event) {
        copies.emplace(frame_of(*event), &*event);
    }
    for (const auto& [frame, event] : copies) {
        ordered.push_back(*event);
    }
}

/// How many of these events come before each, following what each says it comes after. An event
/// that follows none of these, or is part of a circle, is the first.
std::vector<std::size_t> depths(std::span<const Event> last) {
    std::map<EventId, std::size_t> place;
    for (std::size_t i = 0; i < last.size(); ++i) {
        place[last[i].id] = i;
    }
    constexpr std::size_t unknown = std::numeric_limits<std::size_t>::max();
    std::vector<std::size_t> depth(last.size(), unknown);
    for (std::size_t i = 0; i < last.size(); ++i) {
        std::vector<std::size_t> way;  // from i back to one whose depth is known
        std::size_t before = 0;
        for (std::size_t at = i;;) {
            if (depth[at] != unknown) {
                before = depth[at] + 1;
                break;
            }
            depth[at] = 0;
            way.push_back(at);
            const auto& moment = last[at].moment;
            const auto found = moment && moment->after ? place.find(*moment->after) : place.end();
            if (found == place.end()) {
                break;
            }
            at = found->second;
        }
        for (auto at = way.rbegin(); at != way.rend(); ++at) {
            depth[*at] = before++;
        }
    }
    return depth;
}

/// Events with the last possible time, by what they come after: their times no longer differ.
void order_the_last(std::vector<Event>& events) {
    const auto first = std::find_if(events.rbegin(), events.rend(), [](const Event& event) {
                           return event.when < time_last;
                       }).base();
    const std::vector<std::size_t> depth =
        depths(std::span<const Event>(events).last(static_cast<std::size_t>(events.end() - first)));
    std::vector<std::size_t> places(depth.size());
    std::iota(places.begin(), places.end(), std::size_t{0});
    std::stable_sort(places.begin(), places.end(),
                     [&](std::size_t a, std::size_t b) { return depth[a] < depth[b]; });
    std::vector<Event> ordered;
    for (const std::size_t place : places) {
        ordered.push_back(std::move(first[static_cast<std::ptrdiff_t>(place)]));
    }
    std::move(ordered.begin(), ordered.end(), first);
}

/// After the last possible time comes the same time again.
HybridTime time_after(HybridTime last, std::int64_t wall_ms) {
    if (wall_ms > last.wall_ms) {
        return {wall_ms, 0};
    }
    if (last.counter < time_last.counter) {
        return {last.wall_ms, last.counter + 1};
    }
    return last < time_last ? HybridTime{last.wall_ms + 1, 0} : time_last;
}

}  // namespace

std::vector<Event> in_order(std::vector<Event> events) {
    std::sort(events.begin(), events.end(), comes_before);
    std::vector<Event> ordered;
    ordered.reserve(events.size());
    for (auto from = events.begin(); from != events.end();) {
        const auto to = std::find_if(
            from, events.end(), [&](const Event& event) { return comes_before(*from, event); });
        order_copies(from, to, ordered);
        from = to;
    }
    order_the_last(ordered);
    return ordered;
}

void stamp(Event& event, std::span<const Event> held, std::int64_t wall_ms) {
    const WallTime clock{std::clamp(wall_ms, std::int64_t{0}, wall_ms_most)};
    event.when = {clock.ms, 0};
    event.moment = Moment{clock, {}};
    if (!held.empty()) {
        event.when = time_after(held.back().when, clock.ms);
        event.moment->after = held.back().id;
    }
}

std::optional<EventId> undo_target(std::span<const Event> events, const std::set<EventId>& struck,
                                   std::uint64_t device) {
    std::optional<EventId> last;
    for (const Event& event : events) {
        if (event.id.device == device && !struck_by(event.fact) && struck.count(event.id) == 0 &&
            (!last || last->sequence < event.id.sequence)) {
            last = event.id;
        }
    }
    return last;
}

}  // namespace hemline
