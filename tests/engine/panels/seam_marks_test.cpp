// What trims get of the seams, by hand on a gable roof, a hip roof, a hip between two pitches.
// Common practice, no published source, where it is not geometry.
#include "engine/panels/seam_marks.h"

#include <doctest/doctest.h>

#include "engine/panels/roof_panels.h"
#include "tests/engine/panels/said_planes.h"

using namespace hemline;
using namespace hemline::test;

namespace {

const LineMarks& marks_at(const std::vector<LineMarks>& all, EdgeKind kind) {
    for (const LineMarks& marks : all) {
        if (marks.kind == kind) {
            return marks;
        }
    }
    FAIL("no such line");
    return all.front();
}

}  // namespace

TEST_CASE("Seams are marked along eave and ridge in one reading from the eave's left end") {
    const std::vector<LineMarks> gable = seam_marks(laid(said_plane(gable_roof(480, 30))));
    CHECK(gable.size() == 2);
    for (const EdgeKind kind : {EdgeKind::eave, EdgeKind::ridge}) {
        const LineMarks& marks = marks_at(gable, kind);
        CHECK(marks.begins == Length());
        CHECK(marks.ends == inches(480));
        REQUIRE(marks.seams.size() == 29);
        CHECK(marks.seams[0] == inches(16));
        CHECK(marks.seams[4] == inches(80));
    }
    // A hip roof's ridge from 144 to 336 in; a seam lies on either hip's top.
    const LineMarks ridge =
        marks_at(seam_marks(laid(said_plane(hip_roof(480, 24)))), EdgeKind::ridge);
    CHECK(ridge.begins == inches(144));
    CHECK(ridge.ends == inches(336));
    CHECK(ridge.seams.size() == 11);
    CHECK(ridge.seams.front() == inches(160));
}

TEST_CASE("The ends of a ridge that lies aside of its eave are where it lies") {
    DeckPlane plane = said_plane(gable_roof(492, 30));
    plane.lean = sixteenths(12);
    const std::vector<LineMarks> all = seam_marks(laid(plane));
    CHECK(marks_at(all, EdgeKind::ridge).begins == sixteenths(12));
    CHECK(marks_at(all, EdgeKind::ridge).ends == inches(492) + sixteenths(12));
    CHECK(marks_at(all, EdgeKind::eave).begins == Length());
    CHECK(marks_at(all, EdgeKind::ridge).seams == marks_at(all, EdgeKind::eave).seams);
}

TEST_CASE("A lap nearer than 2 in to a seam is named, not one that is 2 in off") {
    const std::vector<Length> seams = {inches(16), inches(32), inches(112), inches(128)};
    const std::vector<Length> laps = {inches(114), inches(113), inches(30), inches(24), inches(16)};
    CHECK(laps_on_seams(laps, seams, Practice().seam_off) == std::vector<std::size_t>{1, 4});
    CHECK(laps_on_seams(laps, {}, inches(2)).empty());
}

TEST_CASE("Screws of a cap: two a pan, 4 and 12 in from a seam, none within an inch of one") {
    const PanelLayout layout = laid(said_plane(gable_roof(480, 30)));
    const std::vector<CapScrews> all = cap_screws(layout, Practice());
    REQUIRE(all.size() == 1);
    REQUIRE(all[0].along.size() == 60);
    // The end pan lies from 1/4 to 16 in: a quarter and three quarters of 15 3/4 in.
    CHECK(all[0].along[0] == sixteenths(67));
    CHECK(all[0].along[1] == sixteenths(193));
    CHECK(all[0].along[2] == inches(20));
    CHECK(all[0].along[3] == inches(28));
    for (const Length screw : all[0].along) {
        for (const LaidSeam& seam : layout.seams) {
            CHECK(absolute(screw - seam.at) >= inches(1));
        }
    }
    // Along a hip at 45°, 6 in 12: 1.5 times that, from its foot on either side.
    const PanelLayout hip = laid(said_plane(hip_roof(480, 24)));
    int hips = 0;
    for (const CapScrews& screws : cap_screws(hip, Practice())) {
        if (screws.along.size() == 18) {
            CHECK(screws.along[0] == inches(6));
            CHECK(screws.along[1] == inches(18));
            CHECK(screws.along[17] == inches(18 + 8 * 24));
            ++hips;
        }
    }
    CHECK(hips == 2);
    // 488 in: 12 in of the first pan lie under either hip, 4 in under its head; a quarter of 12 is
    // 4 1/2 in along it from the foot.
    hips = 0;
    for (const CapScrews& screws : cap_screws(laid(said_plane(hip_roof(488, 24))), Practice())) {
        if (screws.along.size() == 20) {
            CHECK(screws.along[0] == sixteenths(72));
            ++hips;
        }
    }
    CHECK(hips == 2);
}

TEST_CASE("A 20 ft hip between 8 in 12 and 10 in 12 takes 9 and 11 closures, from its pans") {
    // 28.875 and 23.100 in apart along it, so 132.99 in of the one eave and 166.24 of the other.
    std::vector<RoofBody> house = hip_roof(1200, 332.47 / 12);
    house[0].sides[0].pitch = house[0].sides[2].pitch = rise_in_12(8);
    house[0].sides[1].pitch = house[0].sides[3].pitch = rise_in_12(10);
    const Result<Roof> roof = work_out_roof(house, Tape());
    REQUIRE(roof.ok());
    std::vector<PlaneAsked> planes;
    for (const BodyPlane& plane : roof->planes) {
        planes.push_back({deck_plane(*roof, house, plane), {}, {}});
    }
    const auto layouts = lay_roof(planes);
    REQUIRE(layouts.ok());
    int hips = 0;
    for (const BodyEdge& edge : roof->edges) {
        if (edge.kind == EdgeKind::hip) {
            CHECK(in(nearest_nm(edge.length)) == doctest::Approx(240).epsilon(1e-3));
            const PanClosures both = closures_at(*layouts, edge.id);
            CHECK(both.count == 20);
            std::int64_t one_by_one = 0;
            for (const PanelLayout& layout : *layouts) {
                for (const PanClosures& closures : layout.closures) {
                    if (closures.edge == edge.id) {
                        CHECK((closures.count == 9 || closures.count == 11));
                        one_by_one += closures.count;
                    }
                }
            }
            CHECK(one_by_one == 20);
            ++hips;
        }
    }
    CHECK(hips == 4);
}
