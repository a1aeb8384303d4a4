// What lies around a piece of trim in a picture of a step: wood, sealant, screws, strips, panels,
// and who does it.
//
//      normal
//      |   across ______________ wide        A leg as the flat rectangle that it is but for its
//      |  /      /             /             ends: x along the piece, `a` across it from the main
//      | / 0____/_____________/              bend, up from its upper face.
//      |/        x0 → along  x1
#pragma once

#include <cstdint>
#include <optional>
#include <vector>

#include "engine/trim/solid.h"

namespace hemline {

enum class Stuff : std::uint8_t {
    sealant,
    fastener,
    wood,
    membrane,
    panel,  ///< metal of the roof's panels
    strip,  ///< metal that trim or panels hold on
    film,   ///< clear: film and water
    gauge,  ///< tape, level, chalk line
    person,
};

struct Prop {
    Stuff stuff = Stuff::wood;
    std::vector<Facet> facets;
};
using Props = std::vector<Prop>;

struct LegPatch {
    double x0 = 0, x1 = 0, wide = 0;  ///< mm
    Space at_bend, along{1, 0, 0}, across, normal;

    [[nodiscard]] Space at(double x, double a, double up) const {
        return at_bend + along * x + across * a + normal * up;
    }
    [[nodiscard]] double middle() const { return (x0 + x1) / 2; }
};
/// None where the piece shows nothing of that leg.
std::optional<LegPatch> patch_of(const std::vector<Facet>& piece, std::size_t leg);

/// A plane figure, its corners one after another.
Facet figure(std::vector<Space> corners);
/// A rectangle on the leg.
Prop sheet(Stuff stuff, const LegPatch& on, double x0, double x1, double a0, double a1, double up);
/// A rectangle that stands on the leg along the line from one place to the other.
Prop upright(Stuff stuff, const LegPatch& on, double x0, double a0, double x1, double a1,
             double from, double to);
/// Round heads.
Prop heads(const LegPatch& on, const std::vector<double>& xs, double a, double up = 2);
/// A box over a rectangle of the leg.
Prop block(Stuff stuff, const LegPatch& on, double x0, double x1, double a0, double a1, double from,
           double to);
/// Somebody on the leg at that place, in a few strokes.
Prop person(const LegPatch& on, double x, double a);

std::vector<Facet> moved(std::vector<Facet> facets, const Space& by);
Prop moved(Prop prop, const Space& by);
Props moved(Props props, const Space& by);
Props both(Props one, const Props& other);

}  // namespace hemline
