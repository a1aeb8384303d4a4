// Merging: any set of journals, in any order, with repeats and gaps, gives the same job.
// RC_PARAMS="max_success=1000000" runs a million cases; tools/nightly does.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include "engine/record/about_thing.h"
#include "engine/record/merge.h"
#include "engine/record/old_picks.h"
#include "engine/record/pick.h"
#include "engine/words/result.h"
#include "tests/engine/record/crew_record.h"
#include "tests/engine/record/same_event.h"

namespace hemline {
namespace {

Journals merged(const std::vector<Bytes>& journals) {
    Merge merge;
    for (const Bytes& journal : journals) {
        merge.add(7, journal);
    }
    return merge.journals();
}

Journals merged(const Journals& a, const Journals& b) {
    Merge merge;
    for (const Journals* one : {&a, &b}) {
        for (const auto& [device, bytes] : one->of_device) {
            merge.add(device, bytes);
        }
        for (const Bytes& stretch : one->damage) {
            merge.add_damage(stretch);
        }
    }
    return merge.journals();
}

std::vector<Event> events_in(const Journals& journals) {
    std::vector<Event> events;
    for (const auto& [device, bytes] : journals.of_device) {
        for (Event& event : read_journal(bytes).events) {
            events.push_back(std::move(event));
        }
    }
    return in_order(std::move(events));
}

/// Some of the journals' bytes: cut off early, or with a byte changed, as a carrier may leave them.
Bytes part_of(Bytes journal) {
    if (!journal.empty() && few(4) == 0) {
        journal.resize(*rc::gen::inRange<std::size_t>(0, journal.size()));
    }
    if (!journal.empty() && few(6) == 0) {
        journal[*rc::gen::inRange<std::size_t>(0, journal.size())] ^= 0x10;
    }
    return journal;
}

TEST_CASE("Merging is commutative, associative and idempotent to the byte, and loses no event") {
    CHECK(rc::check([] {
        const Crew crew = some_crew();
        std::vector<Bytes> parts;
        for (const Tablet& tablet : crew.tablets) {
            const Bytes whole = crew.journal(tablet.device);
            parts.push_back(part_of(whole));
            if (few(2) == 0) {
                parts.push_back(part_of(whole));
            }
        }
        const Journals all = merged(parts);
        // in any order, with repeats
        std::vector<Bytes> mixed = *rc::gen::container<std::vector<Bytes>>(
            static_cast<std::size_t>(few(4)), rc::gen::elementOf(parts));
        std::vector<Bytes> turned(parts.rbegin(), parts.rend());
        mixed.insert(mixed.end(), turned.begin(), turned.end());
        RC_ASSERT(merged(mixed) == all);
        // in any grouping
        const auto middle = *rc::gen::inRange<std::size_t>(0, parts.size() + 1);
        const auto cut = parts.begin() + static_cast<std::ptrdiff_t>(middle);
        const Journals left = merged({parts.begin(), cut}), right = merged({cut, parts.end()});
        RC_ASSERT(merged(left, right) == all);
        RC_ASSERT(merged(right, left) == all);
        RC_ASSERT(merged(all, all) == all);
        // nothing lost, nothing invented
        std::set<Bytes> before, after;
        for (const Bytes& part : parts) {
            for (const Event& event : read_journal(part).events) {
                before.insert(frame_of(event));
            }
        }
        const std::vector<Event> events = events_in(all);
        for (const Event& event : events) {
            after.insert(frame_of(event));
        }
        RC_ASSERT(before == after);
        RC_ASSERT(events.size() == after.size());
    }));
}

/// What disagrees with what, worked out from what each writer really held.
struct Oracle {
    const Crew& crew;
    std::map<Thing, std::vector<std::size_t>> of_thing = {};
    std::map<EventId, std::size_t> by_id = {};
    std::set<EventId> struck = {};

