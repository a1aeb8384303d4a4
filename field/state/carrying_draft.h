// Draft for a disagreement of two tablets: which side is to stand.
#pragma once

#include <optional>

#include "engine/record/event.h"

namespace hemline {

struct ApartDraft {
    std::optional<EventId> chosen;
};

struct CarryingDrafts {
    ApartDraft apart;
};

}  // namespace hemline
