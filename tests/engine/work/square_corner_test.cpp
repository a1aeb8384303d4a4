// The corner of two square-cut fascias: their faces meet along a line that leans in.
#include <cmath>

#include "engine/roof/cut_offset.h"
#include "engine/trim/meeting.h"
#include "engine/words/result.h"
#include "engine/work/mark_deeds.h"
#include "every_card.h"

using namespace hemline_test;

namespace {

constexpr double mm_in_inch = 25.4;
constexpr double grid_mm = 0.8;  // as near as a line on 1/16 in brings it

Edge square_cut(const char* id, int rise, Side first, End left = End::corner_out,
                End right = End::corner_out) {
    Edge edge = eave(id, left, right, first);
    edge.pitch = rise_in_12(rise);
    edge.fascia = Fascia::square_cut;
    edge.trim = "eave_two_part";
    return edge;
}

struct SquarePiece {
    Card card;
    FlatPattern pattern;
};

SquarePiece square_piece(const Edge& edge, TrimRole role = TrimRole::main) {
    Job job;
    job.edges.push_back(read_twice(edge, feet(8)));
    job.edges.back().edge.wrap = role == TrimRole::wrap;
    const Catalogue catalogue = own_catalogue();
    const auto card = make_card(job, make_plan(job, catalogue), catalogue, edge.id, role, 1);
    REQUIRE(card.ok());
    const auto pattern = piece_pattern(*card, job.edges.back().edge, sections_of_assets());
    REQUIRE_MESSAGE(pattern.ok(), (pattern ? Text() : pattern.problem().what));
    return {*card, *pattern};
}

const Mark* mark_at_end(const Card& card, MarkKind kind, Side side) {
    for (const Mark& mark : card.marks) {
        if (mark.kind == kind && mark.toward == side) {
            return &mark;
        }
    }
    return nullptr;
}

}  // namespace

// Plane geometry: faces square to roofs of θ lean in by face·sinθ; their normals make
// acos(sin²θ) at a square corner: 78.46° at 6 in 12, and 3 1/2 in · sin 26.565° = 1.565 in.
TEST_CASE("two square-cut faces at 6 in 12 meet at 78.5°, 1.57 in back at the foot of 3 1/2 in") {
    const RoofCorner corner{rise_in_12(6), rise_in_12(6), square_out};
    CHECK(square_faces_bend_degrees(corner) == doctest::Approx(78.463).epsilon(1e-4));
    CHECK(static_cast<double>(square_face_setback(sixteenths(56), corner)->nm()) / 1e6 /
              mm_in_inch ==
          doctest::Approx(1.5652).epsilon(1e-4));
    // At an inside corner as far past the line; at a flat roof nothing leans.
    CHECK(square_face_setback(sixteenths(56), {rise_in_12(6), rise_in_12(6), square_in})->nm() ==
          -square_face_setback(sixteenths(56), corner)->nm());
    CHECK(square_faces_bend_degrees({rise_in_12(0), rise_in_12(0), square_out}) ==
          doctest::Approx(90));
    CHECK_FALSE(square_face_setback(inches(4), {rise_in_12(6), rise_in_12(6), half_turn}).ok());
}

