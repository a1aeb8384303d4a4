// Clips in zones of wind, and a valley's leg and strip, by hand. Common practice, no published
// source.
#include "engine/panels/clips.h"

#include <doctest/doctest.h>

#include "tests/engine/panels/said_planes.h"

using namespace hemline;
using namespace hemline::test;

namespace {

PanelJob with_zone(Length zone) {
    PanelJob job;
    job.practice.clip_zone = zone;
    return job;
}

std::size_t clips_at(const PanelLayout& layout, Length seam) {
    for (const LaidSeam& one : layout.seams) {
        if (one.at == seam) {
            return one.clips.size();
        }
    }
    FAIL("no seam");
    return 0;
}

}  // namespace

TEST_CASE("In zones of wind clips are 12 in apart: along eave, ridge and gable") {
    const PanelLayout layout = laid(said_plane(gable_roof(480, 30)), with_zone(inches(36)));
    // 201 1/4 in of slope: 6 to 36 in 3 steps, 129 1/4 in 6, the last 30 in 3.
    CHECK(clips_at(layout, inches(240)) == 13);
    // Within 36 in of the gable: 189 1/4 in 16 steps.
    CHECK(clips_at(layout, inches(16)) == 17);
    CHECK(clips_at(layout, inches(32)) == 17);
    CHECK(clips_at(layout, inches(48)) == 13);
    for (const LaidSeam& seam : layout.seams) {
        CHECK(seam.clips.front() == inches(6));
        for (std::size_t i = 1; i < seam.clips.size(); ++i) {
            CHECK(seam.clips[i] - seam.clips[i - 1] <= inches(24) + nanometres(1));
        }
    }
    CHECK(clips_at(laid(said_plane(gable_roof(480, 30))), inches(16)) == 9);
}

TEST_CASE("A hip's zone is square to it") {
    // The seam at 112 in is 125.2 in long; 40 in square to a hip of 48.19° are 60 in along it, 6 in
    // of them past the last clip: 6 to 40 in 3 steps, 25.2 in 2, 54 in 5.
    const PanelLayout layout = laid(said_plane(hip_roof(480, 24)), with_zone(inches(40)));
    CHECK(clips_at(layout, inches(112)) == 11);
    CHECK(clips_at(layout, inches(480 - 112)) == 11);
}

TEST_CASE("Beside a wall and along a valley is no zone") {
    const DeckPlane plane = said_plane(gable_roof(480, 30, SideKind::gable, SideKind::wall));
    const PanelLayout layout = laid(plane, with_zone(inches(36)));
    CHECK(clips_at(layout, layout.seams.front().at) == 13);
    CHECK(clips_at(layout, layout.seams.back().at) == 17);
}

TEST_CASE("A valley's leg reaches 6 in under the panels at its foot, or a wider one is asked") {
    // 18 ft below its head half the valley is open 3 1/8 in.
    const DeckPlane plane = said_plane(l_roof());
    PanelJob job;
    const std::size_t others = laid(plane, job).doubts.size();
    job.valley_leg = inches(10);
    CHECK(laid(plane, job).doubts.size() == others);
    job.valley_leg = inches(9);
    const PanelLayout layout = laid(plane, job);
    REQUIRE(layout.doubts.size() == others + 1);
    CHECK(layout.doubts.back().problem.what.english().find("reaches 5 7/8 in under") !=
          std::string::npos);
    CHECK(layout.doubts.back().problem.mend.english() == "Take a leg of 9 1/4 in or more.");
}

TEST_CASE("A strip is not screwed nearer than 4 1/2 in to a valley's center") {
    const DeckPlane plane = said_plane(l_roof());
    PanelJob job;
    const std::size_t others = laid(plane, job).doubts.size();
    job.strip = ValleyStrip::riveted;
    CHECK(laid(plane, job).doubts.size() == others);
    job.strip = ValleyStrip::screwed;
    const PanelLayout layout = laid(plane, job);
    REQUIRE(layout.doubts.size() == others + 1);
    CHECK(layout.doubts.back().problem.mend.english() ==
          "Rivet the strip to the valley's leg and seal it, or open the valley 9 in at its head.");
    job.practice.valley_open = inches(9);
    CHECK(laid(plane, job).doubts.size() == others);
}
