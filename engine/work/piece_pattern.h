// The flat pattern of a piece of a job: the marks of its card as cuts and folds in metal.
//
//      card:    tab end · flange cut · tab fold … hem notch · lap line · end cut
//      pattern: the same places, as corners of the outline and ends of the folds
#pragma once

#include "engine/trim/pattern.h"
#include "engine/work/card.h"

namespace hemline {

/// Sizes that the card's marks do not state; common practice, no published source.
struct SnipSizes {
    Length tab_clip = sixteenths(4);  ///< 45° off a tab's corners: 1/4 in
    Length relief = sixteenths(2);    ///< 1/8 in
    Angle kick_out = degrees(45);
};

/// How far the tabs of an end are folded, in degrees; the marks do not say.
struct TabFolds {
    double tab = 90;    ///< of the face, around the corner
    double lean = 0;    ///< at square-cut fascias: what both faces' corner lines lean together
    double near = 90;   ///< at a corner point, of the leg on this roof
    double far = 90;    ///< of the leg on the other
    double end = 90;    ///< of an end folded down: at a gable's peak, onto the other roof
    double rise = 0;    ///< of the roof along the wall round a headwall's corner
    double valley = 0;  ///< up along the valley, of a flange that runs on under its neighbor's
};

/// A corner's tab is folded by 180° less the plan angle inside the building; a hip's or valley's
/// foot is folded plumb, a valley's top and a gable's peak over the ridge; a gable's flange hangs
/// plumb before a high eave, and follows the other roof, which is level that way, at a hip. Common
/// practice, no published source.
TabFolds tab_folds(const Card& card, const Edge& edge, Side side);

/// The steps on the metal that the card's marks ask for at that end.
std::vector<EndStep> end_steps(const Card& card, Side side, const TabFolds& folds,
                               const SnipSizes& sizes = {});

/// The section that the card's trim has on this edge. Problem: the catalogue has no such section.
Result<Section> section_of(const Card& card, const Sections& sections);

/// The card's piece as a flat pattern. Problems: no section, a fold that needs another pitch,
/// flat_pattern()'s.
Result<FlatPattern> piece_pattern(const Card& card, const Edge& edge, const Sections& sections,
                                  const SnipSizes& sizes = {});

}  // namespace hemline
