#include "engine/trim/end_metal.h"

#include <doctest/doctest.h>

#include "engine/roof/edge_shape.h"
#include "engine/words/result.h"
#include "tests/engine/assets.h"

using namespace hemline;

namespace {

Trim trim(const char* id) {
    const Catalogue catalogue = Catalogue::read(asset("catalogue/trims.csv")).value();
    REQUIRE(catalogue.find(id) != nullptr);
    return *catalogue.find(id);
}

Edge edge(EdgeKind kind, End left, End right, int rise) {
    Edge edge;
    edge.kind = kind;
    edge.left = left;
    edge.right = right;
    edge.pitch = rise_in_12(rise);
    return edge;
}

EndMetal left_of(const Edge& edge, const char* id) {
    return end_metal(edge, Side::left, trim(id), {});
}
EndMetal right_of(const Edge& edge, const char* id) {
    return end_metal(edge, Side::right, trim(id), {});
}

}  // namespace

// Tabs, folds and turn-ups: common practice, no published source. What geometry adds is computed
// beside each case from the formulas of docs/geometry.md.

TEST_CASE(
    "a transition's corner tab is folded on the side fitted first, and the other end is square") {
    Edge step = edge(EdgeKind::transition, End::corner_out, End::corner_out, 5);
    CHECK(left_of(step, "transition").work == EndWork::corner_tab);
    CHECK(right_of(step, "transition").work == EndWork::square);
    step.first = Side::right;
    CHECK(left_of(step, "transition").work == EndWork::square);
    CHECK(right_of(step, "transition").work == EndWork::corner_tab);
}

// Published practice: 3 to 4 in a side; here as wide as the sidewall's deck leg, 5 in. The rest
// common practice, no published source.
TEST_CASE("at a wall's corner the headwall runs past, and the sidewall's foot onto it") {
    for (const Side first : {Side::left, Side::right}) {
        Edge low = edge(EdgeKind::headwall, End::corner_out, End::corner_in, 5);
        low.first = first;
        CHECK(left_of(low, "headwall").work == EndWork::apron_corner);
        CHECK(left_of(low, "headwall").added() == inches(5));
        CHECK(left_of(low, "headwall").wrap == inches(2));
        CHECK(right_of(low, "headwall").work == EndWork::turn_up);
    }
    const Edge side = edge(EdgeKind::sidewall, End::corner_out, End::corner_out, 6);
    CHECK(left_of(side, "sidewall").work == EndWork::wall_foot);
    CHECK(left_of(side, "sidewall").added() == inches(4));
    CHECK(left_of(side, "sidewall").plumb == inches(4));  // 8 in · 6/12
    CHECK(right_of(side, "sidewall").work == EndWork::square);
    CHECK(right_of(side, "sidewall").added() == Length());
}

TEST_CASE("a gable's foot has its plumb offset and a return tab, its peak a fold") {
    // 6 in at 4 in 12: 6·4/12 = 2.00 in.
    Edge gable = edge(EdgeKind::gable, End::eave, End::ridge, 4);
    gable.face = inches(6);
    const EndMetal foot = left_of(gable, "gable");
    CHECK(foot.work == EndWork::eave_return);
    CHECK(foot.plumb == inches(2));
    CHECK(foot.added() == inches(3));
    const EndMetal peak = right_of(gable, "gable");
    CHECK(peak.work == EndWork::peak);
    CHECK(peak.plumb == inches(2));
    CHECK(peak.added() == inches(1));
    gable.fascia = Fascia::square_cut;
    CHECK(left_of(gable, "gable").added() == inches(1));
    CHECK(right_of(gable, "gable").plumb == inches(2));
}

TEST_CASE("an outside corner is mitred by its angle, and an inside one runs past by as much") {
    // 4 in at 6:12: 4·cos 26.57° = 3.578, on the mark 3 9/16; at 135°: 3.578·cot 67.5° = 1.482,
    // on the mark 1 1/2.
    Edge eave = edge(EdgeKind::eave, End::corner_out, End::corner_in, 6);
    CHECK(left_of(eave, "eave_rolled").near_back == sixteenths(3 * 16 + 9));
    CHECK(left_of(eave, "eave_rolled").added() == inches(1));
    CHECK(right_of(eave, "eave_rolled").near_back == -sixteenths(3 * 16 + 9));
    CHECK(right_of(eave, "eave_rolled").added() == sixteenths(3 * 16 + 9));
    eave.corner_left = degrees(135);
    eave.corner_right = degrees(225);
    CHECK(left_of(eave, "eave_rolled").near_back == sixteenths(24));
    CHECK(right_of(eave, "eave_rolled").added() == sixteenths(24));
    eave.first = Side::right;
    CHECK(left_of(eave, "eave_rolled").added() == Length());
    CHECK(right_of(eave, "eave_rolled").added() == inches(1) + sixteenths(24));
}

TEST_CASE("a wrap's faces butt at an inside corner, and a cleat adds nothing anywhere") {
    const Edge eave = edge(EdgeKind::eave, End::corner_in, End::gable, 6);
    CHECK(left_of(eave, "fascia_wrap").added() == Length());
    CHECK(right_of(eave, "fascia_wrap").added() == inches(1));
    CHECK(right_of(eave, "cleat").added() == Length());
}

