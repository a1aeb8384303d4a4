// Planes as they are read, by hand: diagonals by Pythagoras, lengths by interpolation.
#include "engine/panels/plane_readings.h"

#include <doctest/doctest.h>

#include <cmath>

#include "tests/engine/panels/said_planes.h"

using namespace hemline;
using namespace hemline::test;

namespace {

/// To the 1/16 in, as a tape says it.
Length taped(double inches) { return sixteenths(std::llround(inches * 16)); }

ReadPlane read(const DeckPlane& plane, const PlaneReadings& readings) {
    const Result<ReadPlane> result = read_plane(plane, readings, Tape());
    REQUIRE(result.ok());
    return *result;
}

std::string doubts_of(const PanelLayout& layout) {
    std::string all;
    for (const PanelDoubt& doubt : layout.doubts) {
        all += std::to_string(doubt.pan) + " " + doubt.problem.what.english() + "|";
    }
    return all;
}

}  // namespace

TEST_CASE("A plane as it was worked out stays as it is, at the slope length that was read") {
    const DeckPlane plane = said_plane(gable_roof(480, 30));
    // 480 by 201 1/4: diagonals of 520.483 in.
    const ReadPlane as_read =
        read(plane, {taped(201.25), taped(201.3125), taped(520.5), taped(520.5)});
    CHECK(as_read.doubts.empty());
    CHECK(as_read.plane.lean == Length());
    CHECK(as_read.plane.top_rise == Length());
    CHECK(in(nearest_nm(as_read.plane.top)) == doctest::Approx(201.3125));  // the mean, half up
    const PanelLayout layout = laid(as_read.plane);
    CHECK(layout.doubts.empty());
    CHECK(in(layout.pans[3].exact) == doctest::Approx(203.8125));
}

TEST_CASE("A gable out of square: the end pans taper, one the more, one the less") {
    // 41 ft: 11 1/2 in are left over, end pans 13 3/4 in. The top lies 3/4 in to the right:
    // diagonals sqrt(492.75² + 201.25²) = 532.263 and sqrt(491.25² + 201.25²) = 530.875.
    const DeckPlane plane = said_plane(gable_roof(492, 30));
    const PlaneReadings readings{taped(201.25), taped(201.25), taped(532.25), taped(530.875)};
    const ReadPlane as_read = read(plane, readings);
    CHECK(as_read.doubts.empty());
    // 1.375 · 1063.125 / (4 · 492)
    CHECK(in(as_read.plane.lean) == doctest::Approx(0.742775).epsilon(1e-5));
    const PanelLayout layout = laid(as_read.plane);
    REQUIRE(layout.pans.size() == 31);
    const LaidPan &first = layout.pans.front(), &last = layout.pans.back();
    CHECK(first.width == taped(13.75));
    CHECK(in(first.top_width) == doctest::Approx(13.75 - 0.742775).epsilon(1e-5));
    CHECK(last.width == taped(13.75));
    CHECK(in(last.top_width) == doctest::Approx(13.75 + 0.742775).epsilon(1e-5));
    CHECK(last.blank == last.top_width + sixteenths(24));
    CHECK(first.blank == first.width + sixteenths(24));
    CHECK(layout.pans[5].top_width == inches(16));
    CHECK(doubts_of(layout) ==
          "1 Pan 1 is 1 ft 1 3/4 in wide at its foot and 1 ft 1 in at its top: its side is out "
          "of square.|31 Pan 31 is 1 ft 1 3/4 in wide at its foot and 1 ft 2 1/2 in at its top: "
          "its side is out of square.|");
    // The other way.
    const ReadPlane other =
        read(plane, {readings.left, readings.right, readings.falling, readings.rising});
    CHECK(other.plane.lean == -as_read.plane.lean);
}

TEST_CASE("An end pan that would be wider than the module at its top: a pan more") {
    // 40 ft has end pans of 15 3/4 in; 1 in out of square would make one 16 3/4 in.
    DeckPlane plane = said_plane(gable_roof(480, 30));
    plane.lean = inches(1);
    const PanelLayout layout = laid(plane);
    CHECK(layout.pans.size() == 31);
    CHECK(layout.pans.front().width == taped(7.75));
    CHECK(layout.pans.front().top_width == taped(6.75));
    CHECK(layout.pans.back().top_width == taped(8.75));
    for (const LaidPan& pan : layout.pans) {
        CHECK(std::max(pan.width, pan.top_width) <= inches(16));
    }
}