    explicit Oracle(const Crew& of) : crew(of) {
        for (std::size_t i = 0; i < crew.written.size(); ++i) {
            const Event& event = crew.written[i];
            by_id[event.id] = i;
            of_thing[Things().of(event)].push_back(i);
            if (const auto target = struck_by(event.fact)) {
                struck.insert(*target);
            }
        }
        of_thing.erase(Thing());
    }
    /// The event that says the value; none of a pick that fell.
    [[nodiscard]] std::optional<std::size_t> says(std::size_t i) const {
        const Event& event = crew.written[i];
        if (struck.count(event.id) > 0) {
            return {};
        }
        const auto* const picked = std::get_if<Picked>(&event.fact);
        return picked == nullptr ? std::optional(i) : says(by_id.at(picked->chosen));
    }
    [[nodiscard]] bool same(const Thing& thing, std::size_t a, std::size_t b) const {
        return thing.subject == Subject::piece
                   ? says(a) == says(b)
                   : crew.written[*says(a)].fact == crew.written[*says(b)].fact;
    }
    /// Of the events, those that none of them had seen.
    [[nodiscard]] std::vector<std::size_t> tips(const std::vector<std::size_t>& all) const {
        std::vector<std::size_t> last;
        std::copy_if(all.begin(), all.end(), std::back_inserter(last), [&](std::size_t i) {
            return std::none_of(all.begin(), all.end(), [&](std::size_t later) {
                return crew.had_seen[later].count(i) > 0;
            });
        });
        return last;
    }
    [[nodiscard]] std::vector<std::size_t> standing_tips(const Thing& thing) const {
        std::vector<std::size_t> standing;
        for (const std::size_t i : of_thing.at(thing)) {
            if (says(i)) {
                standing.push_back(i);
            }
        }
        return tips(standing);
    }
    [[nodiscard]] std::map<Thing, std::set<EventId>> conflicts() const {
        std::map<Thing, std::set<EventId>> found;
        for (const auto& [thing, all] : of_thing) {
            const std::vector<std::size_t> sides = standing_tips(thing);
            const bool agree = std::all_of(
                sides.begin(), sides.end(),
                [&, &about = thing](std::size_t i) { return same(about, i, sides.front()); });
            for (const std::size_t i : agree ? std::vector<std::size_t>() : sides) {
                found[thing].insert(crew.written[i].id);
            }
        }
        return found;
    }
};

TEST_CASE("Conflicts are what no writer had seen, whatever the clocks say") {
    CHECK(rc::check([] {
        const Crew crew = some_crew();
        std::map<Thing, std::set<EventId>> found;
        for (const Conflict& conflict : standing_of(in_order(crew.written)).conflicts) {
            RC_ASSERT(conflict.apart == Apart::values);
            for (const Tip& side : conflict.sides) {
                found[conflict.thing].insert(side.id);
            }
        }
        RC_ASSERT(found == Oracle(crew).conflicts());
    }));
}

TEST_CASE("Picking any side, or doing it again having seen all, settles a conflict for good") {
    CHECK(rc::check([] {
        Crew crew = some_crew();
        Tablet judge{99, 0, 0, {}, false};
        for (std::size_t i = 0; i < crew.written.size(); ++i) {
            judge.holds.insert(i);
        }
        for (const Conflict& conflict : standing_of(crew.held_by(judge)).conflicts) {
            const Tip chosen = *rc::gen::elementOf(conflict.sides);
            const std::vector<Event> events = crew.held_by(judge);
            const auto says = [&](EventId id) -> const Event& {
                return *std::find_if(events.begin(), events.end(),
                                     [&](const Event& event) { return event.id == id; });
            };
            if (few(3) == 0) {
                // What a person answers for himself, he answers again himself.
                write(crew, judge, says(chosen.says).fact, {}, says(chosen.says).by);
                continue;
            }
            const Result<ToWrite> picked = pick(replay(events), events, chosen.id);
            RC_ASSERT(picked.ok());
            write(crew, judge, picked->fact, picked->supersedes);
            // What was picked counts, and of the sides nothing that says otherwise; what the
            // writer of what was picked had seen counts as it did for him.
            const Standing after = standing_of(crew.held_by(judge));
            const Oracle oracle(crew);
            const auto& led = crew.had_seen[oracle.by_id.at(chosen.says)];
            for (const Tip& side : conflict.sides) {
                const bool is_cut = conflict.thing.subject == Subject::piece;
                const bool same = side.says == chosen.says ||
                                  (!is_cut && says(side.says).fact == says(chosen.says).fact);
                const std::set<EventId>& out = is_cut ? after.spare_cuts : after.struck;
                const bool is_known = led.count(oracle.by_id.at(side.says)) > 0;
                RC_ASSERT((is_known && !same) || out.count(side.says) == (same ? 0U : 1U));
            }
        }
        const Standing after = standing_of(crew.held_by(judge));
        RC_ASSERT(after.conflicts.empty());
        for (const Conflict& left : replay(crew.held_by(judge)).conflicts) {
            RC_ASSERT(left.apart == Apart::edge_back);
        }
    }));
}

/// Whether the job holds what the fact says.
struct Holds {
    const Job& job;
    const Event& event;

