// What is left to lay of a plane when something did not go as planned: a seam that lies elsewhere,
// a pan spoiled or cut short.
//
//   | 1 | 2 | 3 :   planned        seam 3 read 1/8 in too far: what is beyond goes on from there,
//   | 1 | 2 | 3  |  as it lies     and the end pan takes the difference
#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "engine/panels/panel_layout.h"

namespace hemline {

/// Of a pan that lies.
struct SeamRead {
    int seam = 0;  ///< 1…, from the left end of the eave
    Length at;     ///< from the eave's left end
};

/// A pan that does not lie, by its name; what of its length is left, none: nothing.
struct SpoiledPan {
    std::pair<int, int> pan;
    std::optional<Length> left;
};

struct LaidSoFar {
    std::vector<int> lying;  ///< pans by number, from one side of the plane
    std::vector<SeamRead> read;
    std::vector<SpoiledPan> spoiled;
};

/// A pan still to be laid, by its name in the new layout, and which as ordered it comes from; none:
/// it must be ordered.
struct PanFrom {
    std::pair<int, int> pan;
    std::optional<std::pair<int, int>> from;
};

struct Relaid {
    PanelLayout layout;  ///< as it will lie, with what is to be looked out for
    std::vector<PanFrom> to_lay;
    std::vector<Length> to_order;                ///< lengths, the longest first
    std::vector<std::pair<int, int>> left_over;  ///< as ordered, short ones too, that serve nowhere
};

/// Seams beyond one that was read go on from where it lies, a module apart, from the side where
/// pans lie (none: from the left); the end pan takes the difference, and there is a pan more or
/// less where it must be. Each pan is laid where it was meant to while it is long enough; a short
/// one, or one left over, goes where a shorter one is asked. What is ordered anew is together as
/// short as it can be. End pans are bent on the site, so all pans are as wide. Problem: a seam or
/// pan that the plane has not, a seam beyond the one after it; as lay_panels().
Result<Relaid> relaid(const PlaneAsked& asked, const PanelLayout& planned, const LaidSoFar& so_far);

}  // namespace hemline