TEST_CASE("the tab of a square-cut corner lies flat on the neighbour's face, clear of its flange") {
    for (int rise = 1; rise <= 12; ++rise) {
        CAPTURE(rise);
        const SquarePiece left = square_piece(square_cut("A", rise, Side::right));
        const SquarePiece right = square_piece(square_cut("B", rise, Side::right));
        const Joint joint{rise_in_12(rise), square_out, inches(1), {}, sixteenths(1)};
        const Meeting meeting = corner_meeting(left.pattern, right.pattern, joint);
        CHECK(meeting.faults.empty());
        CHECK(meeting.gap_mm < 1.6);
        CHECK(tab_faults(left.pattern).empty());
        const Face *tab = nullptr, *flange = nullptr, *face = nullptr;
        for (const Face& one : meeting.left) {
            tab = one.is_tab && one.side == Side::right ? &one : tab;
        }
        for (const Face& one : meeting.right) {
            const LegName name = right.pattern.legs.names[one.leg];
            flange = !one.is_tab && name == LegName::flange ? &one : flange;
            face = !one.is_tab && name == LegName::face ? &one : face;
        }
        REQUIRE((tab != nullptr && flange != nullptr && face != nullptr));
        CHECK_FALSE(goes_through(*tab, *flange, grid_mm));
        // No part of the tab stands above the neighbor's eave line.
        for (const Space& corner : tab->corners) {
            CHECK(corner.z < grid_mm);
        }
        // The two faces end along the same line: the left one's lower corner is on the right one.
        for (const Space& corner : meeting.left[1].corners) {
            if (corner.x > meeting.left[1].corners[0].x + 200) {
                CHECK(farthest_mm(*face, {corner}) < 1.6);
            }
        }
    }
}

TEST_CASE("the card has the slanted line, and says what is cut along it") {
    const SquarePiece tabbed = square_piece(square_cut("A", 6, Side::left));
    // 4 1/2 in of face: 4.5·0.4472 = 2.012, on the mark 2.
    CHECK(mark_at_end(tabbed.card, MarkKind::corner_top, Side::left)->at == inches(1));
    CHECK(mark_at_end(tabbed.card, MarkKind::corner_low, Side::left)->at == inches(3));
    const Mark& fold = *mark_at_end(tabbed.card, MarkKind::tab_fold, Side::left);
    CHECK(fold.at == inches(3));
    CHECK(deed_of(tabbed.card, fold, tabbed.pattern).english() ==
          "tab folded 78.5° round the corner");
    CHECK(deed_of(tabbed.card, *mark_at_end(tabbed.card, MarkKind::tab_end, Side::left),
                  tabbed.pattern)
              .english(Marks::sixteenth)
              .find("cut from the corner line to 1 1/8 in down at its end") != std::string::npos);
    // The other end carries no tab: its face stops along the line.
    const Card& card = tabbed.card;
    CHECK(mark_at_end(card, MarkKind::corner_top, Side::right)->at == card.cut);
    CHECK(mark_at_end(card, MarkKind::corner_low, Side::right)->at == card.cut - inches(2));
    CHECK(is_cut_at(card, *mark_at_end(card, MarkKind::corner_low, Side::right)));
    Edge plumb = square_cut("A", 6, Side::left);
    plumb.fascia = Fascia::plumb;
    CHECK(mark_at_end(square_piece(plumb).card, MarkKind::corner_low, Side::left) == nullptr);
}

TEST_CASE("every square-cut corner, inside or outside, trim or wrap, makes a pattern") {
    for (const End left : {End::corner_out, End::corner_in}) {
        for (const End right : {End::corner_out, End::corner_in}) {
            for (const Side first : {Side::left, Side::right}) {
                for (const int rise : {1, 6, 12}) {
                    for (const TrimRole role : {TrimRole::main, TrimRole::wrap}) {
                        CAPTURE(rise);
                        const SquarePiece piece =
                            square_piece(square_cut("A", rise, first, left, right), role);
                        CHECK(tab_faults(piece.pattern).empty());
                    }
                }
            }
        }
    }
}

TEST_CASE("a square-cut high eave's corner is refused in words") {
    Job job;
    Edge edge = square_cut("A", 6, Side::left);
    edge.kind = EdgeKind::high_eave;
    edge.trim.clear();
    job.edges.push_back(read_twice(edge, feet(8)));
    const Plan plan = make_plan(job, own_catalogue());
    CHECK(std::any_of(plan.problems.begin(), plan.problems.end(), [](const PlanProblem& problem) {
        return problem.field == "fascia" && problem.severity == Severity::problem;
    }));
}