    [[nodiscard]] const EdgeWork& on(const std::string& edge) const { return *job.find(edge); }
    bool operator()(const EdgeAdded& f) const { return on(f.edge.id).edge.left == f.edge.left; }
    bool operator()(const EdgeTakenOff& f) const { return on(f.edge).taken_off == event.id; }
    bool operator()(const ReadingTaken& f) const {
        return std::any_of(on(f.edge).readings.begin(), on(f.edge).readings.end(),
                           [&](const auto& one) { return one.id == event.id && !one.struck; });
    }
    bool operator()(const PitchTaken& f) const { return on(f.edge).edge.pitch == f.pitch; }
    bool operator()(const StyleChosen& f) const { return on(f.edge).style == f.style; }
    bool operator()(const LooksChosen& f) const {
        return on(f.edge).edge.looks == f.looks && !on(f.edge).style;
    }
    bool operator()(const LapChosen& f) const { return on(f.edge).edge.lap == f.lap; }
    bool operator()(const RuleSet& f) const {
        return job.practice.lap == (f.value == "4 in" ? inches(4) : inches(6));
    }
    bool operator()(const StockChosen& f) const { return job.practice.stock == f.lengths.front(); }
    bool operator()(const PieceCut& f) const {
        return std::any_of(on(f.edge).cut.begin(), on(f.edge).cut.end(),
                           [&](const CutPiece& cut) { return cut.id == event.id; });
    }
    template <AStep One>
    bool operator()(const One& f) const {
        return std::any_of(on(f.edge).steps.begin(), on(f.edge).steps.end(),
                           [&](const DoneStep& done) { return done.step == f.said(); });
    }
    bool operator()(const EdgeFinished& f) const { return on(f.edge).finished.has_value(); }
    bool operator()(const EdgeSentBack& f) const { return on(f.edge).sent_back.has_value(); }
    template <class Other>
    bool operator()(const Other& /*f*/) const {
        return false;
    }
};

/// Of each thing the statements that nobody undid.
std::map<Thing, std::vector<const Event*>> said_in(const std::vector<Event>& events) {
    std::set<EventId> undone;
    for (const Event& event : events) {
        const std::optional<EventId> target = struck_by(event.fact);
        if (target && !let_stand(event)) {
            undone.insert(*target);
        }
    }
    std::map<Thing, std::vector<const Event*>> said;
    for (const Event& event : events) {
        const Thing thing = Things().of(event);
        if (thing.subject != Subject::none && thing.subject != Subject::loss &&
            !std::holds_alternative<Picked>(event.fact) && undone.count(event.id) == 0) {
            said[thing].push_back(&event);
        }
    }
    return said;
}

/// An edge is gone only where somebody took it off and no metal was cut for it.
bool is_rightly_gone(const std::string& edge,
                     const std::map<Thing, std::vector<const Event*>>& said) {
    bool taken_off = false, cut = false;
    for (const auto& [thing, all] : said) {
        for (const Event* const event : all) {
            const auto* const off = std::get_if<EdgeTakenOff>(&event->fact);
            taken_off = taken_off || (off != nullptr && off->edge == edge);
            cut = cut || (thing.subject == Subject::piece && thing.name == edge);
        }
    }
    return taken_off && !cut;
}

/// Every value of the job was said by somebody and still stands, or tablets disagree about it.
void check_values(const Crew& crew) {
    const std::vector<Event> events = in_order(crew.written);
    const Job job = replay(events);
    std::set<Thing> apart;
    for (const Conflict& conflict : job.conflicts) {
        Thing thing = conflict.thing;
        if (conflict.apart == Apart::edge_back) {
            thing.role = TrimRole::main;
            thing.piece = 0;
        }
        apart.insert(thing);
    }
    const auto said = said_in(events);
    for (const auto& [thing, all] : said) {
        if (apart.count(thing) > 0) {
            continue;
        }
        if (is_on_edge(thing) && job.find(thing.name) == nullptr) {
            RC_ASSERT(is_rightly_gone(thing.name, said));
            continue;
        }
        RC_LOG() << name_of(thing).english() << '\n';
        RC_ASSERT(std::any_of(all.begin(), all.end(), [&](const Event* event) {
            return job.struck.count(event->id) == 0 && std::visit(Holds{job, *event}, event->fact);
        }));
    }
    const auto cuts = std::count_if(events.begin(), events.end(), [&](const Event& event) {
        return std::holds_alternative<PieceCut>(event.fact) && job.struck.count(event.id) == 0;
    });
    if (job.find("A") != nullptr && job.find("B") != nullptr) {
        RC_ASSERT(job.sticks_opened == cuts);  // picked or not, each cut was metal
    }
}

TEST_CASE("No value that nobody chose: what the job holds was said and stands, or is in conflict") {
    CHECK(rc::check([] { check_values(some_crew()); }));
}

TEST_CASE("No value that nobody chose, in journals of the program from before and of both") {
    CHECK(rc::check(
        [] { check_values(some_crew(few(2) == 0 ? Programs::before : Programs::mixed)); }));
}

TEST_CASE("What another version wrote passes through a merge byte for byte") {
    const std::vector<Event> events = eave_record();
    Bytes newer = frame_of(events[0]);
    newer[4] = 3;  // a version to come; its CRC made right
    const std::uint32_t crc =
        crc32_of(std::span(newer).subspan(16), crc32_of(std::span(newer).subspan(4, 8)));
    for (std::size_t i = 0; i < 4; ++i) {
        newer[12 + i] = static_cast<std::uint8_t>(crc >> (8 * i));
    }
    Bytes journal = newer;
    const Bytes rest = journal_of({events.back(), events[1]});
    journal.insert(journal.end(), rest.begin(), rest.end());
    const Journals all = merged({journal, journal});
    CHECK(all.damage.empty());
    REQUIRE(all.of_device.size() == 2);
    CHECK(all.of_device.at(7) == newer);
    CHECK(all.of_device.at(eave_device) == journal_of({events[1], events.back()}));
    CHECK(merged(all, all) == all);
}

TEST_CASE("Damage between events is kept once, aside") {
    const Bytes frames = journal_of(eave_record());
    Bytes journal = {1, 2, 3};
    journal.insert(journal.end(), frames.begin(), frames.end());
    const Journals all = merged({journal, journal, frames});
    CHECK(all.damage == std::set<Bytes>{{1, 2, 3}});
    CHECK(all.of_device.at(eave_device) == frames);
}

TEST_CASE("A device is known by its journal's name") {
    CHECK(device_in_name("3f9c0000a0b1c2d3.journal") == eave_device);
    CHECK(device_in_name("3f9c0000a0b1c2d3-2.journal") == eave_device);
    CHECK(device_in_name("eave.journal") == 0);
    CHECK(device_in_name("3f9c0000a0b1c2d3") == 0);
    CHECK(device_in_name("") == 0);
}

}  // namespace
}  // namespace hemline
