// A rule of the job being set anew.
#pragma once

#include <string>

#include "field/state/length_draft.h"

namespace hemline {

struct RuleDraft {
    std::string key;  ///< of the rule; empty: the list of them is shown
    LengthDraft length;
};

struct RulesDrafts {
    RuleDraft rule;
};

}  // namespace hemline
