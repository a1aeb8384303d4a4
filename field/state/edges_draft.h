// An edge being described, and a lap of its own being keyed in.
#pragma once

#include <optional>

#include "engine/roof/edge.h"
#include "engine/work/edge_change.h"
#include "field/state/length_draft.h"
#include "field/state/name_draft.h"
#include "field/state/reading_draft.h"

namespace hemline {

/// An edge that is added, or changed: one thing is asked at a time.
struct EdgeDraft {
    Edge edge;
    std::optional<EdgeField> asked = EdgeField::kind;  ///< none: all that is said of it is shown
    bool one_by_one = true;  ///< the first questions lead from one to the next
    bool choosing = false;   ///< which of the edges that are there is to change
    Text refused;            ///< why that may not change
    PitchDraft number;       ///< of the field that is asked
    NameDraft name;          ///< likewise
};

struct EdgeLapDraft {
    LengthDraft length;
    bool field_opened = false;  ///< the lap in force has chosen the field
};

struct EdgesDrafts {
    EdgeDraft edge;
    EdgeLapDraft edge_lap;
};

}  // namespace hemline
