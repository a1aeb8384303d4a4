// What was answered to the steps of a procedure.
#pragma once

#include <cstdint>
#include <string>

#include "engine/record/kinds.h"
#include "engine/record/said_values.h"
#include "engine/record/step_said.h"

namespace hemline {

/// As programs wrote it that kept the exception as an English sentence.
struct StepDone {
    static constexpr std::uint16_t kind_number = 9;
    std::string edge;
    std::string step;  ///< id in the procedure
    int piece = 0;     ///< 0 when the step is of the whole edge
    Answer answer;
    std::string exception;  ///< why a value outside practice was accepted; empty: within practice
    std::string exception_by;  ///< who accepted it

    [[nodiscard]] StepSaid said() const;
    bool operator==(const StepDone&) const = default;
};

/// Saves what practice asked at the time, so that the exception can be told in any language and on
/// any marks.
struct StepAnswered {
    static constexpr std::uint16_t kind_number = 45;
    std::string edge;
    std::string step;  ///< id in the procedure
    int piece = 0;     ///< 0 when the step is of the whole edge
    AnswerKind kind = AnswerKind::done;
    Length length = {};
    std::int64_t count = 0;
    Finding finding = Finding::good;
    PracticeLimits limits = {};
    std::string accepted_by = {};  ///< outside those limits; empty: within them

    [[nodiscard]] StepSaid said() const;
    bool operator==(const StepAnswered&) const = default;
};

/// The foreman's answer to a safety check to which somebody said no.
struct StepLifted {
    static constexpr std::uint16_t kind_number = 47;
    std::string edge;
    std::string step;  ///< id in the procedure
    std::string reason;
    std::string lifted_by;

    [[nodiscard]] StepSaid said() const;
    bool operator==(const StepLifted&) const = default;
};

using StepFacts = Kinds<StepDone, StepAnswered, StepLifted>;

}  // namespace hemline
