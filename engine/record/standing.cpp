#include "engine/record/standing.h"

#include <algorithm>
#include <utility>

#include "engine/record/about_thing.h"
#include "engine/record/descent.h"
#include "engine/record/fact_words.h"
#include "engine/record/seen.h"

namespace hemline {
namespace {

/// Answers to a step are the same whatever their kind.
bool say_the_same(const Fact& a, const Fact& b) {
    const std::optional<StepSaid> step = step_in(a);
    return step ? step == step_in(b) : a == b;
}

/// What the events about a thing say, each by its place in `of_thing`.
struct Said {
    std::span<const Event> events;
    const Thing& thing;
    const std::vector<std::size_t>& of_thing;
    Descent descent;
    std::vector<std::optional<std::size_t>> says;  ///< itself; of a pick the event chosen
    std::vector<bool> stands;
    std::vector<bool> gone;  ///< struck or lost

    [[nodiscard]] const Event& at(std::size_t place) const { return events[of_thing[place]]; }
    [[nodiscard]] bool is_pick(std::size_t place) const { return picked_by(at(place)).has_value(); }
    /// Cuts are metal: the same length cut twice is two pieces. Everything else agrees when it is
    /// the same.
    [[nodiscard]] bool same(std::size_t a, std::size_t b) const {
        return thing.subject == Subject::piece ? *says[a] == *says[b]
                                               : say_the_same(at(*says[a]).fact, at(*says[b]).fact);
    }
};

/// Judges thing by thing what stands.
struct Judge {
    std::span<const Event> events;
    Standing& standing;
    Losses losses;                                             ///< that were not struck
    std::vector<std::pair<std::size_t, Conflict>> found = {};  ///< by the place of its first side

