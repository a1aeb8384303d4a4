#include "engine/roof/edge_shape.h"
#include "engine/words/result.h"

#include <algorithm>
#include <vector>

namespace hemline {

namespace {

/// The plan angle inside the building at that end.
std::optional<Angle> corner_at(const Edge& edge, Side side) {
    const auto stated = stated_corner(edge, side);
    if (stands_over_corner(edge.kind)) {
        const bool hip = turns_out(edge.kind);
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

std::string either_of(std::span<const std::string_view> words) {
    std::string list;
    for (std::size_t i = 0; i < words.size(); ++i) {
        list += (i == 0 ? "" : i + 1 == words.size() ? " or " : ", ") + std::string(words[i]);
    }
    return list;
}

std::string words_of_kinds_with_run() {
    std::vector<std::string_view> words;
    for (const KindOfEdge& one : kinds_of_edge()) {
        if (has_run(one.kind)) {
            words.push_back(one.word);
        }
    }
    return either_of(words);
}

std::span<const End> ends_of(EdgeKind kind, Side side) {
    return side == Side::left ? facts_of(kind).left : facts_of(kind).right;
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
    const auto corner = stands_over_corner(edge.kind) ? corner_at(edge, Side::left) : std::nullopt;
    const auto fold = fold_of({edge.kind, *edge.pitch, edge.pitch2, corner, edge.fascia});
    return fold ? std::optional(*fold) : std::nullopt;
}

}  // namespace hemline
