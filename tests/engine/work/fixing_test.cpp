#include "engine/work/fixing.h"
#include "engine/trim/practice.h"

#include <rapidcheck.h>

#include <algorithm>
#include <cmath>

#include "eave_job.h"

using namespace hemline_test;

namespace {

std::vector<Length> in_inches(std::initializer_list<int> list) {
    std::vector<Length> lengths;
    for (const int i : list) {
        lengths.push_back(inches(i));
    }
    return lengths;
}

FreeEnd lapped(Length lap) { return {lap, true}; }
FreeEnd tabbed(Length tab) { return {tab, false}; }

Trim trim_of(Length flange, Length face) {
    Trim trim;
    trim.legs = {{LegName::flange, flange}, {LegName::face, face}, {LegName::hem, sixteenths(8)}};
    return trim;
}

}  // namespace

// Spacing and margins: common practice, no published source.

TEST_CASE("screws stand a margin from both ends and a spacing apart") {
    CHECK(screws_of(inches(40), {}, {}, {}) == in_inches({2, 14, 26, 38}));
}

TEST_CASE("a last gap under a quarter of the spacing is shared with the gap before it") {
    // 2, 14, 26, 28: the 26 moves to the middle of 14 and 28.
    CHECK(screws_of(inches(30), {}, {}, {}) == in_inches({2, 14, 21, 28}));
    // 2 and 2 1/16: nothing between to move.
    CHECK(screws_of(sixteenths(65), {}, {}, {}).size() == 2);
}

TEST_CASE("where there is no room for two margins one screw stands in the middle") {
    CHECK(screws_of(inches(3), {}, {}, {}) == std::vector<Length>{sixteenths(24)});
    CHECK(screws_of(inches(4), {}, {}, {}) == in_inches({2}));
    CHECK(screws_of(Length(), {}, {}, {}).empty());
}

TEST_CASE("a full stick between two 6 in laps takes ten screws, none in a lap") {
    CHECK(screws_of(inches(120), lapped(inches(6)), lapped(inches(6)), {}) ==
          in_inches({8, 20, 32, 44, 56, 68, 80, 92, 104, 112}));
}

TEST_CASE("a screw stays off a tab wider than the margin") {
    Practice practice;
    practice.tab_gable = inches(3);
    const auto screws = screws_of(inches(60), tabbed(inches(3)), lapped(inches(6)), practice);
    CHECK(screws.front() == inches(4));
    const auto both = screws_of(inches(56), tabbed(inches(3)), tabbed(inches(3)), practice);
    CHECK(both.front() == inches(4));
    CHECK(both.back() == inches(52));
}

TEST_CASE("across a lap the margin gives way so that the spacing holds") {
    Practice practice;
    practice.lap = inches(10);
    const auto screws = screws_of(inches(120), lapped(inches(10)), lapped(inches(10)), practice);
    // 12 − 10 leaves 1 in on each side of the lap.
    CHECK(screws.front() == inches(11));
    CHECK(screws.back() == inches(109));
}

TEST_CASE("however long the lap, a screw stays half an inch off its line") {
    Practice practice;
    practice.screw_spacing = inches(6);
    const auto screws = screws_of(feet(10), lapped(inches(6)), lapped(inches(6)), practice);
    REQUIRE_FALSE(screws.empty());
    CHECK(screws.front() == inches(6) + sixteenths(8));
    CHECK(screws.back() == feet(10) - inches(6) - sixteenths(8));
}

TEST_CASE("metal on two roofs is screwed along both its legs, a transition along its upper") {
    const Catalogue catalogue = own_catalogue();
    using enum LegName;
    const std::vector<LegName> both = {flange, face};
    for (const auto& [kind, legs] : {std::pair(EdgeKind::ridge, both),
                                     {EdgeKind::hip, both},
                                     {EdgeKind::valley, both},
                                     {EdgeKind::transition, {face}},
                                     {EdgeKind::eave, {flange}},
                                     {EdgeKind::headwall, {flange}},
                                     {EdgeKind::gable, {flange}}}) {
        CHECK(fastened_legs(kind, *catalogue.default_for(kind)) == legs);
    }
    CHECK(fastened_legs(EdgeKind::eave, *catalogue.find("fascia_wrap")) ==
          std::vector<LegName>{face});
    // Over the panels: the gable hangs in its hems, the sidewall is riveted to its channel.
    CHECK(fastened_legs(EdgeKind::gable, *catalogue.find("gable_channel")).empty());
    CHECK(fastened_legs(EdgeKind::sidewall, *catalogue.find("sidewall_channel")) ==
          std::vector<LegName>{kick});
}

TEST_CASE("screws keep the spacing, the laps free and the order, whatever the piece") {
    CHECK(rc::check([] {
        Practice practice;
        practice.lap = sixteenths(*rc::gen::inRange(16, 11 * 16 + 1));
        practice.screw_spacing = inches(12);
        practice.screw_margin = sixteenths(*rc::gen::inRange(8, 65));
        const bool left = *rc::gen::arbitrary<bool>();
        const bool right = *rc::gen::arbitrary<bool>();
        const Length cut = sixteenths(*rc::gen::inRange(24 * 16, 120 * 16 + 1));
        const auto end = [&](bool laps) { return laps ? lapped(practice.lap) : tabbed(Length()); };
        const auto screws = screws_of(cut, end(left), end(right), practice);
        RC_ASSERT(std::is_sorted(screws.begin(), screws.end()));
        RC_ASSERT(std::adjacent_find(screws.begin(), screws.end()) == screws.end());
        const Length from = left ? practice.lap : Length();
        const Length to = cut - (right ? practice.lap : Length());
        RC_ASSERT(screws.empty() == (to <= from));
        for (std::size_t i = 0; i < screws.size(); ++i) {
            RC_ASSERT(screws[i] >= from);
            RC_ASSERT(screws[i] <= to);
            RC_ASSERT((i == 0 || screws[i] - screws[i - 1] <= practice.screw_spacing));
        }
    }));
}

