// What the snips take and the hand seamer folds at an end of a flat piece, measured inward from it.
//
//     in=0        in
//      ┌╌╌╌╌╌╌╌╌╌┬────────────        flange cut: leg removed from the end to `in`
//      ┌╌╌╌╌╌╌╌╌╱                     flange miter: `in` at the fold, in + run at the free edge
//      ├─────────┊────────────  face  tab: folded at `in`, its corners clipped
//      └╌╌╌╌╌╌╌╌╌╲                    drip clip: 45° from `in`, away from the tab, through kick and
//      ╌╌╌╌╌╌╌╌╌╱                     hem as they lie folded on one another
//
//   A new kind of end is a list of steps (data), or another small function for a new EndDeed.
#pragma once

#include <optional>
#include <vector>

#include "engine/trim/flat_shape.h"
#include "engine/trim/girth.h"

namespace hemline {

/// The legs as strips of the flat piece.
struct FlatLegs {
    std::vector<LegName> names;
    std::vector<Length> edges;  ///< 0, the marks, the girth: leg i lies between edges i and i + 1
    std::vector<double> bends;  ///< signed degrees, between leg i and leg i + 1
};

FlatLegs flat_legs(const Section& section, const std::vector<double>& bends, const Blank& blank);

enum class EndDeed {
    flange_cut,    ///< flange off to `in`
    flange_mitre,  ///< flange and its hem cut from `in` at the bend to in + run at the outer edge
    face_mitre,    ///< the same of the face
    face_cut,      ///< face, kick and hem off to `in`: the flange runs on
    face_slant,    ///< face cut from in + run at the bend to `in` at its other edge: a plumb cut
    drip_cut,      ///< kick and hem off to `in`
    drip_clip,     ///< kick and hem cut at 45° from `in`, as they lie folded
    hem_notch,     ///< hems off to `in`
    hem_clip,      ///< corner of the hem clipped at 45°, from `in` at its fold
    tab,           ///< face folded, from in + run at the bend to `in` at its other edge
    tab_clip,      ///< both outer corners of the face clipped at 45° by `run`
    low_clip,      ///< the face's outer corner away from the bend clipped at 45° by `run`
    relief,        ///< small notch of `run` where the tab's fold meets the drip edge
    fold_down,     ///< flange and face folded down at `in` to close the end, kick and hem off; cut
                   ///< where the two would overlap, else slit at the bend
    turn_up,       ///< the same, folded up
    flange_fold,   ///< the flange alone folded down, from `in` at the bend to in + run at its outer
                   ///< edge; up where the degrees are below 0
    flange_tab,    ///< flange folded from `in` at the bend to in + run at its outer edge, its hem
                   ///< cut to the fold; slit at the bend, cut square to the fold where it is sharp
    face_tab,      ///< the same of the face
    kick_out,      ///< face slit from its neighbors to `in` and turned up by `degrees`
    face_off,      ///< face alone off to `in`: flange and hem run on
    face_clear,    ///< of the face's `run` past `in`, what would lie in a slope that rises by
                   ///< `degrees` from the bend
};

struct EndStep {
    EndDeed deed = EndDeed::flange_cut;
    Length in;            ///< from the end of the metal, inward
    Length run;           ///< along the piece; may be below 0 where the deed says so
    double degrees = 90;  ///< of folds, as the brake turns; above 0 but of flange_fold

    bool operator==(const EndStep&) const = default;
};

/// A line to cut that takes no metal away, along the bend between two legs, from the end to `in`.
struct EndSlit {
    std::size_t bend = 0;
    Length in;
};
/// A leg's end folded across the piece along a straight line.
struct EndFold {
    std::size_t leg = 0;
    Length in_top, in_low;  ///< where the line meets the leg's upper and lower edge on the page
    double degrees = 0;     ///< + away from the upper face
};

/// The result of all steps, x counting inward from the end.
struct EndShape {
    std::vector<FlatOutline> notches;
    std::vector<EndSlit> slits;
    std::vector<EndFold> folds;
};

EndShape end_shape(const FlatLegs& legs, const std::vector<EndStep>& steps);

}  // namespace hemline
