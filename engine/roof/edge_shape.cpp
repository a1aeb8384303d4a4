#include "engine/roof/edge_shape.h"

#include <algorithm>

namespace hemline {

namespace {

constexpr End of_no_line[] = {End::open};
constexpr End around_the_house[] = {End::gable, End::corner_out, End::corner_in, End::wall,
                                    End::open};
constexpr End of_ridge[] = {End::gable, End::wall, End::open, End::ridge, End::hip, End::valley};
constexpr End foot_of_gable[] = {End::wall, End::open, End::eave, End::valley};
constexpr End top_of_gable[] = {End::wall, End::open, End::eave, End::ridge, End::hip, End::valley};
constexpr End foot_of_hip[] = {End::wall, End::open, End::eave, End::valley};
constexpr End top_of_hip[] = {End::wall, End::open, End::ridge, End::hip, End::valley};
constexpr End foot_of_valley[] = {End::gable, End::wall, End::open, End::eave};
constexpr End top_of_valley[] = {End::wall, End::open, End::ridge, End::hip, End::valley};
constexpr End foot_of_sidewall[] = {End::corner_out, End::corner_in, End::wall,
                                    End::open,       End::eave,      End::valley};
constexpr End top_of_sidewall[] = {End::corner_out, End::corner_in, End::wall, End::open,
                                   End::eave,       End::ridge,     End::hip,  End::valley};
constexpr End across_the_roof[] = {End::gable, End::corner_out, End::corner_in, End::wall,
                                   End::open,  End::hip,        End::valley};

/// The plan angle inside the building at that end.
std::optional<Angle> corner_at(const Edge& edge, Side side) {
    const auto stated = stated_corner(edge, side);
    if (edge.kind == EdgeKind::hip || edge.kind == EdgeKind::valley) {
        const bool hip = edge.kind == EdgeKind::hip;
        const auto either = edge.corner_left ? edge.corner_left : edge.corner_right;
        const Angle angle = either.value_or(hip ? square_out : square_in);
        return hip || angle > half_turn ? angle : full_turn - angle;
    }
    switch (end_at(edge, side)) {
        case End::corner_out:
            return stated.value_or(square_out);
        case End::corner_in:
            return stated.value_or(square_in);
        default:
            return {};
    }
}

}  // namespace

std::span<const End> ends_of(EdgeKind kind, Side side) {
    const bool foot = side == Side::left;
    switch (kind) {
        case EdgeKind::eave:
        case EdgeKind::high_eave:
            return around_the_house;
        case EdgeKind::gable:
            return foot ? std::span<const End>(foot_of_gable) : top_of_gable;
        case EdgeKind::ridge:
            return of_ridge;
        case EdgeKind::hip:
            return foot ? std::span<const End>(foot_of_hip) : top_of_hip;
        case EdgeKind::valley:
            return foot ? std::span<const End>(foot_of_valley) : top_of_valley;
        case EdgeKind::sidewall:
            return foot ? std::span<const End>(foot_of_sidewall) : top_of_sidewall;
        case EdgeKind::penetration:
            return of_no_line;
        case EdgeKind::headwall:
        case EdgeKind::transition:
            break;
    }
    return across_the_roof;
}

bool can_end_at(EdgeKind kind, Side side, End end) {
    const auto ends = ends_of(kind, side);
    return std::find(ends.begin(), ends.end(), end) != ends.end();
}

std::optional<RoofCorner> roof_corner(const Edge& edge, Side side) {
    const auto angle = corner_at(edge, side);
    if (!edge.pitch || !angle) {
        return {};
    }
    return RoofCorner{*edge.pitch, *other_pitch(edge), *angle};
}

std::optional<FoldAngle> fold_at(const Edge& edge) {
    if (!edge.pitch) {
        return {};
    }
    const bool in_line = edge.kind == EdgeKind::hip || edge.kind == EdgeKind::valley;
    const auto corner = in_line ? corner_at(edge, Side::left) : std::nullopt;
    const auto fold = fold_of({edge.kind, *edge.pitch, edge.pitch2, corner, edge.fascia});
    return fold ? std::optional(*fold) : std::nullopt;
}

}  // namespace hemline
