// Values that events say and the job keeps, apart from the kinds of events, which come and go past
// most readers of a job.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "engine/quantity/angle.h"
#include "engine/quantity/length.h"
#include "engine/record/event_id.h"
#include "engine/trim/catalogue.h"
#include "engine/trim/section.h"

namespace hemline {

/// Which length a reading is of: the edge at its fascia, or what is left beside the fixed neighbour
/// of the run's last piece (from that neighbour's end to the edge's end).
enum class ReadingOf : std::uint8_t { edge = 0, remainder = 1 };

/// Metal a cut came from: a new stick of that length, or an offcut that an earlier event left.
struct MetalTaken {
    Length stick;
    std::optional<EventId> offcut;

    bool operator==(const MetalTaken&) const = default;
};

/// Whether new sticks can be had, for what shares sticks with a trim of an edge.
enum class Supply : std::uint8_t { as_wanted = 0, on_hand_only = 1 };

/// How one run is to be divided: its cuts in fitting order.
struct RunChosen {
    std::string edge;
    TrimRole role = TrimRole::main;
    std::vector<Length> cuts;

    bool operator==(const RunChosen&) const = default;
};

/// One leg of a section as this job bends it; no bend: as the catalogue has it, or by the roof.
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

/// What somebody who looked found: it is as it should be or not, or the side it is on.
enum class Finding : std::uint8_t { good = 0, bad = 1, left = 2, right = 3 };

/// What practice asked of an answer; what it did not ask is empty.
struct PracticeLimits {
    std::string rule = {};  ///< key of the rule a limit is of; empty: the procedure's own figure
    std::optional<Length> length_least = {}, length_most = {};
    std::optional<std::int64_t> count_least = {}, count_most = {};
    std::vector<Finding> findings = {};  ///< each of which would do

    bool operator==(const PracticeLimits&) const = default;
};

/// Id of the step that answers an edge sent back, in every procedure.
constexpr std::string_view mend_step = "mend";

}  // namespace hemline
