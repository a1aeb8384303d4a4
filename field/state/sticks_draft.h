// Drafts about sticks on hand, and about a stick that is not what it should be.
#pragma once

#include <cstdint>
#include <optional>

#include "engine/record/event.h"
#include "field/state/length_draft.h"

namespace hemline {

struct OnHandDraft {
    LengthDraft length;
    std::int64_t sticks = 1;          ///< so many of that length lie there
    std::optional<EventId> corrects;  ///< what was counted before
};

struct StickDraft {
    LengthDraft length;
};

struct SticksDrafts {
    OnHandDraft on_hand;
    StickDraft stick;
};

}  // namespace hemline
