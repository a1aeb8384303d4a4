// Planes laid out by hand: a gable roof, a hip roof (jack difference by the framing square's table,
// 17.89 in for 16 in at 6 in 12), a plane between wall and gable with a pipe, a dormer. What is not
// geometry is common practice, no published source.
#include "engine/panels/panel_layout.h"

#include <doctest/doctest.h>

#include <cmath>
#include <map>

#include "tests/engine/panels/said_planes.h"

using namespace hemline;
using namespace hemline::test;

namespace {

std::map<PanKind, int> kinds_in(const PanelLayout& layout) {
    std::map<PanKind, int> kinds;
    for (const LaidPan& pan : layout.pans) {
        ++kinds[pan.kind];
    }
    return kinds;
}

Length sixteenths_of(double inches) { return sixteenths(std::llround(inches * 16)); }

const PanClosures& closures_at(const PanelLayout& layout, EdgeKind kind) {
    for (const DeckBound& bound : layout.plane.bounds) {
        for (const PanClosures& closures : layout.closures) {
            if (bound.kind == kind && closures.edge == bound.edge) {
                return closures;
            }
        }
    }
    FAIL("no closures");
    return layout.closures.front();
}

}  // namespace

TEST_CASE("A gable roof: 28 whole pans between equal ends, 16 ft 11 3/4 in, 9 clips a seam") {
    const PanelLayout layout = laid(said_plane(gable_roof(480, 30)));
    CHECK(layout.frame.right.at - layout.frame.left.at == sixteenths_of(479.5));
    CHECK(in(nearest_nm(layout.plane.top)) == doctest::Approx(201.246).epsilon(1e-5));
    REQUIRE(layout.pans.size() == 30);
    CHECK(kinds_in(layout) == std::map<PanKind, int>{{PanKind::full, 28}, {PanKind::end, 2}});
    for (const LaidPan& pan : layout.pans) {
        const bool end = pan.number == 1 || pan.number == 30;
        CHECK(pan.width == (end ? sixteenths_of(15.75) : inches(16)));
        CHECK(in(pan.exact) == doctest::Approx(203.746).epsilon(1e-5));
        CHECK(pan.length == sixteenths_of(203.75));
        CHECK(pan.blank.has_value() == end);
    }
    CHECK(layout.pans[0].blank == sixteenths_of(17.25));
    CHECK(layout.pans[29].blank == sixteenths_of(17.25));
    REQUIRE(layout.seams.size() == 29);
    CHECK(layout.seams[0].at == inches(16));
    CHECK(layout.seams[4].at == inches(80));
    for (const LaidSeam& seam : layout.seams) {
        CHECK(seam.clips.size() == 9);
    }
    CHECK(layout.shift == Length());
    CHECK(layout.doubts.empty());
    CHECK(layout.pairs.empty());
    REQUIRE(layout.closures.size() == 1);
    CHECK(layout.closures[0].count == 30);
    CHECK(layout.closures[0].blank == inches(17));
}

TEST_CASE("A hip roof: nine cut pans a side, their long sides, twelve full ones") {
    const PanelLayout layout = laid(said_plane(hip_roof(480, 24)));
    REQUIRE(layout.pans.size() == 30);
    CHECK(kinds_in(layout) == std::map<PanKind, int>{{PanKind::full, 12}, {PanKind::cut, 18}});
    CHECK(in(nearest_nm(layout.plane.top)) == doctest::Approx(160.997).epsilon(1e-5));
    const std::map<int, std::pair<double, double>> to_order = {{1, {20.6385, 20.75}},
                                                               {2, {38.5271, 38.75}},
                                                               {3, {56.4156, 56.5}},
                                                               {9, {163.7469, 163.75}},
                                                               {10, {163.4969, 163.5}}};
    for (const auto& [number, length] : to_order) {
        for (const int pan : {number, 31 - number}) {
            const LaidPan& one = layout.pans[static_cast<std::size_t>(pan) - 1];
            CHECK(in(one.exact) == doctest::Approx(length.first).epsilon(1e-5));
            CHECK(one.length == sixteenths_of(length.second));
        }
    }
    CHECK(in(layout.pans[0].top.second) == doctest::Approx(17.8885).epsilon(1e-5));
    CHECK(layout.pans[0].top.first == Length());
    CHECK(layout.pans[29].top.second == Length());
    CHECK(layout.pans[0].foot == std::pair(Length(), Length()));
    Length metal;
    for (const LaidPan& pan : layout.pans) {
        metal += pan.length;
        CHECK_FALSE(pan.blank.has_value());
    }
    CHECK(in(metal) / 12 == doctest::Approx(301.958).epsilon(1e-5));
    // 15 1/2 in clear, 1.5 times that along the hip, two ears of 3/4 in.
    CHECK(closures_at(layout, EdgeKind::hip).count == 9);
    CHECK(closures_at(layout, EdgeKind::hip).blank == sixteenths_of(24.75));
    CHECK(closures_at(layout, EdgeKind::ridge).count == 12);
}

