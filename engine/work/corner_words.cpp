#include "engine/work/corner_words.h"

#include <cmath>

#include "engine/plan/plan.h"
#include "engine/quantity/angle.h"
#include "engine/roof/edge_shape.h"
#include "engine/trim/end_metal.h"

namespace hemline {
namespace {

Text angle_at(const EdgeEnds& ends, Side side) {
    const auto stated = stated_corner(ends.edge, side);
    const double inside = stated ? degrees_of(*stated) : 90;
    // At an inside corner the gauge lies outside the building, between the faces.
    const double shown =
        end_at(ends.edge, side) == End::corner_in && stated ? 360 - inside : inside;
    const auto tenths = std::llround(shown * 10);
    return Text(std::to_string(tenths / 10) +
                (tenths % 10 == 0 ? "" : "." + std::to_string(tenths % 10)) + "°");
}

Text of_corners(const EdgeEnds& ends, int piece, const Text& left, const Text& right) {
    const auto there = [&](Side side) {
        return turns_a_corner(end_at(ends.edge, side)) && ends.holds(side, piece);
    };
    if (there(Side::left) && there(Side::right) && !(left == right)) {
        return say("{1} at the left, {2} at the right", left, right);
    }
    return there(Side::left) ? left : right;
}

}  // namespace

bool turns_a_corner(End end) { return end == End::corner_out || end == End::corner_in; }

bool EdgeEnds::holds(Side side, int piece) const {
    return piece == 0 || run.pieces.empty() ||
           (side == first_fitted(edge) ? run.pieces.front() : run.pieces.back()).number == piece;
}

bool EdgeEnds::lies_over(Side side) const {
    return trim != nullptr && end_metal(edge, side, *trim, practice).tab == Length();
}

Text corner_angles(const EdgeEnds& ends, int piece) {
    return of_corners(ends, piece, angle_at(ends, Side::left), angle_at(ends, Side::right));
}

Text corner_sides(const EdgeEnds& ends, int piece) {
    const auto said = [&](Side side) { return ends.lies_over(side) ? say("over") : say("under"); };
    return of_corners(ends, piece, said(Side::left), said(Side::right));
}

}  // namespace hemline
