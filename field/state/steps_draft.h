// The answer to a step being keyed in.
#pragma once

#include <string>

#include "engine/words/text.h"
#include "field/state/length_draft.h"

namespace hemline {

struct StepDraft {
    std::string of;  ///< key_of() the step that it answers
    LengthDraft length;
    bool field_opened = false;  ///< the field of the step's limit has been chosen
    bool keys_out = false;      ///< the apprentice has seen the step and keys in its value
    std::string count;          ///< digits
    std::string singly;         ///< key_of() the step that was opened out of a confirmation
    Text exception_asked;       ///< why it is outside practice; may be accepted by name
};

struct StepsDrafts {
    StepDraft step;
};

}  // namespace hemline
