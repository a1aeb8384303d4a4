// Draft of a rule of the job being set.
#pragma once

#include <string>

#include "field/state/length_draft.h"

namespace hemline {

struct RuleDraft {
    std::string key;    ///< of the rule; empty: the list of them is shown
    std::string keyed;  ///< the rule that the length is keyed in for
    LengthDraft length;
};

struct RulesDrafts {
    RuleDraft rule;
};

}  // namespace hemline
