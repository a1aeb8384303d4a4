// What the snips take and the hand seamer folds at one end of a flat piece, measured inward from
// it.
//
//     in=0        in
//      ┌╌╌╌╌╌╌╌╌╌┬────────────        flange cut: leg removed from the end to `in`
//      ┌╌╌╌╌╌╌╌╌╱                     flange mitre: `in` at the fold, in + run at the free edge
//      ├─────────┊────────────  face  tab: folded at `in`; its corners clipped by `run`
//      └╌╌╌╌╌╌╌╌╌╲                    drip clip: 45° from `in`, away from the tab, through kick and
//      ╌╌╌╌╌╌╌╌╌╱                     hem as they lie folded on one another
//
//   A new kind of end is a list of steps (data), or one more small function behind an EndDeed.
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
    flange_cut,    ///< flanges off to `in`
    flange_mitre,  ///< flange cut from in + run at its free edge to `in` at the fold
    drip_clip,     ///< kick and hem cut at 45° from `in`
    hem_notch,     ///< hems off to `in`
    hem_clip,      ///< corner of the hem clipped at 45°, from `in` at its fold
    face_cut,      ///< face, kick and hem off to `in`: the flange runs on
    face_slant,  ///< face cut from in + run at its upper edge to `in` at its lower one; a plumb cut
    tab,         ///< face folded by `degrees` at `in`
    tab_clip,    ///< both outer corners of the face clipped at 45° by `run`
    low_clip,    ///< lower outer corner of the face clipped at 45° by `run`
    relief,      ///< small notch of `run` where the tab's fold meets the drip edge
    return_tab,  ///< flange, kick and hem off to `in`, the face folded there by `degrees`
    cap,         ///< wings folded down at `in`, hems off, the apex clipped so that they meet
    kick_out,    ///< upstand slit from the flange to `in` and folded out by `degrees`
    turn_up,     ///< flange slit from its neighbours to `in` and folded up by `degrees`
};

struct EndStep {
    EndDeed deed = EndDeed::flange_cut;
    Length in;            ///< from the end of the metal, inward
    Length run;           ///< along the piece; may be below 0 where the deed says so
    double degrees = 90;  ///< of folds, as the brake turns; above 0

    bool operator==(const EndStep&) const = default;
};

/// A line to cut that takes no metal away, along the bend between two legs, from the end to `in`.
struct EndSlit {
    std::size_t bend = 0;
    Length in;
};
/// A leg's end folded across the piece: + away from the upper face.
struct EndFold {
    std::size_t leg = 0;
    Length in;
    double degrees = 0;
};

/// All that the steps do, x counting inward from the end.
struct EndShape {
    std::vector<FlatOutline> notches;
    std::vector<EndSlit> slits;
    std::vector<EndFold> folds;
};

EndShape end_shape(const FlatLegs& legs, const std::vector<EndStep>& steps);

}  // namespace hemline
