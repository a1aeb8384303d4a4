// Folded metal drawn solid: painted side shaded, back hatched, cut edges heavy, folds fine.
#pragma once

#include <optional>

#include "engine/trim/solid.h"
#include "field/touch/ui.h"

namespace hemline {

/// The direction it is looked at from: turned around a vertical axis, and raised above level, in
/// degrees.
struct SolidView {
    double turned = 0, raised = 25;
};

/// What is drawn, and how; the back of metal with no painted side is hatched too.
struct SolidPart {
    std::vector<Facet> facets;
    Painted painted = Painted::upper;
    bool other = false;   ///< the piece that this one meets, on the color of finished things
    bool worked = false;  ///< its tabs are being folded: drawn in chalk
    std::optional<Colour> fill = {};  ///< not trim: what lies around it
};

/// Draws all parts as large as the box allows, with the names of the legs where the first part is
/// broken off. `room_for`: uses the scale that fits these parts, so that pictures side by side have
/// the same scale; none: fits the parts themselves.
void draw_solid(Ui& ui, const std::vector<SolidPart>& parts, const std::vector<Text>& legs,
                const SolidView& view, Box box, const std::vector<SolidPart>& room_for = {});

/// Says in words which fill is which side; returns the height used.
float draw_solid_key(Ui& ui, bool with_other, Box box);

}  // namespace hemline
