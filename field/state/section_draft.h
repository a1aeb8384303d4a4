// Draft of the leg, bend or hem of a section being changed.
#pragma once

#include <optional>
#include <string>

#include "engine/trim/section.h"
#include "field/state/length_draft.h"

namespace hemline {

struct SectionDraft {
    int leg = -1, bend = -1, hem = -1;  ///< a hem by its leg
    std::optional<Hem> hem_kind;        ///< none: as it was
    std::string degrees;                ///< digits of the bend
    bool up = false;                    ///< toward the upper face
    LengthDraft length;                 ///< width of the leg
};

struct SectionDrafts {
    SectionDraft section;
};

}  // namespace hemline
