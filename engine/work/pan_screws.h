// Screws of what stands on closures: two a pan, a quarter of it from each seam.
//
//   seam          seam          seam     along the edge, from its left end: k · apart
//    |  o      o   |  o      o   |
//    |<->|      |<->|                    a quarter of `apart`, 4 in of 16
#pragma once

#include <vector>

#include "engine/work/closures.h"
#include "engine/work/fixing.h"

namespace hemline {

/// The places of a pan from its left seam: a quarter and three quarters of it, on the cut grid.
struct PanPlaces {
    Length first, second;
};
PanPlaces pan_places(const ClosureSide& side, const Practice& practice);

/// A stretch of a piece: from and to, from its left end.
struct Stretch {
    Length from, to;
};

/// The screws in `room` of a piece whose left end lies `begins` from the left end of the edge, from
/// the piece's left end; one in the widest place off the seams where no pan's place lies in it.
std::vector<Length> pan_screws(const ClosureSide& side, Length edge, Length begins, Stretch room,
                               const Practice& practice);

/// "4 in and 12 in", along the edge from a seam; both roofs' where they differ; empty where the
/// trim does not stand on closures.
Text seam_places(const Edge& edge, TrimRole role, Length length, const Practice& practice);

}  // namespace hemline