TEST_CASE("A hip between 8 in 12 and 10 in 12: pans by their own spacing along it") {
    // 28.875 and 23.100 in apart: 9 and 11 on 20 ft (hip_test.cpp has the hip's angles).
    std::vector<RoofBody> house = hip_roof(1200, 40);
    house[0].sides[0].pitch = house[0].sides[2].pitch = rise_in_12(8);
    house[0].sides[1].pitch = house[0].sides[3].pitch = rise_in_12(10);
    for (const auto& [eave, apart] : {std::pair("A", 28.875), {"B", 23.100}}) {
        const PanelLayout layout = laid(said_plane(house, eave));
        const PanClosures& closures = closures_at(layout, EdgeKind::hip);
        CHECK(in(closures.blank) == doctest::Approx(apart * 15.5 / 16 + 1.5).epsilon(0.003));
    }
}

TEST_CASE("Between wall and gable a pipe moves the seams 4 9/16 in, and the narrow end is said") {
    const DeckPlane plane = said_plane(gable_roof(150.375, 30, SideKind::gable, SideKind::wall));
    const PanelLayout balanced = laid(plane);
    REQUIRE(balanced.pans.size() == 10);
    CHECK(balanced.pans[0].width == sixteenths_of(10.9375));
    CHECK(balanced.pans[9].width == sixteenths_of(10.9375));
    CHECK(balanced.seams[2].at == sixteenths_of(43.1875));
    CHECK(balanced.doubts.empty());
    const std::vector<Penetration> pipe = {
        {Penetration::Kind::pipe, inches(42), inches(60), inches(9)}};
    const PanelLayout layout = laid(plane, PanelJob(), pipe);
    CHECK(layout.shift == sixteenths_of(4.5625));
    CHECK(layout.pans[0].width == sixteenths_of(15.5));
    CHECK(layout.pans[9].width == sixteenths_of(6.375));
    REQUIRE(layout.doubts.size() == 1);
    CHECK(layout.doubts[0].pan == 10);
    CHECK(layout.doubts[0].problem.what.english() ==
          "Pan 10 is 6 3/8 in wide, less than half a pan: it shows.");
}

TEST_CASE("Two pipes that no shift clears: which conflict stays, and what one pan more would do") {
    // 25 ft: W 299 1/2 in, rest 11 1/2; one pan more has ends of 5 3/4 in.
    const DeckPlane plane = said_plane(gable_roof(300, 30));
    const PanelLayout layout = laid(plane, PanelJob(),
                                    {{Penetration::Kind::pipe, inches(62), inches(60), inches(9)},
                                     {Penetration::Kind::pipe, inches(70), inches(60), inches(9)}});
    REQUIRE_FALSE(layout.doubts.empty());
    CHECK(layout.doubts[0].problem.what.english().find("A seam lies") == 0);
    CHECK(layout.doubts[0].problem.mend.english() == "Move what is in the way, or build a curb.");
    // A seam lies at 46, and the end pans of 13 3/4 in leave 2 1/4 in to shift; 7 3/4 in is asked.
    const PanelLayout other =
        laid(plane, PanelJob(), {{Penetration::Kind::pipe, inches(46), inches(60), inches(13)}});
    REQUIRE(other.doubts.size() == 1);
    CHECK(other.doubts[0].problem.mend.english() ==
          "One pan more keeps off everything: ends of 5 3/4 in and 5 3/4 in. Else build a curb.");
}

