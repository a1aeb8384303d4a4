#include "engine/handover/roof_readings.h"

#include "engine/roof/nearest.h"
#include "engine/words/csv_row.h"

namespace hemline {

namespace {

/// The corner before an eave, or after it, where the end is that corner and no other body's.
std::string corner_at(std::span<const RoofBody> bodies, const BodyEdge& edge, Side side) {
    const End end = side == Side::left ? edge.left : edge.right;
    if (edge.sides.size() != 1 || (end != End::corner_out && end != End::corner_in)) {
        return "";
    }
    std::size_t i = edge.sides.front();
    const RoofBody* body = bodies.data();
    for (; i >= body->sides.size(); ++body) {
        i -= body->sides.size();
    }
    const std::size_t n = body->sides.size();
    const Angle corner = body->sides[side == Side::left ? (i + n - 1) % n : i].corner;
    const bool is_it = (corner < half_turn) == (end == End::corner_out);
    return is_it && corner != square_out && corner != square_in ? print_degrees(corner) : "";
}

}  // namespace

std::string expected_readings(const Roof& roof, std::span<const RoofBody> bodies, Marks marks) {
    const SidesOfRoof sides = sides_of(bodies);
    std::string text = csv_row({"edge", "kind", "trim", "length", "left", "right", "pitch",
                                "pitch2", "corner_left", "corner_right", "expected"});
    for (const BodyEdge& edge : roof.edges) {
        const auto pitch = [&](std::size_t which) {
            return which < edge.planes.size() ? print_slope(*sides[edge.planes[which]]->pitch) : "";
        };
        // A hip's and a valley's corner stands at its foot.
        const std::string left = edge.corner_degrees
                                     ? print_degrees(nearest_microdegree(*edge.corner_degrees))
                                     : corner_at(bodies, edge, Side::left);
        text += csv_row({edge.id, word_of(edge.kind), "",
                         print_length(nearest_on(nearest_nm(edge.length), mark_of(marks)), marks),
                         word_of(edge.left), word_of(edge.right), pitch(0), pitch(1), left,
                         corner_at(bodies, edge, Side::right), "yes"});
    }
    return text;
}

}  // namespace hemline
