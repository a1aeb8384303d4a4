// Events: what happened, in the past tense. The journal is a list of them, and nothing else is
// saved.
#pragma once

#include <cstddef>
#include <cstdint>
#include <functional>
#include <limits>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "engine/dividing/run.h"
#include "engine/measure/slope.h"
#include "engine/quantity/length.h"
#include "engine/record/thing.h"
#include "engine/roof/edge.h"
#include "engine/trim/catalogue.h"
#include "engine/trim/section.h"

namespace hemline {

/// Device that wrote the event, and its place in that device's own sequence (1…).
struct EventId {
    std::uint64_t device = 0;
    std::uint32_t sequence = 0;

    auto operator<=>(const EventId&) const = default;
};

/// Hybrid logical clock: the device's clock, raised so that it never runs backwards past an event
/// already seen; the counter orders events of one millisecond. It orders events and nothing else: a
/// single clock that is years ahead raises everybody's.
struct HybridTime {
    std::int64_t wall_ms = 0;  ///< Unix time
    std::uint32_t counter = 0;

    auto operator<=>(const HybridTime&) const = default;
};

/// The latest that a clock may say, the end of the year 9999; and the last time of all: what comes
/// after it has the same, and says what it comes after (Moment).
constexpr std::int64_t wall_ms_most = 253'402'300'799'999;
constexpr HybridTime time_last{wall_ms_most + 1, std::numeric_limits<std::uint32_t>::max()};

/// What a device's clock said, right or wrong: for people, and for their days. It orders nothing.
struct WallTime {
    std::int64_t ms = 0;  ///< Unix time

    auto operator<=>(const WallTime&) const = default;
};

/// How the writer stood when it wrote.
struct Moment {
    WallTime clock;
    std::optional<EventId> after;  ///< the last event it held, in the one order; none: the first

    bool operator==(const Moment&) const = default;
};

/// Which length a reading is of: the edge at its fascia, or what is left beside the fixed neighbour
/// of the run's last piece (from that neighbour's end to the edge's end).
enum class ReadingOf : std::uint8_t { edge = 0, remainder = 1 };

struct JobStarted {
    std::string name;
    std::string practice;  ///< which practice the job was planned under

    bool operator==(const JobStarted&) const = default;
};
struct EdgeAdded {
    Edge edge;  ///< an id already there is replaced; its lap is LapChosen's to say, and stays

    bool operator==(const EdgeAdded& other) const;  ///< the lap apart
};
struct ReadingTaken {
    std::string edge;
    ReadingOf of = ReadingOf::edge;
    Length length;

    bool operator==(const ReadingTaken&) const = default;
};
struct PitchTaken {
    std::string edge;
    Slope pitch;

    bool operator==(const PitchTaken&) const = default;
};
struct StyleChosen {
    std::string edge;
    Style style = Style::balanced;

    bool operator==(const StyleChosen&) const = default;
};
struct RuleSet {
    std::string key, value;  ///< with_rule()

    bool operator==(const RuleSet&) const = default;
};
/// Metal a cut came from: a new stick of that length, or an offcut that an earlier event left.
struct MetalTaken {
    Length stick;
    std::optional<EventId> offcut;

    bool operator==(const MetalTaken&) const = default;
};
struct PieceCut {
    std::string edge;
    TrimRole role = TrimRole::main;
    int piece = 0;
    Length cut;
    MetalTaken metal;

    bool operator==(const PieceCut&) const = default;
};
/// Metal lost without yielding the piece. Supersedes the PieceCut it undoes, if there was one.
struct PieceSpoiled {
    std::string edge;
    TrimRole role = TrimRole::main;
    int piece = 0;
    Length lost;
    MetalTaken metal;

    bool operator==(const PieceSpoiled&) const = default;
};
/// What a check was answered with.
enum class AnswerKind : std::uint8_t { done = 0, length = 1, count = 2, seen = 3 };
struct Answer {
    AnswerKind kind = AnswerKind::done;
    Length length;
    std::int64_t count = 0;
    std::string seen;

    bool operator==(const Answer&) const = default;
};
struct StepDone {
    std::string edge;
    std::string step;  ///< id in the procedure
    int piece = 0;     ///< 0 when the step is of the whole edge
    Answer answer;
    std::string exception;  ///< why a value outside practice was accepted; empty: within practice
    std::string exception_by;  ///< who accepted it

    bool operator==(const StepDone&) const = default;
};
struct EdgeFinished {
    std::string edge;
    std::string remark;

    bool operator==(const EdgeFinished&) const = default;
};
/// The foreman's other answer: what is wrong, for the crew to mend. Supersedes his tick, if there
/// was one.
struct EdgeSentBack {
    std::string edge;
    std::string reason;

    bool operator==(const EdgeSentBack&) const = default;
};
/// An edge added by mistake is no longer on the job. Metal cut for it is not: cut on another tablet
/// meanwhile, the edge stays. EdgeAdded puts it back.
struct EdgeTakenOff {
    std::string edge;

    bool operator==(const EdgeTakenOff&) const = default;
};
/// Id of the step that answers it, in every procedure.
constexpr std::string_view mend_step = "mend";
/// Undo: the target no longer counts; it stays in the record, shown as struck.
struct Struck {
    EventId target;
    std::string reason;

    bool operator==(const Struck&) const = default;
};
/// How one run is to be divided: its cuts in fitting order.
struct RunChosen {
    std::string edge;
    TrimRole role = TrimRole::main;
    std::vector<Length> cuts;

