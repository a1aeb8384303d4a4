// Where the seams of a plane lie: balanced between its sides, then shifted by the least that keeps
// them off what they must not lie on.
//
//    |  e  |  m  |  m  |  m  |  e  |      two square sides: equal end pans e, more than half of m
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "engine/panels/deck_plane.h"
#include "engine/panels/keep_off.h"
#include "engine/quantity/length.h"

namespace hemline {

/// Where the pans of a plane end at a side.
struct SideLine {
    Length at;            ///< a square side's stands its gap in from the edge
    bool square = false;  ///< up the slope (gable, wall); else the pans are cut along it
};
struct LevelLine {
    Length from, to;
};
struct SeamFrame {
    SideLine left, right;
    LevelLine eave, top;  ///< of no length where the plane has none
    Length module;
    Length lean = {};  ///< of square sides: their top lies so far to the right of their foot
    Length end_least = inches(4);  ///< of end pans
};

/// Of a plane whose square sides have pans that stand `gap` in from them, and are no narrower than
/// `end_least`, or half the module where that is less.
SeamFrame seam_frame(const DeckPlane& plane, Length module, Length gap, Length end_least);

/// All seams, from the left. Two square sides: equal end pans between m/2 and m. Two cut sides: a
/// seam or the middle of a pan on the middle of the longer of eave and top, whichever leaves the
/// wider narrowest piece at a corner. One of each: a whole pan at the square side, unless the last
/// piece on the shortest level line would be under 4 in. Where the plane is no wider than a pan:
/// none. Common practice, no published source.
std::vector<Length> balanced_seams(const SeamFrame& frame);
/// Two square sides: with a whole pan more between end pans that are still wide enough; else none.
std::vector<Length> seams_with_one_more(const SeamFrame& frame);

/// How seams may be shifted so that the end pans at square sides stay from 4 in to the module at
/// foot and top; below 0 they must go the other way. Between cut sides half a module each way.
struct ShiftRoom {
    Length left, right;

    [[nodiscard]] bool has(Length shift) const { return shift <= right && -shift <= left; }
};
ShiftRoom shift_room(const SeamFrame& frame, std::span<const Length> seams);
std::vector<Length> shifted_seams(const SeamFrame& frame, std::span<const Length> seams,
                                  Length shift);

/// Every shift on the grid that there is room for, the least first, of two alike to the right.
std::vector<Length> shifts_in(const ShiftRoom& room);
/// Of the end pans at square sides, foot and top, and of the pieces at the corners of eave and top
/// at cut sides.
Length narrowest_end(const SeamFrame& frame, std::span<const Length> seams);

/// Where somebody chose to have them.
struct ChosenSeams {
    Length shift;
    bool one_more = false;  ///< shifted from seams_with_one_more()

    bool operator==(const ChosenSeams&) const = default;
};

struct SeamLayout {
    std::vector<Length> seams;
    Length shift;                  ///< from where balancing put them, to the right
    std::vector<KeepOff> staying;  ///< conflicts that no shift clears
    /// Two square sides, and a conflict stays: the seams with one pan more, which clear all.
    std::optional<std::vector<Length>> with_one_more;
};

/// The least shift on the 1/16 in grid that clears all, or as many as can be: every one is tried
/// that keeps the end pans at square sides from 4 in to the module; of two alike the one to the
/// right.
SeamLayout lay_seams(const SeamFrame& frame, std::span<const KeepOff> keep_off);
/// As chosen; none where the end pans would be too narrow or too wide.
std::optional<SeamLayout> lay_seams(const SeamFrame& frame, std::span<const KeepOff> keep_off,
                                    const ChosenSeams& chosen);

/// Those that a seam lies too near to.
std::vector<KeepOff> conflicts_of(std::span<const Length> seams, std::span<const KeepOff> keep_off);
/// From the line to the nearest seam; none without seams.
std::optional<Length> nearest_seam(std::span<const Length> seams, Length at);

}  // namespace hemline
