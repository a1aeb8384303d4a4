// Folded metal drawn solid: painted side shaded, back hatched, cut edges heavy, folds fine.
#pragma once

#include "engine/trim/solid.h"
#include "field/touch/ui.h"

namespace hemline {

/// From where it is looked at: turned about an upright axis, and raised above the level, degrees.
struct SolidView {
    double turned = 0, raised = 25;
};

/// What is painted, and how; the back of metal that is painted on neither side is hatched too.
struct SolidPart {
    std::vector<Facet> facets;
    Painted painted = Painted::upper;
    bool other = false;   ///< the piece that this one meets: on the ground of a finished thing
    bool worked = false;  ///< its tabs are what is being folded: in chalk
};

/// Draws all parts as large as the box allows, with the names of the legs where the first part is
/// broken off. `room_for`: in the scale that these parts want, so that pictures side by side keep
/// one; none: the parts themselves.
void draw_solid(Ui& ui, const std::vector<SolidPart>& parts, const std::vector<LegName>& legs,
                const SolidView& view, Box box, const std::vector<SolidPart>& room_for = {});

/// Which fill is which side, in words; returns the height used.
float draw_solid_key(Ui& ui, bool with_other, Box box);

}  // namespace hemline
