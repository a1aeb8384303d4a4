// Two pieces put together in space, and what is wrong there: metal in metal, gaps, hems that bind.
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
    std::vector<Face> left, right;  ///< of the piece that ends there, and of the one that begins
    std::vector<FoldFault> faults;
    double gap_mm = 0;  ///< the widest open place between the flanges, or tab and face
};

/// Largest distance from the points to the face's metal, in mm.
double farthest_mm(const Face& face, const std::vector<Space>& points);
/// True when the two pass through one another over more than `touch_mm`, each reaching more than
/// that to both sides of the other.
bool goes_through(const Face& a, const Face& b, double touch_mm);
/// Area where the two lie in one plane on one another, in mm²; 0 where they are not in one plane.
double overlap_mm2(const Face& a, const Face& b);

/// Tabs of one finished piece that lie in the same place or run through its other metal.
std::vector<FoldFault> tab_faults(const FlatPattern& pattern);

/// Where two pieces of one trim meet.
struct Joint {
    Slope pitch;
    Angle corner = square_out;  ///< plan angle inside the building
    Length left_past;           ///< of the left piece's metal, past the corner line (its tab)
    Length right_past;          ///< of the right piece's
    Length gap_most = sixteenths(1);
};

/// Both pieces finished, the right end of one at an outside corner with the left end of the other.
/// Faults: a tab off the neighbour's face, flanges apart by more than the gap or through one
/// another.
Meeting corner_meeting(const FlatPattern& left, const FlatPattern& right, const Joint& joint);

/// The left piece's right end under the right piece's left end by `lap`. Faults: hems that bind
/// because the lower piece's hem reaches under the upper one's.
Meeting lap_meeting(const FlatPattern& under, const FlatPattern& over, Slope pitch, Length lap);

}  // namespace hemline
