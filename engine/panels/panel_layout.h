// The panels of a plane as they are laid: seams, pans, clips, closures, pairs, and what to look
// out for. Nothing of it is cut from before the plane is measured.
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "engine/panels/laid_pans.h"
#include "engine/panels/meeting_seams.h"
#include "engine/panels/pan_closures.h"
#include "engine/panels/pan_pairs.h"
#include "engine/trim/practice.h"

namespace hemline {

/// What holds the strip that the panels hook on in a valley.
enum class ValleyStrip : std::uint8_t { unsaid, screwed, riveted };

/// What is said of a plane, and mostly alike of all.
struct PanelJob {
    Practice practice;  ///< module, seam, metal, fixed line, clips
    std::optional<MetalTemperatures> at;
    SeamLegs legs = SeamLegs::of_two_kinds;
    std::optional<ChosenSeams> chosen;
    std::optional<Length> valley_leg;  ///< of the valley's metal, from its center
    ValleyStrip strip = ValleyStrip::unsaid;
};

struct PlaneAsked {
    DeckPlane plane;
    PanelJob job;
    std::vector<Penetration> through;
};

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
    bool one_more = false;  ///< as chosen: a pan more than there need be
    std::vector<LaidPan> pans;
    std::vector<LaidSeam> seams;
    std::vector<PanClosures> closures;
    std::vector<PanPair> pairs;
    std::vector<PanelDoubt> doubts;
};

/// Of a job that leaves no pan between its seams.
std::optional<Problem> no_pans(const PanelJob& job);
SeamTask seam_task(const PlaneAsked& asked);
/// Problem: pinned at the ridge, and no temperatures said; as movement_of().
Result<PanEnds> ends_on(const DeckPlane& plane, const PanelJob& job);
/// With those seams. Problem: as ends_on().
Result<PanelLayout> lay_panels(const PlaneAsked& asked, const SeamLayout& seams);
/// For itself: as chosen, else by the least shift. Problem: also as no_pans().
Result<PanelLayout> lay_panels(const DeckPlane& plane, const PanelJob& job,
                               std::span<const Penetration> through = {});

}  // namespace hemline
