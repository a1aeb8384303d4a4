// The job: the fold of its events. Nothing else ever changes it.
#pragma once

#include <functional>
#include <map>
#include <optional>
#include <set>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "engine/dividing/run.h"
#include "engine/record/conflict.h"
#include "engine/record/left_out.h"
#include "engine/record/moment.h"
#include "engine/record/step_said.h"
#include "engine/roof/edge.h"
#include "engine/roof/readings.h"
#include "engine/trim/practice.h"

namespace hemline {

struct Event;

struct RecordedReading {
    EventId id;
    std::int64_t place = 0;  ///< in the one order: later is more
    std::string by;
    ReadingOf of = ReadingOf::edge;
    Length length;
    bool struck = false;
    bool settles = false;  ///< measured again: its writer had seen readings made apart
    WallTime clock = {};
};

struct CutPiece {
    EventId id;
    TrimRole role = TrimRole::main;
    int piece = 0;
    Length cut;
};

struct DoneStep {
    EventId id;
    std::int64_t place = 0;  ///< in the one order: later is more
    std::string by;
    StepSaid step;
    WallTime clock = {};
};

struct SentBack {
    EventId id;
    WallTime clock;
    std::string by, reason;
};

/// What an edge waits for: two tablets wrote it apart, and no one has picked.
struct Undecided {
    Thing thing;
    Text why;
};

struct EdgeWork {
    Edge edge;
    Edge added;  ///< as EdgeAdded last said it, before its pitch was taken or its looks chosen
    std::vector<RecordedReading> readings;  ///< all of them, struck ones too, in order
    std::optional<Style> style;             ///< chosen for this edge; none: divided with the others
    std::vector<RunChosen> chosen;          ///< how its runs are to be divided, by the plan picked
    std::vector<CutPiece> cut;              ///< that stand: not spoiled, not struck
    int spoiled = 0;
    std::vector<DoneStep> steps;
    std::optional<EventId> finished;
    std::string finished_by;
    WallTime finished_clock;
    std::optional<EventId> taken_off;   ///< added by mistake: gone unless metal is cut for it
    std::optional<SentBack> sent_back;  ///< by the foreman, since the last tick
    std::vector<Undecided> undecided;   ///< of this edge, and one of the rules

    /// Judges the readings of the edge that are not struck; after it was measured again, those
    /// before that agree with that one, it, and those since.
    [[nodiscard]] Verdict verdict(const Practice& practice) const;
    /// The length to plan with, when two readings agree.
    [[nodiscard]] std::optional<Length> length(const Practice& practice) const;
    /// The latest reading of what is left for the last piece.
    [[nodiscard]] std::optional<Length> remainder() const;
};

/// Metal left by a cut, or counted as lying there, and not used since. Shorter than
/// practice.offcut_kept it is scrap, unless the plan has a piece for it.
struct Offcut {
    EventId left_by;   ///< or counted by
    std::string edge;  ///< the edge it was cut for: gives its pool
    TrimRole role = TrimRole::main;
    Length length;
    std::int64_t count = 1;  ///< so many alike, counted as lying there
};

/// Whether new sticks can be had for a trim of an edge, and for what shares its sticks.
struct SupplySaid {
    std::string edge;
    TrimRole role = TrimRole::main;
    Supply supply = Supply::as_wanted;
};

struct Job {
    std::string name;
    std::string practice_name;
    Practice practice;
    std::vector<EdgeWork> edges;  ///< in the order added
    std::vector<Offcut> offcuts;
    std::vector<Length> stock_shorter;  ///< new sticks come in these too, beside practice.stock
    std::vector<SupplySaid> supplies;   ///< one for each trim of an edge; the last one of what
                                        ///< shares sticks holds
    std::map<std::string, std::vector<LegChosen>> sections;  ///< trims bent otherwise, by id
    Prefer prefer = Prefer::looks;
    std::int64_t sticks_opened = 0;
    std::set<EventId> struck;        ///< or crossed out by a pick of another
    std::set<EventId> spoiled_cuts;  ///< superseded by a loss, and the spare ones
    std::set<EventId> spare_cuts;    ///< cut twice, and the other one was picked
    std::set<EventId> settling;      ///< readings by someone who had seen others made apart
    std::vector<Conflict> conflicts;
    std::int64_t unknown_events = 0;
    std::int64_t folded = 0;  ///< so many events, those that changed nothing among them
    LeftOut left_out;         ///< what is past any roof
    /// Of the edges, as they were folded; find() looks here first.
    std::map<std::string, std::size_t, std::less<>> places_of_edges;

    [[nodiscard]] const EdgeWork* find(std::string_view edge) const;
};

/// Metal was cut, lost or counted for it: its pool is known by the edge, which stays on the job.
bool has_metal(const Job& job, const EdgeWork& work);
/// All those, by their ids; and edges that are not there, of which metal lies there.
std::set<std::string> edges_with_metal(const Job& job);

/// The edge as EdgeAdded is to say it: its pitch and its looks are said apart, and another tablet
/// may be saying them now.
Edge said_anew(const EdgeWork& work, Edge edge);

/// Folds one event in. Total: an event that makes no sense here (an unknown edge, a piece number
/// below 1) changes nothing; one that is past any roof neither, and is in left_out. A Struck must
/// have been folded before its target; what picks cross out and conflicts are found in all events
/// together (replay() sees to both). Grows with the job: a whole record is for replay().
void apply(Job& job, const Event& event);

/// The job after the first events of a journal, in the order given; strikes count wherever they
/// stand. Same events, same job. `practice`: the defaults the job starts from.
Job replay(std::span<const Event> events, const Practice& practice = {});

/// All devices' events in one order that every tablet agrees on: by time, device, sequence, each
/// once; those with the last time of all by what they come after. Commutative and idempotent.
std::vector<Event> in_order(std::vector<Event> events);

/// Gives an event that is written now its time and its moment: past the clock and past all that its
/// tablet holds, which is in_order(). Whatever the clock says, and however late those are, it can
/// be written, is read back, and stands after them.
void stamp(Event& event, std::span<const Event> held, std::int64_t wall_ms);

/// The last event of `device` that undo would strike: not struck, and not a strike itself.
std::optional<EventId> undo_target(std::span<const Event> events, const std::set<EventId>& struck,
                                   std::uint64_t device);

}  // namespace hemline
