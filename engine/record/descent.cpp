#include "engine/record/descent.h"

#include <algorithm>
#include <iterator>

namespace hemline {
namespace {

/// What the event shows that its writer had seen: what it supersedes, and the metal that it uses.
std::vector<EventId> seen_by_writer(const Event& event) {
    std::vector<EventId> ids = event.supersedes;
    const auto took = [&](const MetalTaken& metal) {
        if (metal.offcut) {
            ids.push_back(*metal.offcut);
        }
    };
    if (const auto* const measured = std::get_if<StickMeasured>(&event.fact)) {
        took(measured->metal);
    } else if (const auto* const spoiled = std::get_if<StickSpoiled>(&event.fact)) {
        took(spoiled->metal);
    }
    return ids;
}

}  // namespace

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
    : named_(of_thing.size()), own_(of_thing.size()) {
    std::map<std::uint64_t, std::size_t> last_of;  // of each device, before it was copied
    for (std::size_t place = 0; place < of_thing.size(); ++place) {
        const Event& event = events[of_thing[place]];
        name_seen(event, place);
        see_silently(event, place);
        const auto last = last_of.find(event.id.device);
        const bool is_later =
            last == last_of.end() || events[of_thing[last->second]].id.sequence < event.id.sequence;
        if (last != last_of.end() && is_later) {
            own_[place] = last->second;
        }
        const auto copied = twice.find(event.id.device);
        if (is_later && (copied == twice.end() || event.id.sequence < copied->second)) {
            last_of[event.id.device] = place;
        }
        places_[event.id].push_back(place);
    }
}

/// Only what comes before in the common order can have been seen, so there are no circles. A number
/// that stands for two events must be named twice; named once, only one of the two was seen.
void Descent::name_seen(const Event& event, std::size_t place) {
    std::vector<EventId> ids = seen_by_writer(event);
    std::sort(ids.begin(), ids.end());
    for (auto id = ids.begin(); id != ids.end();) {
        const auto next = std::upper_bound(id, ids.end(), *id);
        const auto found = places_.find(*id);
        if (found != places_.end() &&
            (found->second.size() == 1 ||
             static_cast<std::size_t>(std::distance(id, next)) >= found->second.size())) {
            named_[place].insert(named_[place].end(), found->second.begin(), found->second.end());
        }
        id = next;
    }
}

/// Before version 2 of the frame the program did not name what was seen of plans and of supply. So
/// what those events had seen cannot be told: each is taken to have seen the one before.
void Descent::see_silently(const Event& event, std::size_t place) {
    const bool is_silent = !event.moment && event.supersedes.empty() &&
                           (std::holds_alternative<PlanChosen>(event.fact) ||
                            std::holds_alternative<SupplyChosen>(event.fact));
    if (is_silent) {
        if (last_silent_) {
            named_[place].push_back(*last_silent_);
        }
        last_silent_ = place;
    }
}

std::optional<std::size_t> Descent::only(EventId id) const {
    const auto found = places_.find(id);
    return found != places_.end() && found->second.size() == 1
               ? std::optional(found->second.front())
               : std::nullopt;
}

std::vector<bool> Descent::seen_by(const std::vector<std::size_t>& places) const {
    std::vector<bool> seen(named_.size(), false);
    std::vector<std::size_t> to_ask = places;
    const auto mark = [&](std::size_t parent) {
        if (!seen[parent]) {
            seen[parent] = true;
            to_ask.push_back(parent);
        }
    };
    while (!to_ask.empty()) {
        const std::size_t place = to_ask.back();
        to_ask.pop_back();
        std::for_each(named_[place].begin(), named_[place].end(), mark);
        if (own_[place]) {
            mark(*own_[place]);
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
