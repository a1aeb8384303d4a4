#include "engine/record/seen.h"

#include <algorithm>
#include <numeric>
#include <set>

#include "engine/record/descent.h"

namespace hemline {

std::optional<EventId> picked_by(const Event& event) {
    const auto* const picked = std::get_if<Picked>(&event.fact);
    return picked == nullptr ? let_stand(event) : std::optional(picked->chosen);
}

std::map<Thing, std::vector<std::size_t>> events_by_thing(std::span<const Event> events,
                                                          const Strikes& strikes) {
    std::map<Thing, std::vector<std::size_t>> by_thing;
    Things things;
    for (std::size_t i = 0; i < events.size(); ++i) {
        const auto strike = strikes.picks.find(i);
        Thing thing = strike == strikes.picks.end() ? things.of(events[i]) : strike->second;
        things.take_in(events[i]);
        if (thing.subject != Subject::none) {
            by_thing[std::move(thing)].push_back(i);
        }
    }
    return by_thing;
}

Seen::Seen(std::span<const Event> events) {
    const auto twice = first_numbers_twice(events);
    for (const auto& [thing, of_thing] : events_by_thing(events, strikes_in(events))) {
        std::vector<std::size_t> all(of_thing.size());
        std::iota(all.begin(), all.end(), std::size_t{0});
        const Descent descent(events, of_thing, twice);
        std::vector<EventId>& tips = tips_[thing];
        for (const std::size_t tip : descent.tips_among(all)) {
            tips.push_back(events[of_thing[tip]].id);
        }
    }
    for (const Event& event : events) {
        take_in(event);
    }
}

void Seen::take_in(const Event& event) {
    things_.take_in(event);
    const auto* const picked = std::get_if<Picked>(&event.fact);
    if (picked != nullptr && picked->about.subject == Subject::piece) {
        picked_[picked->chosen] = event.id;
    }
}

std::vector<EventId> Seen::of(const Event& next) const {
    std::vector<EventId> seen;
    const bool is_loss = std::holds_alternative<PieceSpoiled>(next.fact);
    if (is_loss && next.supersedes.empty()) {
        return seen;  // it would undo a cut whose metal is already accounted for
    }
    for (const EventId cut : is_loss ? next.supersedes : std::vector<EventId>{}) {
        if (const auto pick = picked_.find(cut); pick != picked_.end()) {
            seen.push_back(pick->second);
        }
    }
    const auto found = tips_.find(things_.of(next));
    if (found == tips_.end()) {
        return seen;
    }
    const std::set<EventId> named(next.supersedes.begin(), next.supersedes.end());
    const std::vector<EventId>& tips = found->second;
    for (auto tip = tips.rbegin(); tip != tips.rend(); ++tip) {
        if (named.count(*tip) == 0 && next.supersedes.size() + seen.size() < supersedes_most) {
            seen.push_back(*tip);
        }
    }
    std::reverse(seen.begin(), seen.end());
    return seen;
}

void Seen::add(const Event& event) {
    Thing thing = things_.of(event);
    take_in(event);
    if (thing.subject == Subject::none) {
        return;
    }
    const std::set<EventId> named(event.supersedes.begin(), event.supersedes.end());
    std::vector<EventId>& tips = tips_[std::move(thing)];
    tips.erase(
        std::remove_if(tips.begin(), tips.end(), [&](EventId tip) { return named.count(tip) > 0; }),
        tips.end());
    tips.push_back(event.id);
}

}  // namespace hemline
