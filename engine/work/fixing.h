// Fixing a run: where its screws go, how many, and how much sealant the laps take.
#pragma once

#include <cstdint>
#include <vector>

#include "engine/trim/catalogue.h"

namespace hemline {

struct PlannedPiece;
struct Practice;
struct Run;

/// What a piece's end holds free of screws: a lap, or a tab and what runs past the edge with it.
struct FreeEnd {
    Length length;
    bool laps = false;
};

/// Screws of a piece `cut` long, from its left end: a margin in, then every spacing, the last a
/// margin before the end; a last gap under a quarter of the spacing is shared with the gap before
/// it; one in the middle where there is no room. None in a lap (common practice: the joint must
/// move), none in a tab. Beside a lap the margin gives way, to 1/2 in at least, so that the gap
/// across the lap keeps the spacing: laps up to spacing − 1 in.
std::vector<Length> screws_of(Length cut, FreeEnd left, FreeEnd right, const Practice& practice);

/// The free ends of a piece of the run, from the edge's own ends.
struct FreeEnds {
    FreeEnd left, right;
};
FreeEnds free_ends_of(const Run& run, const PlannedPiece& piece, const Edge& edge, const Trim& trim,
                      const Practice& practice);

/// How many legs are fastened: both of a ridge's, hip's and valley's, else one, so that the roof
/// can move under the other (common practice, no published source).
int screw_lines(EdgeKind kind, TrimRole role);

/// Whether the run's laps get sealant: the trim's own do; a wrap's lie dry behind the trim, and a
/// cleat has none.
bool is_sealed(const Run& run);

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
FixingTally fixing_of(const Run& run, const Edge& edge, const Trim& trim, const Practice& practice);

/// Closures (zees) that fill the pans between seams under a ridge cap, hip cap, headwall flashing,
/// transition flashing or high eave trim.
struct Closures {
    std::int64_t count = 0;   ///< one a pan, on each roof that ends there
    Length each;              ///< cut length: seam to seam; a hip's on the skew is longer
    std::int64_t sticks = 0;  ///< of practice.stock, cut from one by one
};

/// None for a kind that has no closures; a hip's are cut to where the seams meet it on the skew.
/// Spacing: practice.seam_spacing. Common practice, no published source.
Closures closures_of(const Edge& edge, Length length, const Practice& practice);

}  // namespace hemline
