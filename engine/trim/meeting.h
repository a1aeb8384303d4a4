// Two pieces put together in space, and what is wrong there: metal that overlaps, gaps, hems that
// bind.
//
//      outside corner                        lap
//      left piece ───┐tab                    under ─────────╥──┐
//                    │                             ┌──╥───────────── over
//                    │ right piece                 lap
//
//   For a screen: draw both lists of faces; the faults' words go beside them.
#pragma once

#include <string>
#include <vector>

#include "engine/roof/hip.h"
#include "engine/trim/folding.h"

namespace hemline {

struct FoldFault {
    Text what, mend;
    double mm = 0;  ///< how deep, how wide
};

struct Meeting {
    std::vector<Face> left, right;  ///< of the piece that ends there, and of the piece that begins
    std::vector<FoldFault> faults;
    double gap_mm = 0;  ///< the widest open place between the flanges, or tab and face
};

/// Largest distance from the points to the face's metal, in mm.
double farthest_mm(const Face& face, const std::vector<Space>& points);
/// True when the two pass through each other over more than `touch_mm`, and each reaches more than
/// that to both sides of the other.
bool goes_through(const Face& a, const Face& b, double touch_mm);
/// Area where the two lie on each other, in mm²; 0 where they are not in the same plane.
double overlap_mm2(const Face& a, const Face& b);

/// Tabs of a finished piece that lie in the same place or run through its other metal.
std::vector<FoldFault> tab_faults(const FlatPattern& pattern);

/// Where two pieces of the same trim meet.
struct Joint {
    Slope pitch;
    Angle corner = square_out;  ///< plan angle inside the building
    Length left_past;           ///< of the left piece's metal, past the corner line (its tab)
    Length right_past;          ///< of the right piece's
    Length gap_most = sixteenths(1);
};

/// Both pieces finished, at an outside corner: the right end of the left piece with the left end of
/// the right piece. Faults: a tab away from the neighbor's face, flanges that are apart by more
/// than the gap or pass through each other.
Meeting corner_meeting(const FlatPattern& left, const FlatPattern& right, const Joint& joint);

/// The left piece's right end under the right piece's left end by `lap`. Faults: hems that bind
/// because the lower piece's hem reaches under the upper piece's.
Meeting lap_meeting(const FlatPattern& under, const FlatPattern& over, Slope pitch, Length lap);

}  // namespace hemline