TEST_CASE("a hip's foot is cut back along both eaves from the corner point") {
    // Framing square: 12 in at 8:12 is the jack's side cut, 9.98 in; 10 in on the mark.
    Edge hip = edge(EdgeKind::hip, End::eave, End::ridge, 8);
    hip.flange = hip.face = inches(12);
    const EndMetal foot = left_of(hip, "hip_cap");
    CHECK(foot.work == EndWork::eave_foot);
    CHECK(foot.near_back == inches(10));
    CHECK(foot.far_back == inches(10));
    CHECK(foot.added() == inches(1));
    CHECK(right_of(hip, "hip_cap").work == EndWork::folded);
}

TEST_CASE("the two legs of a hip between unequal pitches are cut back differently") {
    // Square corner, w·cosθ1·tanθ1/tanθ2 = w·sinθ1/tanθ2. 7 in, 8 and 10 in 12: sin 33.69° =
    // 0.5547, 7·0.5547/0.8333 = 4.6595, on the mark 4 11/16; sin 39.81° = 0.6402, 7·0.6402/0.6667
    // = 6.722, on the mark 6 3/4.
    Edge hip = edge(EdgeKind::hip, End::eave, End::ridge, 8);
    hip.pitch2 = rise_in_12(10);
    CHECK(left_of(hip, "hip_cap").near_back == sixteenths(4 * 16 + 11));
    CHECK(left_of(hip, "hip_cap").far_back == sixteenths(6 * 16 + 12));
}

TEST_CASE("a valley's legs run past its corner at the foot and stop short at the ridge") {
    // 11 in at 5:12: 11·12/13 = 10.154, on the mark 10 1/8.
    const Edge valley = edge(EdgeKind::valley, End::eave, End::ridge, 5);
    const Length run_past = sixteenths(10 * 16 + 2);
    CHECK(left_of(valley, "valley").near_back == -run_past);
    CHECK(left_of(valley, "valley").added() == inches(1) + run_past);
    CHECK(right_of(valley, "valley").near_back == run_past);
    CHECK(right_of(valley, "valley").added() == inches(1));
    Edge outside = valley;  // its corner given from outside the building
    outside.corner_left = degrees(90);
    CHECK(left_of(outside, "valley").added() == inches(1) + run_past);
}

TEST_CASE("a sidewall's foot kicks out past the eave and its top turns up at a wall") {
    const Edge sidewall = edge(EdgeKind::sidewall, End::eave, End::wall, 5);
    CHECK(left_of(sidewall, "sidewall").work == EndWork::kick_out);
    CHECK(left_of(sidewall, "sidewall").added() == inches(4));
    CHECK(right_of(sidewall, "sidewall").work == EndWork::turn_up);
    CHECK(right_of(sidewall, "sidewall").added() == inches(1));
}

TEST_CASE("ridge, headwall and transition fold down over gables and turn up at walls") {
    const struct {
        EdgeKind kind;
        const char* id;
    } rows[] = {{EdgeKind::ridge, "ridge_cap"},
                {EdgeKind::headwall, "headwall"},
                {EdgeKind::transition, "transition"}};
    for (const auto& row : rows) {
        CAPTURE(row.id);
        const Edge level = edge(row.kind, End::gable, End::wall, 5);
        CHECK(left_of(level, row.id).work == EndWork::folded);
        // The height of a seam and 1/2 in: common practice, no published source.
        CHECK(left_of(level, row.id).added() == inches(2));
        CHECK(right_of(level, row.id).work == EndWork::turn_up);
        CHECK(left_of(edge(row.kind, End::open, End::open, 5), row.id).added() == Length());
    }
}

TEST_CASE("a high eave's ends are tabbed round the gables as an eave's are") {
    const Edge high = edge(EdgeKind::high_eave, End::gable, End::open, 6);
    CHECK(left_of(high, "high_eave").work == EndWork::gable_tab);
    CHECK(left_of(high, "high_eave").added() == inches(1));
    CHECK(right_of(high, "high_eave").added() == Length());
}

TEST_CASE("without a pitch, or on a flat roof, geometry adds nothing and says so") {
    Edge valley = edge(EdgeKind::valley, End::eave, End::ridge, 5);
    valley.pitch.reset();
    CHECK(left_of(valley, "valley").added() == inches(1));
    CHECK(!left_of(valley, "valley").near_back);
    Edge flat = edge(EdgeKind::eave, End::corner_in, End::open, 5);
    flat.pitch2 = rise_in_12(0);
    CHECK(!left_of(flat, "eave_rolled").near_back);
}

TEST_CASE("a sloped edge is fitted from its foot whatever was stated") {
    Edge gable = edge(EdgeKind::gable, End::eave, End::ridge, 5);
    gable.first = Side::right;
    CHECK(first_fitted(gable) == Side::left);
    gable.kind = EdgeKind::ridge;
    CHECK(first_fitted(gable) == Side::right);
}
