// A page that asks for a reason: one of the usual ones, or words keyed in.
#pragma once

#include <string>
#include <vector>

#include "field/state/name_draft.h"
#include "field/state/state.h"
#include "field/state/wish.h"
#include "field/touch/ui.h"

namespace hemline {

struct ReasonAsked {
    Text title, send;                ///< send: what the last button does
    std::vector<const char*> usual;  ///< phrases or names; empty: there are none
};

struct ReasonGiven {
    std::string reason;  ///< empty: none yet
    bool leave = false;
    Wished wish;  ///< of the frame
};

ReasonGiven ask_reason(Ui& ui, const State& state, const ReasonAsked& asked, NameDraft& words);

}  // namespace hemline
