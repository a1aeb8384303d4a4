// A part of the roof's drawing, larger: where edges lie too close for a finger.
#pragma once

#include "field/screens/roof/roof_sheet.h"
#include "field/state/roof_draft.h"
#include "field/touch/box.h"

namespace hemline {

/// As often as it may be looked at closer, and how many times larger each makes it: together 81.
constexpr int closer_times_most = 4;
constexpr float closer_by = 3;

/// The part of the drawing in the box, as large as the look asks; lines end where the box does.
RoofSheet closer_sheet(const Ui& ui, const RoofSheet& whole, const CloserLook& look, Box box);

/// The drawing made for one box, put into another that is no larger: nothing on it changes places.
RoofSheet fitted_sheet(const RoofSheet& whole, Box from, Box to);

/// The look once closer still, the touch in the middle; kept by the place on that edge that is
/// nearest to it.
CloserLook closer_look(const Ui& ui, const RoofSheet& whole, const CloserLook& look, Box box,
                       const std::string& edge, ImVec2 touch);

}  // namespace hemline