TEST_CASE("A shift keeps the end pans within their limits at foot and top") {
    // 27 ft 4 in: ends of 11 3/4 in; the top 3 in to the left, so 14 3/4 and 8 3/4 in there.
    DeckPlane plane = said_plane(gable_roof(328, 30));
    plane.lean = -inches(3);
    const SeamFrame frame = seam_frame(plane, inches(16), sixteenths(4), inches(4));
    const std::vector<Length> seams = balanced_seams(frame);
    CHECK(seams.front() - frame.left.at == taped(11.75));
    const ShiftRoom room = shift_room(frame, seams);
    CHECK(room.right == taped(1.25));  // 16 in at the left end's top
    CHECK(room.left == taped(4.25));   // 16 in at the right end's foot
}

TEST_CASE("A top that is not level: each pan by interpolation, cut on the slant") {
    const DeckPlane plane = said_plane(gable_roof(480, 30));
    // 2 in over 480: a pan's top rises 1/15 in; the diagonals of a plane with upright sides.
    const ReadPlane as_read =
        read(plane, {taped(200.75), taped(202.75), taped(std::hypot(480, 202.75)),
                     taped(std::hypot(480, 200.75))});
    CHECK(as_read.doubts.empty());
    CHECK(as_read.plane.top_rise == inches(2));
    CHECK(as_read.plane.lean == Length());  // (d1² − d2²)/(4 · 480) alone would say 0.42 in
    const PanelLayout layout = laid(as_read.plane);
    REQUIRE(layout.pans.size() == 30);
    for (const LaidPan& pan : layout.pans) {
        CHECK(pan.kind == PanKind::cut);
        CHECK(in(pan.exact) ==
              doctest::Approx(200.75 + in(pan.from + pan.width) / 240 + 2.5).epsilon(1e-7));
        CHECK(in(pan.top.second - pan.top.first) ==
              doctest::Approx(in(pan.width) / 240).epsilon(1e-4));
    }
    CHECK(layout.pairs.empty());
    CHECK(layout.closures[0].count == 30);
    CHECK(doubts_of(layout) == "0 The top is not level to the eave: it rises 2 in to the right.|");
    // Seams lie as on a level one.
    CHECK(layout.seams[0].at == inches(16));
}

TEST_CASE("A hip plane whose slope lengths differ keeps its top's line for its seams") {
    const DeckPlane plane = said_plane(hip_roof(480, 24));
    const ReadPlane as_read = read(plane, {taped(161), taped(162), {}, {}});
    const PanelLayout layout = laid(as_read.plane);
    CHECK(layout.frame.top.from == inches(144));
    CHECK(layout.frame.top.to == inches(336));
    CHECK(layout.seams[0].at == inches(16));
    // At 144 and 336 in of 480: 161.3 and 161.7 in.
    CHECK(in(nearest_nm(as_read.plane.top)) == doctest::Approx(161.7).epsilon(1e-6));
    const Result<ReadPlane> diagonals =
        read_plane(plane, {taped(161), taped(161), taped(400), taped(400)}, Tape());
    CHECK_FALSE(diagonals.ok());
}

TEST_CASE("What is doubtful in a plane's readings is said") {
    const DeckPlane plane = said_plane(gable_roof(480, 30));
    const auto said = [&](const PlaneReadings& readings) {
        std::string all;
        for (const Problem& doubt : read(plane, readings).doubts) {
            all += doubt.what.english() + "|";
        }
        return all;
    };
    CHECK(said({}) == "The slope length is worked out, not read.|");
    CHECK(said({taped(201.25), {}, {}, {}}) == "The slope length is read at one end alone.|");
    CHECK(said({taped(201.25), taped(201.25), taped(520.5), {}}) ==
          "One diagonal alone does not show whether the plane is square.|");
    // A foot off: as any reading is doubted.
    CHECK(said({taped(213.25), taped(213.25), {}, {}}).find("foot") != std::string::npos);
    // Both diagonals 3 in long: the top would be 6 · 520.5/480 in longer.
    CHECK(said({taped(201.25), taped(201.25), taped(523.5), taped(523.5)}) ==
          "By these diagonals the top is 6 9/16 in longer than the eave.|");
    CHECK_FALSE(
        read_plane(plane, {taped(201.25), taped(201.25), taped(800), taped(800)}, Tape()).ok());
}
