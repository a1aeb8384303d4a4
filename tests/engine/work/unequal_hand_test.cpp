// Hips and valleys between roofs of different pitch have a hand: which roof is this one.
#include <algorithm>

#include "engine/work/mark_deeds.h"
#include "every_card.h"

using namespace hemline_test;

namespace {

EdgeWork unequal_edge(int rise, int other_rise, EdgeKind kind = EdgeKind::valley) {
    Edge edge = eave("V", End::eave, End::ridge);
    edge.kind = kind;
    edge.pitch = rise_in_12(rise);
    edge.pitch2 = rise_in_12(other_rise);
    return read_twice(edge, feet(8));
}

struct UnequalPiece {
    Card card;
    std::vector<std::string> actions;
};

UnequalPiece unequal_piece(const EdgeWork& work) {
    Job job;
    job.edges.push_back(work);
    const Catalogue catalogue = own_catalogue();
    const Plan plan = make_plan(job, catalogue);
    const auto card = make_card(job, plan, catalogue, "V", TrimRole::main, 1);
    REQUIRE(card.ok());
    UnequalPiece piece{*card, {}};
    const std::string file = "procedures/" + std::string(word_of(work.edge.kind)) + ".csv";
    const auto procedure = read_procedure(assets_file(file)).value();
    for (const Step& step : steps_of(job.edges[0], plan, job.practice, procedure, catalogue)) {
        if (step.rule->id == hand_step) {
            piece.actions.push_back(step.action.english());
        }
    }
    return piece;
}

Length miter_of(const Card& card, MarkKind kind) {
    const auto in = [&](const Mark& mark) {
        return mark.toward == Side::left ? mark.at : card.cut - mark.at;
    };
    Length point, outer;
    for (const Mark& mark : card.marks) {
        const bool foot = (mark.toward == Side::left) == (card.edge_left == Side::left);
        point = foot && mark.kind == MarkKind::corner_point ? in(mark) : point;
        outer = foot && mark.kind == kind ? in(mark) : outer;
    }
    return absolute(outer - point);
}

}  // namespace

// 11 in legs at 4 and 9 in 12, a square inside corner: w·cosθ1·tanθ1/tanθ2, worked out by hand:
// 11·0.9487·0.4444 = 4.638 and 11·0.8·2.25 = 19.8.
TEST_CASE("an unequal valley asks which side is this roof, and its card says both pitches") {
    for (const EdgeKind kind : {EdgeKind::valley, EdgeKind::hip}) {
        const UnequalPiece piece = unequal_piece(unequal_edge(4, 9, kind));
        CHECK(piece.actions ==
              std::vector<std::string>{"Stand at the foot, look up; say which side is 4/12."});
        CHECK(leg_toward_you(piece.card).english() ==
              "leg on the 4/12 roof away, leg on the 9/12 roof toward you");
        CHECK(leg_called(piece.card, LegName::flange).english() == "leg on the 4/12 roof");
        CHECK(leg_called(piece.card, LegName::face).english() == "leg on the 9/12 roof");
    }
    const UnequalPiece piece = unequal_piece(unequal_edge(4, 9));
    CHECK(miter_of(piece.card, MarkKind::mitre_near) == sixteenths(74));           // 4 5/8
    CHECK(miter_of(piece.card, MarkKind::mitre_far) == sixteenths(19 * 16 + 13));  // 19 13/16
    // A hip's 7 in legs: 2.951 and 12.6.
    const UnequalPiece hip = unequal_piece(unequal_edge(4, 9, EdgeKind::hip));
    CHECK(miter_of(hip.card, MarkKind::mitre_near) == sixteenths(47));
    CHECK(miter_of(hip.card, MarkKind::mitre_far) == sixteenths(12 * 16 + 10));
}

TEST_CASE("with this roof at the right the metal is the other hand; alike roofs ask nothing") {
    EdgeWork work = unequal_edge(4, 9);
    const UnequalPiece left = unequal_piece(work);
    put_foot_right(work);
    const UnequalPiece right = unequal_piece(work);
    CHECK(left.card.edge_left == Side::left);
    CHECK(right.card.edge_left == Side::right);
    CHECK(miter_of(left.card, MarkKind::mitre_near) == miter_of(right.card, MarkKind::mitre_near));
    CHECK(unequal_piece(unequal_edge(6, 6)).actions.empty());
    CHECK(leg_toward_you(unequal_piece(unequal_edge(6, 6)).card).english() ==
          "leg on this roof away, leg on the other roof toward you");
}
