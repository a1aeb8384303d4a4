#include "engine/record/old_picks.h"

#include <algorithm>
#include <iterator>

#include "engine/record/about_thing.h"
#include "engine/record/strikes_taken_back.h"

namespace hemline {
namespace {

/// A strike that was a pick.
struct StrikePick {
    std::size_t place = 0;  ///< in the record
    EventId struck, chosen;
};

/// How many events an id stands for, where the last of them is, and what it is about.
struct Named {
    std::size_t count = 0, place = 0;
    Thing thing;
};

std::map<EventId, Named> named_in(std::span<const Event> events,
                                  const std::vector<StrikePick>& picks) {
    std::map<EventId, Named> named;
    for (const StrikePick& pick : picks) {
        named[pick.struck];
        named[pick.chosen];
    }
    Things things;
    for (std::size_t i = 0; i < events.size(); ++i) {
        if (const auto found = named.find(events[i].id); found != named.end()) {
            ++found->second.count;
            found->second.place = i;
            found->second.thing = things.of(events[i]);
        }
        things.take_in(events[i]);
    }
    return named;
}

/// Both are there once, before the strike, and about the same thing.
bool is_pick(const StrikePick& pick, const std::map<EventId, Named>& named) {
    const Named& struck = named.at(pick.struck);
    const Named& chosen = named.at(pick.chosen);
    return struck.count == 1 && chosen.count == 1 && struck.place < pick.place &&
           chosen.place < pick.place && struck.thing.subject != Subject::none &&
           struck.thing == chosen.thing;
}

/// Accepts the picks that nobody contradicts: first those that strike an event which no pick chose,
/// then those that strike events chosen only by picks already accepted. Picks that contradict each
/// other in a circle are left out.
std::vector<StrikePick> uncontradicted(const std::vector<StrikePick>& picks) {
    std::map<EventId, std::vector<const StrikePick*>> of_struck;
    std::map<EventId, std::size_t> times_chosen;
    for (const StrikePick& pick : picks) {
        of_struck[pick.struck].push_back(&pick);
        ++times_chosen[pick.chosen];
    }
    std::vector<EventId> unchosen;
    for (const auto& [struck, all] : of_struck) {
        if (times_chosen.count(struck) == 0) {
            unchosen.push_back(struck);
        }
    }
    std::vector<StrikePick> taken;
    while (!unchosen.empty()) {
        const EventId struck = unchosen.back();
        unchosen.pop_back();
        for (const StrikePick* const pick : of_struck[struck]) {
            taken.push_back(*pick);
            if (--times_chosen[pick->chosen] == 0) {
                unchosen.push_back(pick->chosen);
            }
        }
    }
    return taken;
}

}  // namespace

std::optional<EventId> let_stand(const Event& event) {
    const auto* const strike = std::get_if<Struck>(&event.fact);
    if (strike == nullptr || event.supersedes.size() != 2) {
        return {};
    }
    const EventId first = event.supersedes.front(), second = event.supersedes.back();
    if (first == second || (first != strike->target && second != strike->target)) {
        return {};
    }
    return first == strike->target ? second : first;
}

Strikes strikes_in(std::span<const Event> events) {
    Strikes strikes;
    std::vector<StrikePick> maybe;
    const std::set<EventId> taken_back = strikes_taken_back(events);
    for (std::size_t i = 0; i < events.size(); ++i) {
        const std::optional<EventId> target = struck_by(events[i].fact);
        if (target && taken_back.count(events[i].id) == 0) {
            if (const auto chosen = let_stand(events[i])) {
                maybe.push_back({i, *target, *chosen});
            } else {
                strikes.struck.insert(*target);
            }
        }
    }
    if (maybe.empty()) {
        return strikes;
    }
    const std::map<EventId, Named> named = named_in(events, maybe);
    const auto no_pick = std::partition(maybe.begin(), maybe.end(),
                                        [&](const StrikePick& one) { return is_pick(one, named); });
    std::for_each(no_pick, maybe.end(),
                  [&](const StrikePick& one) { strikes.struck.insert(one.struck); });
    std::set<EventId> chosen;  // by picks of the new kind
    for (const Event& event : events) {
        const auto* const picked = std::get_if<Picked>(&event.fact);
        if (picked != nullptr && strikes.struck.count(event.id) == 0) {
            chosen.insert(picked->chosen);
        }
    }
    std::vector<StrikePick> picks;
    for (auto one = maybe.begin(); one != no_pick; ++one) {
        if (chosen.count(one->struck) > 0) {
            strikes.picks[one->place] = named.at(one->struck).thing;
        } else if (strikes.struck.count(one->chosen) == 0) {  // else the pick fell with it
            picks.push_back(*one);
        }
    }
    for (const StrikePick& pick : uncontradicted(picks)) {
        strikes.struck.insert(pick.struck);
    }
    return strikes;
}

std::vector<std::size_t> losses_that_picked(std::span<const Event> events,
                                            const std::vector<EventId>& cuts,
                                            const Losses& losses) {
    std::vector<std::size_t> all;
    std::set<std::uint64_t> devices;
    for (const EventId cut : std::set<EventId>(cuts.begin(), cuts.end())) {
        const auto found = losses.find(cut);
        if (found == losses.end()) {
            return {};
        }
        for (const std::size_t place : found->second) {
            // A loss as programs write it today names the pick and the losses it knew; an old pick
            // named only a cut.
            if (events[place].supersedes.size() != 1) {
                return {};
            }
            devices.insert(events[place].id.device);
            all.push_back(place);
        }
    }
    // A single device left a cut each time that it picked.
    return cuts.size() > 1 && devices.size() > 1 ? all : std::vector<std::size_t>{};
}

}  // namespace hemline
