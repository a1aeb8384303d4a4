// The cap that closes an open end of a ridge, a hip or a high eave: a plate as the trim's section
// is bent there, with a lip along each leg that is folded 90° into the piece, under the leg.
//
//               bend
//              ╱    ╲          seen from outside, flat; the lips are folded away from you along the
//       lip ╱╱        ╲╲ lip   plate's two upper sides
//        ╱╱   plate     ╲╲
//         │              │     down to the pans where the trim stands on closures
//         └──────────────┘
#pragma once

#include <vector>

#include "engine/trim/pattern.h"
#include "engine/trim/section.h"

namespace hemline {

struct Practice;

/// Where a leg of the trim lies on the cap.
struct CapLeg {
    Length width;  ///< of the leg: the plate's side there
    Length
        clear;    ///< from the leg's free edge to its lip: the trim's hem lies there; 0 without one
    Length down;  ///< square to the leg, below its free edge; 0 where it lies on nothing open
    FlatLine fold;  ///< of its lip, from beside the bend to its foot
};

struct EndCap {
    CapLeg flange, face;
    double corner_degrees = 0;  ///< between the two, included
    Length lower;               ///< the plate's lower edge
    Length wide, high;          ///< of the flat metal, the lower edge along it
    /// To cut, y down: the left end seen from outside, the flange's side at its left. It begins and
    /// ends at the lower edge's two ends, and goes over the bend.
    FlatOutline outline;
    FlatPoint bend;
    bool fits_both_ends = false;  ///< the same mirrored
};

/// Lips are 3/4 in wide, cut at 45° at the foot and 1/8 in before the bend; past a hemmed edge they
/// keep clear of the hem by 1/8 in more. Under a leg that stands on closures the plate goes down by
/// the seams' height and 1/2 in, as the end of a cap over a gable does. Common practice, no
/// published source.
constexpr Length cap_lip = sixteenths(12), cap_relief = sixteenths(2);

/// Ridge, hip and high eave: an open end of theirs takes a cap, an open end of another kind none.
bool takes_end_cap(EdgeKind kind);
/// The sides of the edge that are open and take a cap: left, right.
std::vector<Side> capped_ends(const Edge& edge);

/// The cap of an edge with that main trim. Problem: the trim has no section, its flange and face do
/// not lie beside each other, a fold that needs another pitch, or legs too narrow for a lip.
Result<EndCap> end_cap_of(const Edge& edge, const Trim* trim, const Sections& sections,
                          const Practice& practice);
/// The cap of that end: as it is, or the other hand.
EndCap cap_for(const EndCap& cap, Side end);

/// What is cut and folded, a sentence each: blank, plate, what goes down, lips, hand.
std::vector<Text> cap_lines(const EndCap& cap, const Edge& edge);

}  // namespace hemline
