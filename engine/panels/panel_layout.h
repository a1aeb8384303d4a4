// The panels of a plane as they are laid: seams, pans, clips, closures, pairs, and what to look
// out for. Nothing of it is cut from before the plane is measured.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "engine/panels/laid_pans.h"
#include "engine/panels/pan_closures.h"
#include "engine/panels/pan_pairs.h"
#include "engine/trim/practice.h"

namespace hemline {

/// What is said of all planes.
struct PanelJob {
    Practice practice;  ///< module, seam, metal, fixed line
    Length side_gap;    ///< from a gable or wall to the turn-up
    std::optional<MetalTemperatures> at;
    SeamLegs legs = SeamLegs::of_two_kinds;
};
PanelJob usual_panel_job();

/// A doubt about the plane, or about one pan of it.
struct PanelDoubt {
    int pan = 0;  ///< 0: the plane
    Problem problem;
};

struct PanelLayout {
    DeckPlane plane;
    SeamFrame frame;
    PanEnds ends;
    Length shift;
    std::vector<LaidPan> pans;
    std::vector<LaidSeam> seams;
    std::vector<PanClosures> closures;
    std::vector<PanPair> pairs;
    std::vector<PanelDoubt> doubts;
};

/// Problem: pinned at the ridge, and no temperatures said; as movement_of(); a module that is no
/// wider than a seam's foot.
Result<PanelLayout> lay_panels(const DeckPlane& plane, const PanelJob& job,
                               std::span<const Penetration> through = {});

}  // namespace hemline
