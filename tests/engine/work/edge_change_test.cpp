// What may be said of an edge of each kind, and what cut metal fixes. Common practice, no published
// source, except where a source is named.
#include "engine/work/edge_change.h"
#include "engine/plan/plan.h"
#include "engine/record/job.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "engine/roof/edge_shape.h"
#include "tests/engine/assets.h"

namespace hemline {
namespace {

const Catalogue& catalogue() {
    static const Catalogue read = Catalogue::read(asset("catalogue/trims.csv")).value();
    return read;
}

bool asks(const Edge& edge, EdgeField field) {
    const auto fields = fields_of(edge, catalogue());
    return std::count(fields.begin(), fields.end(), field) > 0;
}

Edge edge_of_kind(EdgeKind kind) {
    Edge other;
    other.kind = kind == EdgeKind::eave ? EdgeKind::ridge : EdgeKind::eave;
    return made_to(other, kind, catalogue());
}

EdgeWork work_cut(Edge edge, TrimRole role, int piece) {
    EdgeWork work;
    work.edge = std::move(edge);
    work.edge.id = "A";
    work.cut.push_back({{1, 9}, role, piece, feet(10)});
    return work;
}

/// A run of so many pieces on edge A.
Plan plan_of(int pieces) {
    Plan plan;
    plan.runs.push_back({"A", "eave_rolled", TrimRole::main, inches(6), {}, DividedBy::together});
    for (int number = 1; number <= pieces; ++number) {
        PlannedPiece piece;
        piece.number = number;
        plan.runs.back().pieces.push_back(piece);
    }
    return plan;
}

TEST_CASE("An edge made to any kind has ends that stand there") {
    for (const KindOfEdge& one : kinds_of_edge()) {
        const Edge edge = edge_of_kind(one.kind);
        CAPTURE(one.word);
        CHECK(can_end_at(edge.kind, Side::left, edge.left));
        CHECK(can_end_at(edge.kind, Side::right, edge.right));
    }
}

TEST_CASE(
    "An edge made to another kind loses what that cannot have, and keeps its name and pitch") {
    Edge eave;
    eave.id = "A";
    eave.pitch = rise_in_12(5);
    eave.wrap = true;
    eave.trim = "eave_two_part";
    eave.right = End::corner_out;
    eave.corner_right = degrees(135);
    const Edge hip = made_to(eave, EdgeKind::hip, catalogue());
    CHECK(hip.id == "A");
    CHECK(hip.pitch == rise_in_12(5));
    CHECK_FALSE(hip.wrap);
    CHECK(hip.trim.empty());
    CHECK_FALSE(hip.corner_right);
    CHECK(made_to(eave, EdgeKind::eave, catalogue()) == eave);
}

TEST_CASE("A new gable or sidewall has the trim over the panels by name, other kinds none") {
    for (const KindOfEdge& one : kinds_of_edge()) {
        CAPTURE(one.word);
        const std::string trim = edge_of_kind(one.kind).trim;
        CHECK(trim == (one.kind == EdgeKind::gable      ? "gable_channel"
                       : one.kind == EdgeKind::sidewall ? "sidewall_channel"
                                                        : ""));
    }
    // An edge that names none, of an older job, is read as it was.
    Edge gable;
    gable.kind = EdgeKind::gable;
    CHECK(catalogue().of(gable)->id == "gable");
    CHECK(usual_trim(EdgeKind::gable, Catalogue()).empty());
}

TEST_CASE("Each kind is asked what it needs and nothing else") {
    CHECK_FALSE(asks(edge_of_kind(EdgeKind::gable), EdgeField::first));  // from its foot
    CHECK(asks(edge_of_kind(EdgeKind::ridge), EdgeField::other_pitch));
    CHECK(asks(edge_of_kind(EdgeKind::hip), EdgeField::corner_left));
    CHECK_FALSE(asks(edge_of_kind(EdgeKind::hip), EdgeField::corner_right));
    CHECK_FALSE(asks(edge_of_kind(EdgeKind::ridge), EdgeField::wrap));
    Edge eave = edge_of_kind(EdgeKind::eave);
    CHECK(asks(eave, EdgeField::wrap));
    CHECK(asks(eave, EdgeField::trim));
    CHECK_FALSE(asks(eave, EdgeField::other_pitch));
    eave.left = End::gable;
    CHECK_FALSE(asks(eave, EdgeField::corner_left));
    eave.left = End::corner_in;
    CHECK(asks(eave, EdgeField::corner_left));
    CHECK(asks(eave, EdgeField::other_pitch));  // of the roof past the corner
}

TEST_CASE("A corner's angle turns the way that its end says") {
    Edge eave;
    eave.left = End::corner_out;
    eave.right = End::corner_in;
    CHECK_FALSE(check_corner(eave, Side::left, degrees(135)));
    CHECK(check_corner(eave, Side::left, degrees(225)));
    CHECK(check_corner(eave, Side::left, degrees(180)));
    CHECK(check_corner(eave, Side::left, Angle()));
    CHECK_FALSE(check_corner(eave, Side::right, degrees(225)));
    CHECK(check_corner(eave, Side::right, degrees(135)));
    eave.left = End::wall;  // the outline alone asks, and may run straight on
    CHECK_FALSE(check_corner(eave, Side::left, degrees(180)));
    const Edge valley = edge_of_kind(EdgeKind::valley);  // from inside or outside
    CHECK_FALSE(check_corner(valley, Side::left, degrees(225)));
    CHECK_FALSE(check_corner(valley, Side::left, degrees(135)));
}

TEST_CASE("An end is held by the piece that carries it, and its kind by any") {
    Edge eave;
    eave.left = eave.right = End::gable;
    const EdgeWork first = work_cut(eave, TrimRole::main, 1);
    const Plan plan = plan_of(3);
    CHECK(held_by_metal(first, plan, EdgeField::left).english().rfind("Piece 1 is cut", 0) == 0);
    CHECK(held_by_metal(first, plan, EdgeField::right).empty());
    CHECK_FALSE(held_by_metal(first, plan, EdgeField::kind).empty());
    CHECK_FALSE(held_by_metal(first, plan, EdgeField::trim).empty());
    CHECK(held_by_metal(first, plan, EdgeField::wrap).empty());
    CHECK(held_by_metal(first, plan, EdgeField::seam).empty());
    CHECK_FALSE(held_by_metal(first, plan_of(1), EdgeField::right).empty());
    Edge from_right = eave;
    from_right.first = Side::right;
    CHECK(held_by_metal(work_cut(from_right, TrimRole::main, 1), plan, EdgeField::left).empty());
}

TEST_CASE("A cleat holds no end, and a fascia wrap holds that there is one") {
    Edge eave;
    eave.wrap = true;
    const EdgeWork cleat = work_cut(eave, TrimRole::cleat, 1);
    CHECK(held_by_metal(cleat, plan_of(2), EdgeField::left).empty());
    CHECK_FALSE(held_by_metal(cleat, plan_of(2), EdgeField::first).empty());
    const EdgeWork wrap = work_cut(eave, TrimRole::wrap, 1);
    CHECK_FALSE(held_by_metal(wrap, plan_of(2), EdgeField::wrap).empty());
    CHECK(held_by_metal(wrap, plan_of(2), EdgeField::trim).empty());
}

TEST_CASE("A hip's corner is in the bend of every piece") {
    const EdgeWork hip = work_cut(edge_of_kind(EdgeKind::hip), TrimRole::main, 2);
    CHECK_FALSE(held_by_metal(hip, plan_of(3), EdgeField::corner_left).empty());
}

}  // namespace
}  // namespace hemline
