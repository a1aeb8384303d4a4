// Drafts of the card's screens: how long the cut really is, the view of the folded piece, its
// papers.
#pragma once

#include <optional>

#include "engine/roof/edge.h"
#include "field/state/length_draft.h"

namespace hemline {

struct RealCutDraft {
    LengthDraft length;
};

/// How the folded piece is looked at.
struct FoldedDraft {
    std::optional<Side> end;       ///< none: the end with more work
    int step = 2;                  ///< as cut, tabs half folded, finished, with what it meets
    float turned = 0, raised = 0;  ///< degrees, by the finger
};

struct PapersDraft {
    bool a4 = false;  ///< not letter
};

struct CardDrafts {
    RealCutDraft real_cut;
    FoldedDraft folded;
    PapersDraft papers;
};

}  // namespace hemline