    void collect_losses();
    void judge(const Thing& thing, Said& said);
    void hear_old_picks(const Said& said);
    void find_what_stands(Said& said);
    void cross_out(const Said& said, const std::vector<std::size_t>& tips);
    void add_conflict(const Said& said, std::vector<std::size_t> tips);
    void note_settling(const Said& said);
};

void Judge::collect_losses() {
    for (std::size_t i = 0; i < events.size(); ++i) {
        if (std::holds_alternative<PieceSpoiled>(events[i].fact) &&
            standing.struck.count(events[i].id) == 0) {
            for (const EventId id : events[i].supersedes) {
                losses[id].push_back(i);
                standing.spoiled_cuts.insert(id);
            }
        }
    }
}

/// Losses that were picks and had not seen each other took every cut of the piece: then they lose
/// nothing.
void Judge::hear_old_picks(const Said& said) {
    std::vector<std::size_t> cuts;
    for (std::size_t place = 0; place < said.of_thing.size(); ++place) {
        if (!said.is_pick(place) && standing.struck.count(said.at(place).id) == 0) {
            cuts.push_back(place);
        }
    }
    std::vector<EventId> last;
    for (const std::size_t place : said.descent.tips_among(cuts)) {
        last.push_back(said.at(place).id);
    }
    for (const std::size_t loss : losses_that_picked(events, last, losses)) {
        standing.struck.insert(events[loss].id);
        standing.spoiled_cuts.erase(events[loss].supersedes.front());
    }
}

/// A pick falls when what it chose falls. But it does not fall with a cut that was lost by someone
/// who knew of the pick: the other cut stays spare.
void Judge::find_what_stands(Said& said) {
    const bool of_cuts = said.thing.subject == Subject::piece;
    for (std::size_t place = 0; place < said.of_thing.size(); ++place) {
        const EventId id = said.at(place).id;
        const bool struck = standing.struck.count(id) > 0;
        const std::optional<EventId> chosen = picked_by(said.at(place));
        if (!chosen) {
            said.says[place] = place;
            said.gone[place] = struck || (of_cuts && standing.spoiled_cuts.count(id) > 0);
            said.stands[place] = !said.gone[place];
            continue;
        }
        const std::optional<std::size_t> there = said.descent.only(*chosen);
        if (there && *there < place && !said.is_pick(*there)) {
            said.says[place] = there;
            said.gone[place] = said.gone[*there];
            said.stands[place] =
                !struck && (!said.gone[*there] ||
                            (losses.count(id) > 0 && standing.struck.count(*chosen) == 0));
        }
    }
}

/// What a pick had seen and nothing that stands leads to. A pick leads to what it chose and to the
/// sides that say the same; any other event leads to what it names.
void Judge::cross_out(const Said& said, const std::vector<std::size_t>& tips) {
    std::vector<std::size_t> picks;
    for (std::size_t place = 0; place < said.of_thing.size(); ++place) {
        if (said.is_pick(place) && said.stands[place]) {
            picks.push_back(place);
        }
    }
    if (picks.empty()) {
        return;
    }
    std::vector<bool> kept(said.of_thing.size(), false);
    std::vector<std::size_t> to_ask;
    const auto keep = [&](std::size_t place) {
        if (!kept[place]) {
            kept[place] = true;
            to_ask.push_back(place);
        }
    };
    std::for_each(tips.begin(), tips.end(), keep);
    while (!to_ask.empty()) {
        const std::size_t place = to_ask.back();
        to_ask.pop_back();
        const bool picks_one = said.is_pick(place) && said.stands[place];
        for (const std::size_t seen : said.descent.named_at(place)) {
            if (!picks_one || (said.stands[seen] && said.same(seen, place))) {
                keep(seen);
            }
        }
        if (picks_one) {
            keep(*said.says[place]);
        } else if (said.descent.named_at(place).empty() && said.descent.own_before(place)) {
            keep(*said.descent.own_before(place));
        }
    }
    const std::vector<bool> seen = said.descent.seen_by(picks);
    for (std::size_t place = 0; place < said.of_thing.size(); ++place) {
        const EventId id = said.at(place).id;
        if (kept[place] || !seen[place] || !said.stands[place] || said.is_pick(place) ||
            !said.descent.only(id)) {
            continue;
        }
        if (said.thing.subject == Subject::piece) {
            standing.spare_cuts.insert(id);
            standing.spoiled_cuts.insert(id);
        } else {
            standing.struck.insert(id);
        }
    }
}

void Judge::add_conflict(const Said& said, std::vector<std::size_t> tips) {
    tips.erase(
        std::remove_if(tips.begin(), tips.end(), [&](std::size_t tip) { return said.gone[tip]; }),
        tips.end());
    if (std::all_of(tips.begin(), tips.end(),
                    [&](std::size_t tip) { return said.same(tip, tips.front()); })) {
        return;
    }
    Conflict conflict;
    conflict.thing = said.thing;
    std::set<std::string> edges;
    for (const std::size_t tip : tips) {
        const Event& value = said.at(*said.says[tip]);
        conflict.sides.push_back({said.at(tip).id, value.id});
        if (const auto* const plan = std::get_if<PlanChosen>(&value.fact)) {
            for (const RunChosen& run : plan->runs) {
                edges.insert(run.edge);
            }
        }
    }
    conflict.edges.assign(edges.begin(), edges.end());
    found.emplace_back(said.of_thing[tips.front()], std::move(conflict));
}

/// Measured again by someone who had seen different lengths.
void Judge::note_settling(const Said& said) {
    for (std::size_t place = 0; place < said.of_thing.size(); ++place) {
        const std::vector<std::size_t>& named = said.descent.named_at(place);
        std::optional<std::size_t> first;
        for (const std::size_t seen : named) {
            if (!said.says[seen]) {
                continue;
            }
            first = first ? first : seen;
            if (!said.same(seen, *first)) {
                standing.settling.insert(said.at(place).id);
                break;
            }
        }
    }
}

void Judge::judge(const Thing& thing, Said& said) {
    if (thing.subject == Subject::piece) {
        hear_old_picks(said);
    }
    find_what_stands(said);
    std::vector<std::size_t> standing_places;
    for (std::size_t place = 0; place < said.of_thing.size(); ++place) {
        if (said.stands[place]) {
            standing_places.push_back(place);
        }
    }
    const std::vector<std::size_t> tips = said.descent.tips_among(standing_places);
    cross_out(said, tips);
    add_conflict(said, tips);
    if (thing.subject == Subject::reading || thing.subject == Subject::remainder) {
        note_settling(said);
    }
}

Text about_words(const Event& event, const Things& things) {
    const Thing thing = things.of(event);
    return thing.subject == Subject::none ? describe(event.fact) : name_of(thing);
}

/// Events that share a number.
struct Copies {
    std::size_t count = 0;
    std::vector<Text> about;
};

/// By number, for those numbers alone that stand for more than one event.
std::map<EventId, Copies> copies_in(std::span<const Event> events,
                                    const std::map<std::uint64_t, std::uint32_t>& twice) {
    std::vector<EventId> ids;
    for (const Event& event : events) {
        if (twice.count(event.id.device) > 0) {
            ids.push_back(event.id);
        }
    }
    std::sort(ids.begin(), ids.end());
    std::map<EventId, Copies> copies;
    for (auto id = ids.begin(); id != ids.end();) {
        const auto next = std::upper_bound(id, ids.end(), *id);
        if (next - id > 1) {
            copies[*id].count = static_cast<std::size_t>(next - id);
        }
        id = next;
    }
    return copies;
}

/// Numbers that stand for more events than somebody has looked at.
void add_numbers_twice(std::span<const Event> events,
                       const std::map<std::uint64_t, std::uint32_t>& twice, Standing& standing) {
    if (twice.empty()) {
        return;
    }
    constexpr std::size_t named_most = 4;
    std::map<EventId, Copies> copies = copies_in(events, twice);
    std::map<EventId, std::int64_t> noted;
    Things things;
    for (const Event& event : events) {
        if (const auto at = copies.find(event.id); at != copies.end()) {
            Copies& same = at->second;
            const Text about = about_words(event, things);
            if (same.about.size() < named_most &&
                std::find(same.about.begin(), same.about.end(), about) == same.about.end()) {
                same.about.push_back(about);
            }
        }
        if (const auto* const said = std::get_if<CopyNoted>(&event.fact);
            said != nullptr && standing.struck.count(event.id) == 0) {
            std::int64_t& most = noted[said->number];
            most = std::max(most, said->copies);
        }
        things.take_in(event);
    }
    for (auto& [id, same] : copies) {
        const auto seen = noted.find(id);
        if (seen == noted.end() || seen->second < static_cast<std::int64_t>(same.count)) {
            Conflict conflict;
            conflict.apart = Apart::number_twice;
            conflict.sides.assign(same.count, {id, id});
            conflict.about = std::move(same.about);
            standing.conflicts.push_back(std::move(conflict));
        }
    }
}

}  // namespace

Standing standing_of(std::span<const Event> events) {
    Standing standing;
    const Strikes strikes = strikes_in(events);
    standing.struck = strikes.struck;
    const auto twice = first_numbers_twice(events);
    Judge judge{events, standing, {}};
    judge.collect_losses();
    for (const auto& [thing, of_thing] : events_by_thing(events, strikes)) {
        if (of_thing.size() < 2 || thing.subject == Subject::loss) {
            continue;
        }
        Said said{events,
                  thing,
                  of_thing,
                  Descent(events, of_thing, twice),
                  std::vector<std::optional<std::size_t>>(of_thing.size()),
                  std::vector<bool>(of_thing.size(), false),
                  std::vector<bool>(of_thing.size(), false)};
        judge.judge(thing, said);
    }
    std::sort(judge.found.begin(), judge.found.end(),
              [](const auto& a, const auto& b) { return a.first < b.first; });
    for (auto& [first, conflict] : judge.found) {
        standing.conflicts.push_back(std::move(conflict));
    }
    add_numbers_twice(events, twice, standing);
    return standing;
}

}  // namespace hemline
