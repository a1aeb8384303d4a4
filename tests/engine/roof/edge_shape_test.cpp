// The corners that an edge's ends stand at. Angles by hand; square where none is stated: common
// practice, no published source.
#include "engine/roof/edge_shape.h"

#include <doctest/doctest.h>

namespace hemline {
namespace {

Edge edge_of(EdgeKind kind, End left, End right) {
    Edge edge;
    edge.kind = kind;
    edge.left = left;
    edge.right = right;
    edge.pitch = rise_in_12(6);
    return edge;
}

std::optional<Angle> inside(const Edge& edge, Side side) {
    const std::optional<RoofCorner> corner = roof_corner(edge, side);
    return corner ? std::optional(corner->inside) : std::nullopt;
}

TEST_CASE("A corner is square where nothing is stated, 90 outside and 270 inside") {
    const Edge eave = edge_of(EdgeKind::eave, End::corner_out, End::corner_in);
    CHECK(inside(eave, Side::left) == degrees(90));
    CHECK(inside(eave, Side::right) == degrees(270));
    CHECK_FALSE(inside(edge_of(EdgeKind::eave, End::gable, End::wall), Side::left));
}

TEST_CASE("A figure stated at one end is that end's") {
    Edge eave = edge_of(EdgeKind::eave, End::corner_out, End::corner_out);
    eave.corner_right = degrees(135);
    CHECK(inside(eave, Side::left) == degrees(90));
    CHECK(inside(eave, Side::right) == degrees(135));
    eave.corner_left = degrees(120);
    CHECK(inside(eave, Side::left) == degrees(120));
}

TEST_CASE("A valley's angle said from outside is the same corner; a hip's is never turned") {
    for (const auto& [said, is] : {std::pair(135, 225), {45, 315}, {90, 270}, {225, 225}}) {
        Edge valley = edge_of(EdgeKind::valley, End::eave, End::ridge);
        valley.corner_left = degrees(said);
        CHECK(inside(valley, Side::left) == degrees(is));
        CHECK(inside(valley, Side::right) == degrees(is));
    }
    Edge hip = edge_of(EdgeKind::hip, End::eave, End::ridge);
    CHECK(inside(hip, Side::left) == degrees(90));
    hip.corner_right = degrees(135);
    CHECK(inside(hip, Side::left) == degrees(135));
}

}  // namespace
}  // namespace hemline
