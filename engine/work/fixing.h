// Fixing a run: where its screws go, how many, and how much sealant the laps take.
#pragma once

#include <vector>

#include "engine/plan/plan.h"

namespace hemline {

/// Screw centres between two limits: the first `margin` in, then every `spacing`, the last `margin`
/// before the end, none further apart than `spacing`. A last gap under a quarter of the spacing is
/// shared with the gap before it. One screw in the middle where there is no room.
std::vector<Length> screw_centres(Length from, Length to, Length margin, Length spacing);

/// Screws of a piece, from its left end, none in a lap (common practice: the joint must move), none
/// in a tab. Beside a lap the margin gives way, to 1/2 in at least, so that the gap across the lap
/// keeps the spacing: laps up to spacing − 1 in.
std::vector<Length> screws_of(const PlannedPiece& piece, bool laps_left, bool laps_right,
                              Length lap, const Practice& practice);

/// Bead lines across the lap, from the underlap's own end: two, `bead_gap` apart about its middle;
/// in a lap too short for that, at its thirds.
std::vector<Length> bead_offsets(Length lap, const Practice& practice);

struct FixingTally {
    std::int64_t screws = 0;
    std::int64_t laps = 0;
    Length bead;            ///< run of bead in all
    double cartridges = 0;  ///< of 10.1 US fl oz, round bead: volume decides
};

/// Totals of one run. A bead crosses flange and face.
FixingTally fixing_of(const Run& run, const Trim& trim, const Practice& practice);

}  // namespace hemline
