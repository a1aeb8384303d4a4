// A flat pattern folded up in space: its panels as plane faces, each bend turned part of the way.
//
//      z up                     flat        as cut       tabs half     finished
//      |  / y into the          ______      ______ _     ______        ______
//      | /    building         |______|_    |_____|_|    |_____|╱      |_____|]
//      +------ x along the edge, left to right seen from outside
//
//   For a screen: fold_up(pattern, step_of(FoldStep::tabs_half), resting(pattern, pitch)) gives the
//   faces to draw; in between, blend two FoldProgress. Metal has no thickness: the upper face of a
//   panel is the side `normal` points to. Open and tear-drop hems are drawn open.
#pragma once

#include <vector>

#include "engine/measure/slope.h"
#include "engine/quantity/space.h"
#include "engine/trim/pattern.h"

namespace hemline {

/// Where a flat panel lies, in mm: its x and y run along these directions; `normal` points away
/// from its upper face.
struct Placing {
    Space origin;
    Space along{1, 0, 0};    ///< of x
    Space across{0, -1, 0};  ///< of y: down the page
    Space normal{0, 0, 1};

    /// Where a point of the flat pattern lies.
    [[nodiscard]] Space at(FlatPoint p) const;
};

/// How far each fold is turned, 0 flat to 1 done.
struct FoldProgress {
    double bends = 0;  ///< of the section, on the brake
    double tabs = 0;   ///< by hand at the ends
};

enum class FoldStep { flat, as_cut, tabs_half, finished };
FoldProgress step_of(FoldStep step);

/// One panel in space.
struct Face {
    std::size_t leg = 0;
    bool is_tab = false;
    Side side = Side::left;  ///< of a tab
    std::vector<Space> corners;
    Space normal;  ///< of the upper face
};

/// All faces, the panels by leg first, then the tabs. `root` is where the root leg lies.
std::vector<Face> fold_up(const FlatPattern& pattern, const FoldProgress& progress,
                          const Placing& root);

/// Which way the roof under the root leg falls on the page: down for an eave and a headwall, up for
/// the first leg of a ridge or hip cap.
enum class Falls { down_page, up_page };

/// The pattern's root leg on a roof of that pitch: x along the edge from the piece's left end, the
/// main bend along y = z = 0.
Placing resting(const FlatPattern& pattern, Slope pitch, Falls falls = Falls::down_page);

/// The placing turned around a vertical axis through the point, + from x toward y.
Placing turned_in_plan(const Placing& placing, const Space& about, double degrees);
/// The placing, shifted.
Placing shifted(Placing placing, const Space& by);

}  // namespace hemline