TEST_CASE("A dormer lies across pans: they are in two pieces, and no seam is near its walls") {
    // Walls at 188 and 284 in, the valleys' top at 236, all on a seam of 12 + 16 i.
    const PanelLayout layout = laid(said_plane(dormer_roof(456, 188)));
    CHECK(layout.shift == inches(2));
    std::vector<int> in_pieces;
    for (const LaidPan& pan : layout.pans) {
        if (pan.piece == 2) {
            in_pieces.push_back(pan.number);
        }
    }
    CHECK(in_pieces == std::vector<int>{13, 14, 15, 16, 17});
    // Beside the walls a corner is cut out of the pan.
    CHECK(layout.pans[11].kind == PanKind::cut);
    CHECK(layout.pans[11].width == inches(16));
    for (const LaidPan& pan : layout.pans) {
        if (pan.piece == 1) {
            // From the eave to the front, 4 ft in plan at 6 in 12, 2 in of foot and 1/2 in of top.
            CHECK(in(pan.exact) == doctest::Approx(48 * std::sqrt(1.25) + 2.5).epsilon(1e-6));
        }
    }
    CHECK(closures_at(layout, EdgeKind::headwall).count == 7);
    // The dormer's own plane ends in a valley: its pans cannot be pinned at the eave.
    const PanelLayout dormer = laid(said_plane(dormer_roof(456, 188), "F"));
    REQUIRE_FALSE(dormer.doubts.empty());
}

TEST_CASE("Pans of a valley stop half the open valley short, by how far below its head they are") {
    CHECK(half_open_valley(Length(), inches(4)) == inches(2));
    CHECK(half_open_valley(feet(24), inches(4)) == sixteenths_of(3.5));
    CHECK(half_open_valley(feet(40), inches(4)) == sixteenths_of(4.5));
}

TEST_CASE("A pan in a valley stops short of its line by half the open valley, less gap and hem") {
    // Hips left, a valley from 240 in right, 18 ft long: (4 + 18/8)/2 = 3.125 in half open at its
    // foot; gap and hem 1 1/4 in; 1.5 times the rest along the slope; 1/2 in at the ridge.
    const std::vector<RoofBody> house = l_roof();
    const PanelLayout layout = laid(said_plane(house));
    const LaidPan& pan = layout.pans[15];
    CHECK(pan.from == inches(240));
    CHECK(in(pan.exact) ==
          doctest::Approx(144 * std::sqrt(1.25) + 0.5 - 1.5 * (3.125 - 1.25)).epsilon(1e-6));
    CHECK(pan.kind == PanKind::cut);
    // The next one's foot is 17.8885 in up the deck, 1.5 · 16 in nearer to the valley's head.
    CHECK(in(layout.pans[16].exact) ==
          doctest::Approx(144 * std::sqrt(1.25) + 0.5 - 16 * std::sqrt(1.25) -
                          1.5 * ((4 + (18 - 2) / 8.0) / 2 - 1.25))
              .epsilon(1e-6));
    REQUIRE(layout.doubts.size() == 1);
    CHECK(layout.doubts[0].problem.mend.english() == "Pin this plane at the ridge.");
    // Pinned there: shrink 6.7e-6 · 160.997 · 80 and grow · 120, square to the valley 2/3 of them:
    // gap 1/8 in, hem 5/8.
    PanelJob job;
    job.practice.fixed_line = FixedLine::ridge;
    job.at = MetalTemperatures{fahrenheit(60), fahrenheit(-20), fahrenheit(180)};
    const PanelLayout moving = laid(said_plane(house), job);
    CHECK(moving.doubts.empty());
    CHECK(in(moving.pans[15].exact) ==
          doctest::Approx(144 * std::sqrt(1.25) + 0.5 - 1.5 * (3.125 - 0.75)).epsilon(1e-6));
}

