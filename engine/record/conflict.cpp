#include "engine/record/conflict.h"

#include <algorithm>
#include <iterator>
#include <set>
#include <tuple>

#include "engine/record/descent.h"
#include "engine/record/struck.h"

namespace hemline {
namespace {

struct ThingOf {
    Thing operator()(const JobStarted& /*f*/) const { return {Subject::job, "", {}, 0, ""}; }
    Thing operator()(const EdgeAdded& f) const { return {Subject::edge, f.edge.id, {}, 0, ""}; }
    Thing operator()(const EdgeTakenOff& f) const { return {Subject::edge, f.edge, {}, 0, ""}; }
    Thing operator()(const ReadingTaken& f) const {
        return {f.of == ReadingOf::edge ? Subject::reading : Subject::remainder, f.edge, {}, 0, ""};
    }
    Thing operator()(const PitchTaken& f) const { return {Subject::pitch, f.edge, {}, 0, ""}; }
    Thing operator()(const StyleChosen& f) const { return {Subject::style, f.edge, {}, 0, ""}; }
    Thing operator()(const RuleSet& f) const { return {Subject::rule, f.key, {}, 0, ""}; }
    Thing operator()(const StockChosen& /*f*/) const { return {Subject::rule, "stock", {}, 0, ""}; }
    Thing operator()(const LooksChosen& f) const { return {Subject::style, f.edge, {}, 0, ""}; }
    Thing operator()(const LapChosen& f) const { return {Subject::lap, f.edge, {}, 0, ""}; }
    Thing operator()(const SectionChosen& f) const {
        return {Subject::rule, "section of " + f.trim, {}, 0, ""};
    }
    Thing operator()(const PieceCut& f) const {
        return {Subject::piece, f.edge, f.role, f.piece, ""};
    }
    Thing operator()(const StepDone& f) const {
        return {Subject::step, f.edge, {}, f.piece, f.step};
    }
    Thing operator()(const EdgeFinished& f) const { return {Subject::finish, f.edge, {}, 0, ""}; }
    Thing operator()(const EdgeSentBack& f) const { return {Subject::finish, f.edge, {}, 0, ""}; }
    template <class Other>
    Thing operator()(const Other& /*f*/) const {
        return {};
    }
};

Text piece_words(const Thing& thing) {
    switch (thing.role) {
        case TrimRole::main:
            break;
        case TrimRole::wrap:
            return say("fascia wrap piece {1} on edge {2}", thing.piece, thing.name);
        case TrimRole::cleat:
            return say("cleat piece {1} on edge {2}", thing.piece, thing.name);
    }
    return say("piece {1} on edge {2}", thing.piece, thing.name);
}

/// Two that chose the same are of one mind; two readings or ticks remain two.
bool is_setting(Subject subject) {
    return subject == Subject::job || subject == Subject::rule || subject == Subject::edge ||
           subject == Subject::lap || subject == Subject::style;
}

bool same_setting(const Fact& a, const Fact& b) {
    const auto* const one = std::get_if<EdgeAdded>(&a);
    const auto* const two = std::get_if<EdgeAdded>(&b);
    if (one != nullptr && two != nullptr) {
        Edge with_lap = one->edge;
        with_lap.lap = two->edge.lap;  // not EdgeAdded's to say
        return with_lap == two->edge;
    }
    return describe(a) == describe(b);
}

/// Cuts that a loss took with it, and what was struck.
std::set<EventId> gone_in(std::span<const Event> events) {
    std::set<EventId> gone = struck_in(events);
    for (const Event& event : events) {
        if (std::holds_alternative<PieceSpoiled>(event.fact) && gone.count(event.id) == 0) {
            gone.insert(event.supersedes.begin(), event.supersedes.end());
        }
    }
    return gone;
}

std::vector<std::size_t> standing(std::span<const Event> events,
                                  const std::vector<std::size_t>& of_thing,
                                  const std::set<EventId>& gone) {
    std::vector<std::size_t> places;
    for (std::size_t place = 0; place < of_thing.size(); ++place) {
        if (gone.count(events[of_thing[place]].id) == 0) {
            places.push_back(place);
        }
    }
    return places;
}

void add_numbers_twice(std::span<const Event> events,
                       const std::map<std::uint64_t, std::uint32_t>& twice,
                       std::vector<Conflict>& conflicts) {
    if (twice.empty()) {
        return;
    }
    std::map<EventId, std::size_t> copies;
    for (const Event& event : events) {
        ++copies[event.id];
    }
    for (const auto& [id, count] : copies) {
        if (count > 1) {
            conflicts.push_back({{}, std::vector<EventId>(count, id), true});
        }
    }
}

}  // namespace

bool operator<(const Thing& a, const Thing& b) {
    return std::tie(a.subject, a.name, a.role, a.piece, a.step) <
           std::tie(b.subject, b.name, b.role, b.piece, b.step);
}

Thing thing_of(const Fact& fact) { return std::visit(ThingOf{}, fact); }

Text name_of(const Thing& thing) {
    switch (thing.subject) {
        case Subject::none:
            return say("one number");
        case Subject::job:
            return say("the job's name");
        case Subject::rule:
            return say("the rule \"{1}\"", thing.name);
        case Subject::edge:
            return say("what edge {1} is", thing.name);
        case Subject::reading:
            return say("the length of edge {1}", thing.name);
        case Subject::remainder:
            return say("what is left for the last piece of edge {1}", thing.name);
        case Subject::pitch:
            return say("the pitch of edge {1}", thing.name);
        case Subject::lap:
            return say("the lap of edge {1}", thing.name);
        case Subject::style:
            return say("the run of edge {1}", thing.name);
        case Subject::piece:
            return say("the cut of {1}", piece_words(thing));
        case Subject::step:
            return say("the step \"{1}\" of {2}", thing.step,
                       thing.piece > 0 ? piece_words(thing) : say("edge {1}", thing.name));
        case Subject::finish:
            return say("the finish of edge {1}", thing.name);
    }
    return {};
}

bool is_on(const Thing& thing, std::string_view edge) {
    const bool of_job = thing.subject == Subject::none || thing.subject == Subject::job ||
                        thing.subject == Subject::rule;
    return !of_job && thing.name == edge;
}

Text Conflict::what() const {
    if (number_twice) {
        return say(
            "A tablet was copied or put back from a backup: event {1} was written twice, "
            "differently. Both are kept.",
            print_event_id(sides.front()));
    }
    const bool measured = thing.subject == Subject::reading ||
                          thing.subject == Subject::remainder || thing.subject == Subject::pitch;
    return measured
               ? say("Two tablets wrote {1} apart: pick one, or measure again.", name_of(thing))
               : say("Two tablets wrote {1} apart: pick one, or enter it again.", name_of(thing));
}

std::vector<Conflict> find_conflicts(std::span<const Event> events) {
    const auto twice = first_numbers_twice(events);
    const std::set<EventId> gone = gone_in(events);
    std::vector<std::pair<std::size_t, Conflict>> found;
    for (const auto& [thing, of_thing] : events_by_thing(events)) {
        if (of_thing.size() < 2) {
            continue;
        }
        const Descent descent(events, of_thing, twice);
        const auto tips = descent.tips_among(standing(events, of_thing, gone));
        const auto fact = [&, &all = of_thing](std::size_t tip) -> const Fact& {
            return events[all[tip]].fact;
        };
        if (tips.size() < 2 ||
            (is_setting(thing.subject) && std::all_of(tips.begin(), tips.end(), [&](auto tip) {
                 return same_setting(fact(tip), fact(tips.front()));
             }))) {
            continue;
        }
        Conflict conflict{thing, {}, false};
        for (const std::size_t tip : tips) {
            conflict.sides.push_back(events[of_thing[tip]].id);
        }
        found.emplace_back(of_thing[tips.front()], std::move(conflict));
    }
    std::sort(found.begin(), found.end(),
              [](const auto& a, const auto& b) { return a.first < b.first; });
    std::vector<Conflict> conflicts;
    conflicts.reserve(found.size());
    for (auto& [first, conflict] : found) {
        conflicts.push_back(std::move(conflict));
    }
    add_numbers_twice(events, twice, conflicts);
    return conflicts;
}

Result<std::vector<EventId>> strikes_to_pick(std::span<const Event> events, EventId chosen) {
    const std::vector<Conflict> conflicts = find_conflicts(events);
    const auto found =
        std::find_if(conflicts.begin(), conflicts.end(), [&](const Conflict& conflict) {
            return !conflict.number_twice &&
                   std::count(conflict.sides.begin(), conflict.sides.end(), chosen) > 0;
        });
    if (found == conflicts.end()) {
        return Problem{say("{1} stands against no other event.", print_event_id(chosen)),
                       say("Pick one of the events that are shown as a conflict.")};
    }
    const auto twice = first_numbers_twice(events);
    const std::vector<std::size_t> of_thing = events_by_thing(events)[found->thing];
    const Descent descent(events, of_thing, twice);
    std::vector<std::size_t> winner, all = standing(events, of_thing, gone_in(events));
    for (std::size_t place = 0; place < of_thing.size(); ++place) {
        if (events[of_thing[place]].id == chosen) {
            winner.push_back(place);
        }
    }
    const std::vector<bool> led_to_it = descent.seen_by(winner);
    std::vector<EventId> strikes;
    for (const std::size_t place : all) {
        const EventId id = events[of_thing[place]].id;
        if (!led_to_it[place] && id != chosen) {
            strikes.push_back(id);
        }
    }
    if (winner.size() > 1 || strikes.empty()) {
        return Problem{say("The number of that event stands for two events: it cannot be picked."),
                       say("Measure or enter it again.")};
    }
    return strikes;
}

Result<std::vector<ToWrite>> facts_to_pick(std::span<const Event> events, EventId chosen) {
    const Result<std::vector<EventId>> strikes = strikes_to_pick(events, chosen);
    if (!strikes) {
        return strikes.problem();
    }
    std::vector<ToWrite> all;
    for (const Event& event : events) {
        if (std::count(strikes->begin(), strikes->end(), event.id) == 0) {
            continue;
        }
        if (const auto* cut = std::get_if<PieceCut>(&event.fact)) {
            all.push_back(
                {PieceSpoiled{cut->edge, cut->role, cut->piece, cut->cut, cut->metal}, {event.id}});
        } else {
            all.push_back({Struck{event.id, "picked " + print_event_id(chosen) + " instead"},
                           {event.id, chosen}});
        }
    }
    return all;
}

Seen::Seen(std::span<const Event> events) {
    const auto twice = first_numbers_twice(events);
    for (const auto& [thing, of_thing] : events_by_thing(events)) {
        std::vector<std::size_t> all(of_thing.size());
        for (std::size_t place = 0; place < all.size(); ++place) {
            all[place] = place;
        }
        const Descent descent(events, of_thing, twice);
        std::vector<EventId>& tips = tips_[thing];
        for (const std::size_t tip : descent.tips_among(all)) {
            tips.push_back(events[of_thing[tip]].id);
        }
    }
}

std::vector<EventId> Seen::of(const Fact& fact) const {
    const auto found = tips_.find(thing_of(fact));
    return found == tips_.end() ? std::vector<EventId>{} : found->second;
}

void Seen::add(const Event& event) {
    Thing thing = thing_of(event.fact);
    if (thing.subject != Subject::none) {
        tips_[std::move(thing)] = {event.id};
    }
}

}  // namespace hemline
