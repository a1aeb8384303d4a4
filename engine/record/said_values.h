// Values that events say and the job keeps. They are apart from the kinds of events, so that who
// reads a job does not depend on those.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/measure/slope.h"
#include "engine/quantity/angle.h"
#include "engine/quantity/length.h"
#include "engine/record/event_id.h"
#include "engine/trim/catalogue.h"
#include "engine/trim/section.h"

namespace hemline {

enum class SideKind : std::uint8_t;  // engine/body/body_sides.h

/// A side of a body as it was walked.
struct SideWalked {
    std::string id;                  ///< stays the same from walk to walk
    std::vector<std::string> edges;  ///< of the job, along it in walking order; a gable's slopes
    SideKind kind = {};              ///< an eave
    /// As stated, for working out alone: no metal is bent to it. Its edges' own pitches go first.
    std::optional<Slope> pitch;
    std::string pitch_from;        ///< the edge whose pitch it has where nobody said its own
    Angle corner = degrees(90);    ///< inside, after it
    std::optional<Length> length;  ///< in plan, as stated; readings of its edges go first
    std::string meets;             ///< the other body's eave that lies on it

    bool operator==(const SideWalked&) const = default;
};

/// Where a body runs into another, in plan from that roof's eave.
struct HostSaid {
    std::string eave;
    Length along, up;  ///< of the front, from the eave's left end, and up the slope
    Length rise;       ///< of this body's eave over the host's

    bool operator==(const HostSaid&) const = default;
};

/// Which of a body's lines an edge is: that between two of its sides.
struct PlaceOnBody {
    std::string body;
    std::string side, other;  ///< the side walked first goes first
    std::int32_t which = 0;   ///< where two sides meet in several stretches

    bool operator==(const PlaceOnBody&) const = default;
};

/// Which length a reading is of: the edge at its fascia, or what is left beside the fixed neighbor
/// of the run's last piece (from that neighbor's end to the edge's end).
enum class ReadingOf : std::uint8_t { edge = 0, remainder = 1 };

/// Metal a cut came from: a new stick of that length, or an offcut that an earlier event left.
struct MetalTaken {
    Length stick;
    std::optional<EventId> offcut;

    bool operator==(const MetalTaken&) const = default;
};

/// Whether new sticks can be had for a trim of an edge and for what is cut from the same sticks.
enum class Supply : std::uint8_t { as_wanted = 0, on_hand_only = 1 };

/// How a run is to be divided: its cuts in fitting order.
struct RunChosen {
    std::string edge;
    TrimRole role = TrimRole::main;
    std::vector<Length> cuts;

    bool operator==(const RunChosen&) const = default;
};

/// A leg of a section as this job bends it; no bend: as the catalogue has it, or as the roof asks.
struct LegChosen {
    Length width;
    Hem hem = Hem::none;
    std::optional<Angle> bend;  ///< from the leg before, + away from the upper face

    bool operator==(const LegChosen&) const = default;
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

/// What somebody saw: it is as it should be or not, or the side it is on.
enum class Finding : std::uint8_t { good = 0, bad = 1, left = 2, right = 3 };

/// What is looked at before roof work. The numbers are saved and never reused.
enum class GateCheck : std::uint8_t {
    anchors = 0,
    ladder = 1,
    wires = 2,
    wind = 3,
    wet = 4,
    heat = 5
};
inline constexpr std::array gate_checks = {GateCheck::anchors, GateCheck::ladder, GateCheck::wires,
                                           GateCheck::wind,    GateCheck::wet,    GateCheck::heat};
struct GateFound {
    GateCheck check = GateCheck::anchors;
    Finding finding = Finding::good;  ///< or bad

    bool operator==(const GateFound&) const = default;
};

/// What practice asked of an answer; empty where it asked nothing.
struct PracticeLimits {
    std::string rule = {};  ///< key of the rule that sets the limit; empty: the procedure sets it
    std::optional<Length> length_least = {}, length_most = {};
    std::optional<std::int64_t> count_least = {}, count_most = {};
    std::vector<Finding> findings = {};  ///< any of these is right

    bool operator==(const PracticeLimits&) const = default;
};

/// Id of the step that answers an edge sent back, in every procedure.
constexpr std::string_view mend_step = "mend";

}  // namespace hemline