TEST_CASE("Clips: 6 in from each end of a stretch, at most 24 in apart; a short one has one") {
    const auto clips = [](double stretch) {
        LaidPan left, right;
        const double top = stretch * 25.4e6, w = 16 * 25.4e6;
        left.flat = {{0, w, 0, 0, top, top, 0, 1}};
        right.flat = {{w, 2 * w, 0, 0, top, top, 0, 1}};
        const std::vector<LaidPan> pans = {left, right};
        return laid_seams({}, std::vector<Length>{inches(16)}, pans, clip_rules({}))[0]
            .clips.size();
    };
    CHECK(clips(0) == 0);
    CHECK(clips(5) == 1);
    CHECK(clips(12) == 1);
    CHECK(clips(12.5) == 2);
    CHECK(clips(36) == 2);
    CHECK(clips(36.5) == 3);
    // Beside a dormer a seam is in two stretches, with the clips of both.
    const PanelLayout layout = laid(said_plane(dormer_roof(456, 188)));
    CHECK(layout.seams[12].length < layout.seams[3].length);
    CHECK(layout.seams[12].clips.size() >= 4);
}

TEST_CASE("Seams keep off walls and the tops of valleys and hips, and a seam may lie on a hip's") {
    const auto told = [](const DeckPlane& plane) {
        std::string all;
        for (const KeepOff& one : keep_offs(plane, {}, Practice())) {
            CHECK(one.off == inches(2));
            all += one.what.english() + " " + tell_length(one.at, Marks::sixteenth) +
                   (one.on_it ? " or on it; " : "; ");
        }
        return all;
    };
    CHECK(told(said_plane(gable_roof(480, 30))) == "");
    CHECK(told(said_plane(hip_roof(480, 24))) ==
          "the top of hip E 12 ft or on it; the top of hip F 28 ft or on it; ");
    CHECK(told(said_plane(l_roof())) == "the top of hip G 12 ft or on it; ");
    const std::string dormer = told(said_plane(dormer_roof(456, 188)));
    CHECK(dormer.find("the top of valley") != std::string::npos);
    CHECK(dormer.find(" 19 ft 8 in; ") != std::string::npos);
    CHECK(dormer.find("the wall line") != std::string::npos);
    CHECK(dormer.find(" 15 ft 8 in; ") != std::string::npos);
    CHECK(dormer.find(" 23 ft 8 in; ") != std::string::npos);
    CHECK(dormer.find("or on it") == std::string::npos);
}

TEST_CASE("Pinned at the ridge the foot is bent for what the plane moves") {
    PanelJob job;
    job.practice.fixed_line = FixedLine::ridge;
    const DeckPlane plane = said_plane(gable_roof(480, 30));
    CHECK_FALSE(lay_panels(plane, job).ok());
    job.at = MetalTemperatures{fahrenheit(60), fahrenheit(-20), fahrenheit(180)};
    const PanelLayout layout = laid(plane, job);
    // 6.7e-6 · 201.246 · 80 and 120: shrink 0.1079, grow 0.1618; gap 3/16, hem 3/4, lip 3/4.
    CHECK(layout.ends.gap == sixteenths(3));
    CHECK(layout.ends.hem == sixteenths(12));
    CHECK(layout.ends.lip == sixteenths(12));
    CHECK(in(layout.pans[3].exact) == doctest::Approx(201.246 + 1.6875 + 0.5).epsilon(1e-5));
    job.practice.fixed_line = FixedLine::eave;
    job.practice.site.panel_metal = "aluminum";
    // Pinned at the eave: 12.9e-6 · 201.246 · 120 = 0.3115, and 1/2 in: under the usual 1 in.
    CHECK(laid(plane, job).ends.top_back == inches(1));
}
