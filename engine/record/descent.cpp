#include "engine/record/descent.h"

#include <algorithm>

namespace hemline {

std::map<Thing, std::vector<std::size_t>> events_by_thing(std::span<const Event> events) {
    std::map<Thing, std::vector<std::size_t>> by_thing;
    for (std::size_t i = 0; i < events.size(); ++i) {
        Thing thing = thing_of(events[i].fact);
        if (thing.subject != Subject::none) {
            by_thing[std::move(thing)].push_back(i);
        }
    }
    return by_thing;
}

std::map<std::uint64_t, std::uint32_t> first_numbers_twice(std::span<const Event> events) {
    std::vector<EventId> ids;
    ids.reserve(events.size());
    for (const Event& event : events) {
        ids.push_back(event.id);
    }
    std::sort(ids.begin(), ids.end());
    std::map<std::uint64_t, std::uint32_t> twice;
    for (auto id = std::adjacent_find(ids.begin(), ids.end()); id != ids.end();
         id = std::adjacent_find(id + 1, ids.end())) {
        twice.emplace(id->device, id->sequence);  // the first stays
    }
    return twice;
}

Descent::Descent(std::span<const Event> events, const std::vector<std::size_t>& of_thing,
                 const std::map<std::uint64_t, std::uint32_t>& twice)
    : parents_(of_thing.size()) {
    std::multimap<EventId, std::size_t> places;
    std::map<std::uint64_t, std::size_t> last_of;  // of each device, before it was copied
    for (std::size_t place = 0; place < of_thing.size(); ++place) {
        const Event& event = events[of_thing[place]];
        std::vector<std::size_t>& parents = parents_[place];
        for (const EventId& id : event.supersedes) {
            // Only what comes before in the one order can have been seen: no circles. A number that
            // stands for two events has to be named twice, or only one of them was seen.
            const auto [from, to] = places.equal_range(id);
            const auto copies = std::distance(from, to);
            if (copies == 1 ||
                std::count(event.supersedes.begin(), event.supersedes.end(), id) >= copies) {
                for (auto at = from; at != to; ++at) {
                    parents.push_back(at->second);
                }
            }
        }
        const auto last = last_of.find(event.id.device);
        const bool is_later =
            last == last_of.end() || events[of_thing[last->second]].id.sequence < event.id.sequence;
        if (last != last_of.end() && is_later) {
            parents.push_back(last->second);
        }
        const auto copied = twice.find(event.id.device);
        if (is_later && (copied == twice.end() || event.id.sequence < copied->second)) {
            last_of[event.id.device] = place;
        }
        places.emplace(event.id, place);
    }
}

std::vector<bool> Descent::seen_by(const std::vector<std::size_t>& places) const {
    std::vector<bool> seen(parents_.size(), false);
    std::vector<std::size_t> to_ask = places;
    while (!to_ask.empty()) {
        const std::size_t place = to_ask.back();
        to_ask.pop_back();
        for (const std::size_t parent : parents_[place]) {
            if (!seen[parent]) {
                seen[parent] = true;
                to_ask.push_back(parent);
            }
        }
    }
    return seen;
}

std::vector<std::size_t> Descent::tips_among(const std::vector<std::size_t>& by) const {
    const std::vector<bool> seen = seen_by(by);
    std::vector<std::size_t> tips;
    std::copy_if(by.begin(), by.end(), std::back_inserter(tips),
                 [&](std::size_t place) { return !seen[place]; });
    return tips;
}

}  // namespace hemline
