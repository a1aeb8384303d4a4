// The job: what its events, folded one after the other, add up to. Nothing else changes it.
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
    std::int64_t place = 0;  ///< place in the common order: later is more
    std::string by;
    ReadingOf of = ReadingOf::edge;
    Length length;
    bool struck = false;
    bool settles = false;  ///< measured again: its writer had seen readings that disagree
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
    std::int64_t place = 0;  ///< place in the common order: later is more
    std::string by;
    StepSaid step;
    WallTime clock = {};
};

struct SentBack {
    EventId id;
    WallTime clock;
    std::string by, reason;
};

/// What a person answered before he went on the roof.
struct KeptGate {
    EventId id;
    std::string by;
    WallTime clock;
    std::string edge;  ///< a no holds it alone; empty: the whole roof
    std::vector<GateFound> found;
    std::string watcher, hospital;
    bool lifted = false;  ///< by the foreman
};
/// The checks that he answered with no.
std::vector<GateCheck> noes_in(const KeptGate& gate);

/// No work on the roof, says who said so last.
struct SaidNo {
    std::string by;
    std::vector<GateCheck> checks;
};

/// A value outside practice that the foreman lets stand.
struct AcceptedValue {
    std::string value;  ///< EdgeValue::key
    std::string by;
    WallTime clock;
};

/// What an edge waits for: two tablets disagree about it, and nobody has picked.
struct Undecided {
    Thing thing;
    Text why;
};

/// A body as it was walked last.
struct WalkedBody {
    std::string id;
    EventId walked;
    std::vector<SideWalked> sides;
    bool closed = false;
    std::optional<HostSaid> host = {};
};

struct EdgeWork {
    Edge edge;
    Edge added;  ///< as EdgeAdded last said it, before its pitch was taken or its looks chosen
    std::vector<RecordedReading> readings;  ///< all of them, struck ones too, in order
    std::optional<Style> style;             ///< chosen for this edge; none: divided with the others
    std::vector<RunChosen> chosen;          ///< how to divide its runs, by the picked plan
    std::vector<CutPiece> cut;              ///< those neither spoiled nor struck
    int spoiled = 0;
    std::vector<DoneStep> steps;
    std::optional<EventId> finished;
    std::string finished_by;
    WallTime finished_clock;
    std::optional<EventId> taken_off;   ///< added by mistake: gone unless metal is cut for it
    std::optional<SentBack> sent_back;  ///< by the foreman, since the last sign-off
    std::vector<Undecided> undecided;   ///< about this edge, and one about the rules
    std::optional<SaidNo> said_no;      ///< about this edge or the whole roof
    std::vector<AcceptedValue> accepted;
    std::optional<PlaceOnBody> place;  ///< on a body that is walked

    /// Judges the readings of the edge that are not struck. Once it was measured again, these
    /// count: that reading, earlier readings that agree with it, and all later ones.
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
    std::int64_t count = 1;  ///< so many of the same length, counted as lying there
};

/// Whether new sticks can be had for a trim of an edge, and for what is cut from the same sticks.
struct SupplySaid {
    std::string edge;
    TrimRole role = TrimRole::main;
    Supply supply = Supply::as_wanted;
};

struct Job {
    std::string name;
    std::string practice_name;
    Practice practice;
    std::vector<EdgeWork> edges;     ///< in the order added
    std::vector<WalkedBody> bodies;  ///< in the order first walked
    std::vector<Offcut> offcuts;
    std::vector<Length> stock_shorter;  ///< new sticks come in these too, beside practice.stock
    std::vector<SupplySaid> supplies;   ///< one for each trim of an edge; of those that share
                                        ///< sticks the last holds
    std::map<std::string, std::vector<LegChosen>> sections;  ///< trims bent otherwise, by id
    std::vector<KeptGate> gates;                             ///< in order
    Prefer prefer = Prefer::looks;
    std::int64_t sticks_opened = 0;
    std::set<EventId> struck;        ///< or crossed out when another was picked
    std::set<EventId> spoiled_cuts;  ///< superseded by a loss, and spare cuts
    std::set<EventId> spare_cuts;    ///< of a piece cut twice, whose other cut was picked
    std::set<EventId> settling;      ///< readings whose writer had seen others that disagree
    std::vector<Conflict> conflicts;
    std::int64_t unknown_events = 0;
    std::int64_t folded = 0;  ///< number of events, including those that changed nothing
    LeftOut left_out;         ///< what is past any roof
    /// Of the edges, as they were folded; find() looks here first.
    std::map<std::string, std::size_t, std::less<>> places_of_edges;

    [[nodiscard]] const EdgeWork* find(std::string_view edge) const;
};

/// Every no that stands about the edge or the whole roof, for the foreman to lift: as many as an
/// event may name.
std::vector<EventId> noes_on(const Job& job, std::string_view edge);

/// Metal was cut, lost or counted for it: its pool is known by the edge, which stays on the job.
bool has_metal(const Job& job, const EdgeWork& work);
/// Ids of all those edges, and of edges that are not on the job but whose metal lies there.
std::set<std::string> edges_with_metal(const Job& job);

/// The edge as EdgeAdded is to say it: without its pitch and looks, which have separate events that
/// another tablet may be writing now.
Edge said_anew(const EdgeWork& work, Edge edge);

/// Folds an event in. An event that makes no sense here (an unknown edge, a piece number below 1)
/// changes nothing. Neither does an event that is past any roof; it is listed in left_out. A Struck
/// must have been folded before its target; what picks cross out and where tablets disagree is
/// found from all events together. replay() sees to both. The time of a call grows with the job:
/// use replay() for a whole record.
void apply(Job& job, const Event& event);

/// The job after the first events of a journal, in the order given; strikes count wherever they
/// stand. Same events, same job. `practice`: the defaults the job starts from.
Job replay(std::span<const Event> events, const Practice& practice = {});

/// All devices' events, each once, in an order that is the same on every tablet: by time, device,
/// sequence; those with the last possible time by what they come after. Commutative and idempotent.
std::vector<Event> in_order(std::vector<Event> events);

/// Gives an event that is written now its time and its moment: later than the clock and later than
/// all events that its tablet holds, which are in_order(). Whatever the clock says, and however
/// late those events are, the new event can be written and read back, and comes after them.
void stamp(Event& event, std::span<const Event> held, std::int64_t wall_ms);

/// The last event of `device` that undo would strike: not struck, and not a strike itself.
std::optional<EventId> undo_target(std::span<const Event> events, const std::set<EventId>& struck,
                                   std::uint64_t device);

}  // namespace hemline
