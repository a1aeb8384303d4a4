// The flat pattern of one piece of a job: its card's marks, cut and folded in metal.
//
//      card:    tab end · flange cut · tab fold … hem notch · lap line · end cut
//      pattern: the same places, as corners of the outline and ends of the folds
#pragma once

#include "engine/trim/pattern.h"
#include "engine/work/card.h"

namespace hemline {

/// Sizes that no mark of the card states; common practice, no published source.
struct SnipSizes {
    Length tab_clip = sixteenths(4);  ///< 45° off a tab's corners: 1/4 in
    Length relief = sixteenths(2);    ///< 1/8 in
    Angle kick_out = degrees(45);
};

/// By how much the tabs of one end are folded, in degrees, which the marks do not say.
struct TabFolds {
    double tab = 90;   ///< of the face, round the corner
    double near = 90;  ///< at a corner point, of the leg on this roof
    double far = 90;   ///< of the leg on the other
};

/// A corner's tab is folded by 180° less the plan angle inside the building; a hip's or valley's
/// foot is folded plumb, a valley's top over the ridge. Common practice, no published source.
TabFolds tab_folds(const Card& card, const Edge& edge, Side side);

/// What the card's marks do to the metal at that end.
std::vector<EndStep> end_steps(const Card& card, Side side, const TabFolds& folds,
                               const SnipSizes& sizes = {});

/// The section that the card's trim has on this edge. Problem: the catalogue has no such section.
Result<Section> section_of(const Card& card, const Sections& sections);

/// The card's piece as a flat pattern. Problems: no section, a fold that needs another pitch,
/// flat_pattern()'s.
Result<FlatPattern> piece_pattern(const Card& card, const Edge& edge, const Sections& sections,
                                  const SnipSizes& sizes = {});

}  // namespace hemline