    bool operator==(const RunChosen&) const = default;
};
/// The crew picked one of the plans side by side: its runs stay so until something forces them.
/// What it cost is kept as it was shown.
struct PlanChosen {
    Prefer prefer = Prefer::looks;  ///< for the runs that are still to come
    std::string trim;
    std::int64_t extra_laps = 0, unbalanced = 0, sticks = 0;
    std::vector<RunChosen> runs;

    bool operator==(const PlanChosen&) const = default;
};
/// So many sticks or offcuts of that length lie there, fit for that trim of the edge. Supersedes
/// what was counted before, when it corrects it.
struct MetalCounted {
    std::string edge;
    TrimRole role = TrimRole::main;
    Length length;
    std::int64_t count = 0;

    bool operator==(const MetalCounted&) const = default;
};
/// A stick or an offcut is not as long as it was taken for.
struct StickMeasured {
    std::string edge;
    TrimRole role = TrimRole::main;
    MetalTaken metal;
    Length length;

    bool operator==(const StickMeasured&) const = default;
};
/// A whole stick or offcut is bent, scratched or gone.
struct StickSpoiled {
    std::string edge;
    TrimRole role = TrimRole::main;
    MetalTaken metal;

    bool operator==(const StickSpoiled&) const = default;
};
/// The lengths that new sticks come in on this job.
struct StockChosen {
    std::vector<Length> lengths;

    bool operator==(const StockChosen&) const = default;
};
/// Whether new sticks can be had, for what shares sticks with that trim of the edge.
enum class Supply : std::uint8_t { as_wanted = 0, on_hand_only = 1 };
struct SupplyChosen {
    std::string edge;
    TrimRole role = TrimRole::main;
    Supply supply = Supply::as_wanted;

    bool operator==(const SupplyChosen&) const = default;
};
/// What the edge must look like from the ground. Its style, if one was chosen, no longer counts.
struct LooksChosen {
    std::string edge;
    Looks looks = Looks::by_preference;

    bool operator==(const LooksChosen&) const = default;
};
/// How far the pieces of this edge lap; none: as the job's rule has it. Its run is divided anew.
struct LapChosen {
    std::string edge;
    std::optional<Length> lap;

    bool operator==(const LapChosen&) const = default;
};
/// One leg of a section as this job bends it; no bend: as the catalogue has it, or by the roof.
struct LegChosen {
    Length width;
    Hem hem = Hem::none;
    std::optional<Angle> bend;  ///< from the leg before, + away from the upper face

    bool operator==(const LegChosen&) const = default;
};
/// How this job bends a trim: all legs of its section; none: as the catalogue has it.
struct SectionChosen {
    std::string trim;
    std::vector<LegChosen> legs;

    bool operator==(const SectionChosen&) const = default;
};
/// Of what was made apart about one thing, this event's value stands. Supersedes all sides.
struct Picked {
    EventId chosen;  ///< says the value itself: no pick
    Thing about;

    bool operator==(const Picked&) const = default;
};
/// Somebody has looked at what stands under one number since a tablet was copied.
struct CopyNoted {
    EventId number;
    std::int64_t copies = 2;  ///< so many events he saw there

    bool operator==(const CopyNoted&) const = default;
};
/// A kind that this program does not know yet: kept byte for byte.
struct Unknown {
    std::uint16_t kind = 0;
    std::vector<std::uint8_t> payload;

    bool operator==(const Unknown&) const = default;
};

using Fact =
    std::variant<JobStarted, EdgeAdded, ReadingTaken, PitchTaken, StyleChosen, RuleSet, PieceCut,
                 PieceSpoiled, StepDone, EdgeFinished, Struck, Unknown, PlanChosen, MetalCounted,
                 StickMeasured, StickSpoiled, StockChosen, SupplyChosen, LooksChosen, EdgeSentBack,
                 SectionChosen, EdgeTakenOff, LapChosen, Picked, CopyNoted>;

/// More than a crew makes apart of one thing.
constexpr std::size_t supersedes_most = 4096;

struct Event {
    EventId id;
    HybridTime when;
    std::string by;                   ///< who held the tablet
    std::vector<EventId> supersedes;  ///< what the writer had seen and replaces
    Fact fact;
    std::optional<Moment> moment = {};  ///< none: written in frames of version 1, which lack it

    bool operator==(const Event&) const = default;
};

/// The device's clock; of version 1 the logical time, all there is, which another's wrong clock may
/// have raised.
WallTime wall_time(const Event& event);

/// Sixteen hex digits, lower case: the name of a device in ids and file names.
std::string print_device(std::uint64_t device);
std::optional<std::uint64_t> parse_device(std::string_view text);
/// "3f9c…-12": sixteen hex digits of the device, a dash, the sequence.
std::string print_event_id(EventId id);
std::optional<EventId> parse_event_id(std::string_view text);

/// What people call that which an event knows by its id; what is not given is named by the id.
struct Names {
    std::function<Text(const StepDone&)> step;
    std::function<Text(const std::string&)> trim, rule;
    std::function<const Fact*(EventId)> event;  ///< null: not on this tablet
    std::function<Text(EventId)> offcut;        ///< the piece whose cut left it
};

/// One line for the history screen and `journal`: what happened, in words, with its values. What a
/// strike struck is said one level deep: strikes may strike each other, or themselves.
Text describe(const Fact& fact, const Names& names = {});
/// "piece 1, step hook", or its action in quotes.
Text step_words(const StepDone& done, const Names& names);

}  // namespace hemline