TEST_CASE("along a whole run no two neighbouring screws are further apart than the spacing") {
    CHECK(rc::check([] {
        Planned planned;
        planned.job.practice.lap = sixteenths(*rc::gen::inRange(32, 11 * 16 + 1));
        const End ends[] = {End::gable, End::corner_out, End::corner_in, End::wall, End::open};
        planned.add(eave("A", ends[*rc::gen::inRange(0, 5)], ends[*rc::gen::inRange(0, 5)]),
                    sixteenths(*rc::gen::inRange(130 * 16, 900 * 16)));
        const Run& run = planned.run();
        Length before;
        bool any = false;
        for (std::size_t i = 0; i < run.pieces.size(); ++i) {
            const PlannedPiece& piece = run.pieces[i];
            const FreeEnds ends =
                free_ends_of(run, piece, planned.job.edges[0].edge,
                             planned.trim_named("eave_rolled"), planned.job.practice);
            const Length tab = i == 0 ? ends.left.length : Length();
            for (const Length screw :
                 screws_of(piece.cut, ends.left, ends.right, planned.job.practice)) {
                const Length along = piece.begins - tab + screw;
                RC_ASSERT((!any || along - before <= planned.job.practice.screw_spacing));
                before = along;
                any = true;
            }
        }
    }));
}

// By hand: the hem is notched over the lap and 1/8 in more; a clip 2 in wide is whole in the hem.
TEST_CASE("a valley's clip stays out of the notch in the hem at a piece's underlap") {
    Planned planned;
    planned.catalogue = own_catalogue();
    planned.job.practice.lap = inches(8);
    Edge valley = eave("V", End::eave, End::ridge);
    valley.kind = EdgeKind::valley;
    const Trim& trim = *planned.catalogue.default_for(EdgeKind::valley);
    planned.job.edges.push_back(read_twice(valley, feet(24)));
    planned.add_run(valley, TrimRole::main, trim.id,
                    run_rule(valley, trim, feet(24), planned.job.practice), Style::balanced);
    const Run& run = planned.run();
    REQUIRE(run.pieces.size() == 3);
    const FreeEnds ends = free_ends_of(run, run.pieces[1], valley, trim, planned.job.practice);
    // The lower piece lies under the upper one: it is fitted first, and its upper end is underlap.
    CHECK(ends.right.metal == inches(8) + sixteenths(2) + inches(1));
    CHECK(ends.left.metal == Length());
}

// TRADE practice: two beads about the middle, 2 and 4 in from the underlap's end in a 6 in lap;
// common practice, no published source.
TEST_CASE("beads lie about the middle of the lap and inside it") {
    CHECK(bead_offsets(inches(6), {}) == in_inches({2, 4}));
    CHECK(bead_offsets(inches(8), {}) == in_inches({3, 5}));
    CHECK(bead_offsets(Length(), {}).empty());
    for (int lap = 16; lap <= 192; ++lap) {
        const auto beads = bead_offsets(sixteenths(lap), {});
        REQUIRE(beads.size() == 2);
        CHECK(beads[0] > Length());
        CHECK(beads[0] < beads[1]);
        CHECK(beads[1] < sixteenths(lap));
    }
}

// Cartridge: 10.1 US fl oz × 231/128 = 18.23 in³, round bead, volume decides: 3/16 in → 55.0 ft,
// 1/4 → 30.9 ft, 3/8 → 13.8 ft; computed from the volume of a cylinder.
TEST_CASE("a cartridge lays 55.0 ft of 3/16 in bead, 30.9 ft of 1/4 and 13.8 ft of 3/8") {
    const Planned planned = forty_six_feet();
    const struct {
        int sixteenths_wide;
        double feet_each;
    } rows[] = {{3, 55.0}, {4, 30.9}, {6, 13.8}};
    for (const auto& row : rows) {
        Practice practice;
        practice.bead_width = sixteenths(row.sixteenths_wide);
        const FixingTally tally = fixing_of(planned.plan.runs[0], planned.job.edges[0].edge,
                                            trim_of(inches(4), inches(4)), practice);
        const double feet_of_bead = static_cast<double>(tally.bead.nm()) / 304.8e6;
        // The figures are printed to a tenth of a foot.
        CHECK(std::abs(feet_of_bead / tally.cartridges - row.feet_each) <= 0.05);
    }
}

TEST_CASE("a 46 ft run of five pieces takes 49 screws and four laps of bead") {
    const Planned planned = forty_six_feet();
    const FixingTally tally = fixing_of(planned.plan.runs[0], planned.job.edges[0].edge,
                                        trim_of(inches(4), inches(5)), {});
    // Piece 1 (112 in): 2 … 98 and 104, ten; three full ones ten each; piece 5 (105 in): 8 … 92,
    // 103.
    CHECK(tally.screws == 10 + 3 * 10 + 9);
    CHECK(tally.laps == 4);
    CHECK(tally.bead == inches(4 * 2 * (4 + 5)));
}

TEST_CASE("a butted run takes no sealant") {
    Planned planned;
    const Edge edge = eave("A", End::gable, End::gable);
    planned.add_cleat(edge, feet(30));
    const FixingTally tally =
        fixing_of(planned.run(TrimRole::cleat), edge, trim_of(Length(), inches(3)), {});
    CHECK(tally.laps == 0);
    CHECK(tally.bead == Length());
    CHECK(tally.cartridges == 0);
    CHECK(tally.screws > 0);
}
