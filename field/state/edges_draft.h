// Drafts of an edge being described, and of a lap keyed in for one edge.
#pragma once

#include <optional>

#include "engine/roof/edge.h"
#include "engine/work/edge_change.h"
#include "field/state/length_draft.h"
#include "field/state/name_draft.h"
#include "field/state/reading_draft.h"

namespace hemline {

/// An edge being added or changed; one thing is asked at a time.
struct EdgeDraft {
    Edge edge;
    std::optional<EdgeField> asked = EdgeField::kind;  ///< none: everything said of it is shown
    bool one_by_one = true;          ///< the first questions follow one after the other
    int answered = 0;                ///< how many of the first questions a touch has answered
    bool choosing = false;           ///< which existing edge to change
    Text refused;                    ///< why that may not change
    std::optional<EdgeField> keyed;  ///< what is keyed in is said of this field:
    PitchDraft number;
    NameDraft name;
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
