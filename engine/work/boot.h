// A pipe through the flat of one pan: how far from a seam its boot must stand, and the hole in
// which the pan can move past the pipe.
//
//   seam |<- base/2 + 1 in + w/2 ->|   the pipe's center stands here or farther from both seams
#pragma once

#include "engine/quantity/length.h"
#include "engine/trim/metal_family.h"

namespace hemline {

struct Practice;

struct Boot {
    Length seam_least;  ///< from the pipe's center to a seam's middle
    Length room;  ///< between the two places nearest to the seams; below 0 where there is none
    Length hole;  ///< across
};

/// A boot `base` across on a pipe `pipe` across, `from_line` from where the panels are pinned.
/// Clearances are practice's. The hole lets the pan move from the temperature it is laid at, as the
/// site says it (60 °F where nobody did), to the site's hottest or to −20 °F (from memory), by the
/// metal's coefficient (per °F: steel 6.7, copper 9.4, stainless 9.6, aluminum 12.9 ·10⁻⁶;
/// zinc 17.4 from memory), on 1/16 in. Common practice, no published source.
Boot boot_of(Length pipe, Length base, Length from_line, MetalFamily metal,
             const Practice& practice);

/// A boot needs an inch of room; with less, the seams move or a curb is built (common practice, no
/// published source).
bool fits(const Boot& boot);

/// A cricket on the up side of a curb: two small roofs that turn the water round it.
struct Cricket {
    Length height;  ///< of its ridge over its foot: W/2 · tan θ
    Length valley;  ///< true length of each valley, at equal pitches
};
/// `width` across the slope, on a roof of that pitch in degrees. Formula of IRC Table R1003.20
/// (from memory); the local code decides.
Cricket cricket_of(Length width, double pitch_degrees);

}  // namespace hemline
