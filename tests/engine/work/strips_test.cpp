// Hook strips, zees and channels: which edge has one, how it is cut and how it is held.
#include "engine/work/strips.h"

#include "eave_job.h"

using namespace hemline_test;

namespace {

Edge of(EdgeKind kind, const std::string& trim = "") {
    Edge edge = eave("A", facts_of(kind).left_usual, facts_of(kind).right_usual);
    edge.kind = kind;
    edge.trim = trim;
    return edge;
}

Strips strips(EdgeKind kind, const std::string& trim, Length length) {
    static const Catalogue catalogue = own_catalogue();
    return strips_of(of(kind, trim), length, catalogue, {});
}

}  // namespace

// Base 1 1/2, riser 3/16, lip 3/4: common practice, no published source.
TEST_CASE("an eave's hook strip is cut from whole sticks and a rest, 2 7/16 in wide") {
    const Strips eave = strips(EdgeKind::eave, "", feet(46));
    REQUIRE(eave.strip != nullptr);
    CHECK(eave.strip->id == "hook_strip");
    CHECK(eave.full == 4);
    CHECK(eave.rests == 1);
    CHECK(eave.rest == feet(6));
    CHECK(eave.girth == sixteenths(39));
    CHECK(eave.fasteners == 70);  // every 8 in of 552, and one more
    CHECK(strip_words(eave) ==
          "4 of 10 ft, 1 of 6 ft: base 1 1/2 in, riser 3/16 in, lip 3/4 in, stretch-out "
          "2 7/16 in");
    CHECK(strips(EdgeKind::eave, "", feet(40)).rests == 0);
}

// 4 in at the head and 1 in more each 8 ft (historic federal specification): 24 ft down the half is
// 3 1/2 in; screwed strips stand 4 1/2 in out (common practice, no published source).
TEST_CASE("a valley has two strips, half the open valley from its center") {
    const Strips usual = strips(EdgeKind::valley, "", feet(24));
    CHECK(usual.lines == 2);
    CHECK(usual.full == 4);
    CHECK(usual.rests == 2);
    CHECK(usual.from_centre == sixteenths(72));
    CHECK(usual.problem.empty());
    // 48 ft: (4 + 6)/2.
    CHECK(strips(EdgeKind::valley, "", feet(48)).from_centre == inches(5));
    // 64 ft: 6 in; of a leg of 11 in 5 stay under the panels.
    CHECK(strips(EdgeKind::valley, "", feet(64)).problem.english().find("leave 5 in") !=
          std::string::npos);
}

TEST_CASE("gable and sidewall over the panels have zee and channel, a gable under them nothing") {
    CHECK(strips(EdgeKind::gable, "gable_channel", feet(9)).strip->id == "zee");
    CHECK(strips(EdgeKind::gable, "gable_channel", feet(9)).girth == sixteenths(56));
    CHECK(strips(EdgeKind::sidewall, "sidewall_channel", feet(9)).strip->id == "channel");
    CHECK(strips(EdgeKind::sidewall, "sidewall", feet(9)).strip->id == "hook_strip");
    CHECK(strips(EdgeKind::gable, "gable", feet(9)).strip == nullptr);
    CHECK(strips(EdgeKind::ridge, "", feet(9)).strip == nullptr);
    CHECK(strips(EdgeKind::eave, "", Length()).strip == nullptr);
}

TEST_CASE("a zee is as high as the job's seams, and so is the flashing over a channel") {
    Catalogue catalogue = own_catalogue();
    catalogue.put_seam_height(inches(2));
    CHECK(girth(*catalogue.strip_for(of(EdgeKind::gable, "gable_channel"))) == inches(4));
    CHECK(leg_width(*catalogue.find("sidewall_channel"), LegName::kick) == inches(2));
    CHECK(leg_width(*catalogue.find("sidewall"), LegName::flange) == inches(5));
}
