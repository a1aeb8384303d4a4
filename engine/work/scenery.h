// What a step's pictures are set up from: the piece in hand, and the wood, panels and strips it
// lies on.
#pragma once

#include "engine/work/prop.h"

namespace hemline {

struct Strip;

/// The finished piece as it lies on the roof; where there is none, a pan.
struct Scenery {
    std::vector<Facet> piece;
    LegPatch flange, face;
    double end = 0;          ///< x of the piece's end that is shown
    double inward = 1;       ///< from there into the piece: 1 or −1
    bool two_roofs = false;  ///< the face lies on a roof too
    bool over_panels = false;
    bool is_plane = false;         ///< of a plane's panels
    const Strip* strip = nullptr;  ///< what the edge's metal or panels hold on

    /// x so many mm into the piece.
    [[nodiscard]] double in(double mm) const { return end + inward * mm; }
    [[nodiscard]] double other_end() const { return inward > 0 ? flange.x1 : flange.x0; }
    [[nodiscard]] std::vector<double> along(int count) const;
};

/// A pan with its two seams, for what is no line.
Scenery pan_stage(double pitch_degrees);

/// Boards under the flange, and behind the face where that is no roof; boards under both.
Props wood(const Scenery& stage);
/// Panels over the flange, or under it where the trim goes on over them; `ends_up`: how far their
/// ends are turned up, 0 to 1.
Props panels(const Scenery& stage, double ends_up = 0);
/// The strip that the hem hooks on, behind the face.
Prop cleat(const Scenery& stage);
/// A closure between two seams under the flange.
Props closure(const Scenery& stage);
/// The edge's strip: flat, half bent or bent (0, 0.5, 1), on the flange.
Prop strip(const Scenery& stage, double bent);
/// An end cap at the end shown; `lip`: of its flange, `turned`: how far its lips are folded,
/// `clipped`: their corners.
Prop end_cap(const Scenery& stage, double lip, double turned, bool clipped);
/// A pipe through the pan, and its boot.
Prop pipe(const Scenery& stage);
Prop boot(const Scenery& stage);
/// The metal of the edge that comes round the corner or crosses the end, `gap` mm off.
Props neighbor(const Scenery& stage, double gap);

}  // namespace hemline
