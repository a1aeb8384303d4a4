// What was answered to the steps of a procedure.
#pragma once

#include <cstdint>
#include <string>

#include "engine/record/kinds.h"
#include "engine/record/said_values.h"
#include "engine/record/step_said.h"

namespace hemline {

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

using StepFacts = Kinds<StepDone>;

}  // namespace hemline
