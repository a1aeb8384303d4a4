// The answer to a step being keyed in.
#pragma once

#include <string>

#include "engine/words/text.h"
#include "field/state/length_draft.h"

namespace hemline {

struct StepDraft {
    LengthDraft length;
    bool field_opened = false;  ///< the step has chosen the field its limit lies in
    bool keys_out = false;      ///< who learns has seen the step and keys its value in
    std::string count;          ///< digits
    Text exception_asked;       ///< why the answer lies outside practice; it may be noted by name
};

struct StepsDrafts {
    StepDraft step;
};

}  // namespace hemline
