// Invented crews: up to five tablets that write, read from each other, pick and undo, and whose
// clocks are up to ten years wrong. What each has seen is kept beside, so that a test can judge
// without looking at what events supersede.
#pragma once

#include <algorithm>
#include <set>
#include <vector>

#include <rapidcheck.h>

#include "engine/record/job.h"
#include "engine/record/merge.h"
#include "engine/record/pick.h"
#include "engine/record/seen.h"
#include "engine/record/standing.h"
#include "tests/engine/record/eave_record.h"

namespace hemline {

/// Which program the tablets run: today's, or one from before the kind Picked.
enum class Programs { today, before, mixed };

struct Tablet {
    std::uint64_t device = 0;
    std::uint32_t sequence = 0;
    std::int64_t clock_ms = 0;
    std::set<std::size_t> holds;  ///< indices of Crew::written
    bool is_old = false;          ///< runs the program from before
};

struct Crew {
    std::vector<Tablet> tablets;
    std::vector<Event> written;
    std::vector<std::set<std::size_t>> had_seen;  ///< what its writer held, for each event

    [[nodiscard]] std::vector<Event> held_by(const Tablet& tablet) const {
        std::vector<Event> events;
        for (const std::size_t index : tablet.holds) {
            // An old program keeps a pick as an unknown kind, and reads nothing in it.
            if (!tablet.is_old || !std::holds_alternative<Picked>(written[index].fact)) {
                events.push_back(written[index]);
            }
        }
        return in_order(std::move(events));
    }
    [[nodiscard]] Bytes journal(std::uint64_t device) const {
        std::vector<Event> own;
        for (const Event& event : written) {
            if (event.id.device == device) {
                own.push_back(event);
            }
        }
        return journal_of(own);
    }
};

inline int few(int most) { return *rc::gen::inRange(0, most); }

inline void write(Crew& crew, Tablet& tablet, Fact fact, std::vector<EventId> supersedes = {},
                  const std::string& by = "Ada") {
    const std::vector<Event> held = crew.held_by(tablet);
    tablet.clock_ms += few(3);
    Event event{{tablet.device, ++tablet.sequence}, {}, by, std::move(supersedes), std::move(fact)};
    stamp(event, held, tablet.clock_ms);
    if (tablet.is_old) {
        event.moment.reset();
    }
    // The program from before saw no thing in a loss.
    if (!tablet.is_old || !std::holds_alternative<PieceSpoiled>(event.fact)) {
        const std::vector<EventId> seen = Seen(held).of(event);
        event.supersedes.insert(event.supersedes.end(), seen.begin(), seen.end());
    }
    crew.had_seen.push_back(tablet.holds);
    tablet.holds.insert(crew.written.size());
    crew.written.push_back(std::move(event));
}

/// A change of the edge as a screen makes it, from what the tablet holds.
inline Fact some_change(const Crew& crew, const Tablet& tablet, const std::string& id) {
    const Job job = replay(crew.held_by(tablet));
    const EdgeWork* const work = job.find(id);
    Edge edge;
    edge.id = id;
    edge.left = few(2) == 0 ? End::wall : End::gable;
    if (work == nullptr) {
        return EdgeAdded{edge};
    }
    Edge changed = work->edge;
    changed.left = edge.left;
    return EdgeAdded{said_anew(*work, changed)};
}

/// By the kind of event that the tablet's program knows.
inline Fact answer_from(const Tablet& tablet, const std::string& edge) {
    if (tablet.is_old) {
        return StepDone{edge, "fasten", 1, {AnswerKind::count, {}, few(2), ""}, "", ""};
    }
    StepAnswered step{edge, "fasten", 1, AnswerKind::count};
    step.count = few(2);
    step.limits.count_least = 1;
    return step;
}

/// A fact about either of two edges, so that tablets disagree at times.
inline Fact some_fact(const Crew& crew, const Tablet& tablet) {
    const std::string edge = few(2) == 0 ? "A" : "B";
    switch (few(18)) {
        case 0:
            return PitchTaken{edge, rise_in_12(4 + few(3))};
        case 1:
            return answer_from(tablet, edge);
        case 2:
            return EdgeFinished{edge, ""};
        case 3:
            return RuleSet{"lap", few(2) == 0 ? "4 in" : "6 in"};
        case 4:
        case 5:
            return PieceCut{edge, TrimRole::main, 1, inches(60 + few(3)), {feet(10), {}}};
        case 6:
            return Unknown{60'000, {static_cast<std::uint8_t>(few(256))}};
        case 7:
            return some_change(crew, tablet, edge);
        case 8:
            return EdgeTakenOff{edge};
        case 9:
            return LapChosen{edge, few(2) == 0 ? std::nullopt : std::optional(inches(5))};
        case 10:
            return LooksChosen{edge, few(2) == 0 ? Looks::balanced : Looks::free};
        case 11:
            return StyleChosen{edge, few(2) == 0 ? Style::equal : Style::full};
        case 12:
            return StockChosen{{feet(11 + few(2))}};
        case 13:
            return StepDone{edge, "tie_off", 0, {AnswerKind::count, {}, few(2), ""}, "", ""};
        case 14:
            return EdgeSentBack{edge, "bead missing"};
        default:
            return ReadingTaken{edge, ReadingOf::edge, inches(120) + sixteenths(few(3))};
    }
}

/// Picks a side of a disagreement that the tablet knows, as its program does it.
inline void pick_some(Crew& crew, Tablet& tablet) {
    const std::vector<Event> held = crew.held_by(tablet);
    const Job job = replay(held);
    if (job.conflicts.empty()) {
        return;
    }
    const Conflict& conflict = *rc::gen::elementOf(job.conflicts);
    const Tip& side = *rc::gen::elementOf(conflict.sides);
    if (!tablet.is_old) {
        if (const Result<ToWrite> picked = pick(job, held, side.id)) {
            write(crew, tablet, picked->fact, picked->supersedes);
        }
        return;
    }
    if (conflict.apart != Apart::values) {
        return;
    }
    for (const Tip& other : conflict.sides) {
        if (other.says == side.says) {
            continue;
        }
        const auto lost = std::find_if(held.begin(), held.end(),
                                       [&](const Event& event) { return event.id == other.says; });
        if (const auto* const cut = std::get_if<PieceCut>(&lost->fact)) {
            write(crew, tablet,
                  PieceSpoiled{cut->edge, cut->role, cut->piece, cut->cut, cut->metal},
                  {other.says});
        } else {
            write(crew, tablet, Struck{other.says, "picked instead"}, {other.says, side.says});
        }
    }
}

/// Undoes what the tablet wrote last, but not that there are edges. One from before undoes no cut:
/// a loss that was a pick would stay.
inline void undo_last(Crew& crew, Tablet& tablet) {
    const std::vector<Event> held = crew.held_by(tablet);
    const std::optional<EventId> last = undo_target(held, standing_of(held).struck, tablet.device);
    const auto event = std::find_if(held.begin(), held.end(),
                                    [&](const Event& one) { return last && one.id == *last; });
    const bool is_cut = event != held.end() && (std::holds_alternative<PieceCut>(event->fact) ||
                                                std::holds_alternative<PieceSpoiled>(event->fact));
    const bool is_first = last && last->device == crew.tablets[0].device && last->sequence <= 2;
    if (event != held.end() && !is_first && !(tablet.is_old && is_cut)) {
        if (tablet.is_old) {
            write(crew, tablet, Struck{*last, "undone"}, {*last});
        } else {
            write(crew, tablet, StruckFor{*last, StrikeReason::undone}, {*last});
        }
    }
}

/// Several tablets that have two edges to begin with, and what they do separately and together.
inline Crew some_crew(Programs programs = Programs::today) {
    constexpr std::int64_t ten_years_ms = 315'576'000'000;
    constexpr std::int64_t today_ms = 1'780'000'000'000;
    Crew crew;
    crew.tablets.resize(static_cast<std::size_t>(2 + few(4)));
    for (std::size_t i = 0; i < crew.tablets.size(); ++i) {
        crew.tablets[i].device = 11 * (i + 1);
        crew.tablets[i].clock_ms =
            today_ms + *rc::gen::inRange<std::int64_t>(-ten_years_ms, ten_years_ms);
        crew.tablets[i].is_old =
            programs == Programs::before || (programs == Programs::mixed && few(2) == 0);
    }
    for (const char* id : {"A", "B"}) {
        Edge edge;
        edge.id = id;
        write(crew, crew.tablets[0], EdgeAdded{edge});
    }
    for (Tablet& tablet : crew.tablets) {
        tablet.holds = crew.tablets[0].holds;
    }
    const auto any = [&]() -> Tablet& {
        return crew.tablets[static_cast<std::size_t>(few(static_cast<int>(crew.tablets.size())))];
    };
    for (int turns = 4 + few(20); turns > 0; --turns) {
        Tablet& one = any();
        const int deed = few(12);
        if (deed < 6) {
            write(crew, one, some_fact(crew, one), {}, few(2) == 0 ? "Ada" : "Ben");
        } else if (deed < 9) {
            const Tablet& other = any();
            one.holds.insert(other.holds.begin(), other.holds.end());
        } else if (deed < 11) {
            pick_some(crew, one);
        } else {
            undo_last(crew, one);
        }
    }
    return crew;
}

}  // namespace hemline
