// Which side of what was made apart is to stand.
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
