// The least shift beside every shift tried in the slow way; conservation on planes by chance.
#include "engine/panels/seam_layout.h"

#include <doctest/doctest.h>

#include "tests/engine/panels/said_planes.h"

using namespace hemline;
using namespace hemline::test;

namespace {

/// A rectangle of that width, gables at both sides.
SeamFrame between_gables(Length wide) {
    return {{sixteenths(4), true},
            {wide - sixteenths(4), true},
            {Length(), wide},
            {Length(), wide},
            inches(16)};
}

/// Seams from a first pan of that width.
std::vector<Length> seams_from(const SeamFrame& frame, Length first) {
    std::vector<Length> seams;
    for (Length at = frame.left.at + first; at < frame.right.at; at += frame.module) {
        seams.push_back(at);
    }
    return seams;
}

int hurt_in(const std::vector<Length>& seams, const std::vector<KeepOff>& all) {
    int hurt = 0;
    for (const KeepOff& one : all) {
        bool near = false, on = false;
        for (const Length seam : seams) {
            near = near || absolute(seam - one.at) < one.off;
            on = on || (one.on_it && absolute(seam - one.at) < nanometres(1000));
        }
        hurt += near && !on ? 1 : 0;
    }
    return hurt;
}

std::vector<KeepOff> some_keep_offs(std::mt19937& random, Length wide) {
    std::vector<KeepOff> all;
    for (std::int64_t i = within(random, 0, 4); i > 0; --i) {
        all.push_back({Text(), sixteenths(within(random, 0, wide.nm() / sixteenths(1).nm())),
                       sixteenths(within(random, 8, 100)), random() % 4 == 0});
    }
    return all;
}

}  // namespace

TEST_CASE("The shift is the least of all that hurt least, on 3,000 planes between gables") {
    std::mt19937 random(5);
    int shifted = 0, stayed = 0;
    for (int plane = 0; plane < 3000; ++plane) {
        const SeamFrame frame = between_gables(sixteenths(within(random, 300, 9000)));
        const Length wide = frame.right.at - frame.left.at;
        const std::vector<KeepOff> keep_off = some_keep_offs(random, wide);
        const SeamLayout layout = lay_seams(frame, keep_off);
        const Length first = balanced_seams(frame).front() - frame.left.at;
        int least_hurt = 1000;
        Length least_shift;
        for (int sixteenth = -256; sixteenth <= 256; ++sixteenth) {
            const Length shift = sixteenths(sixteenth);
            const std::vector<Length> seams = seams_from(frame, first + shift);
            const bool allowed =
                !seams.empty() && first + shift >= inches(4) && first + shift <= inches(16) &&
                frame.right.at - seams.back() >= inches(4) && seams.size() == layout.seams.size();
            if (!allowed && shift != Length()) {
                continue;
            }
            const int hurt = hurt_in(seams, keep_off);
            const bool nearer = absolute(shift) < absolute(least_shift) ||
                                (absolute(shift) == absolute(least_shift) && shift > least_shift);
            if (hurt < least_hurt || (hurt == least_hurt && nearer)) {
                least_hurt = hurt;
                least_shift = shift;
            }
        }
        CHECK(layout.shift == least_shift);
        CHECK(static_cast<int>(layout.staying.size()) == least_hurt);
        CHECK(hurt_in(layout.seams, keep_off) == least_hurt);
        shifted += layout.shift != Length() ? 1 : 0;
        stayed += layout.staying.empty() ? 0 : 1;
        if (layout.with_one_more) {
            CHECK(hurt_in(*layout.with_one_more, keep_off) == 0);
            CHECK(layout.with_one_more->size() == layout.seams.size() + 1);
            CHECK(layout.with_one_more->front() - frame.left.at >= inches(4));
            CHECK(frame.right.at - layout.with_one_more->back() >= inches(4));
        }
    }
    CHECK(shifted > 500);
    CHECK(stayed > 200);
}

TEST_CASE("End pans between gables are equal, and more than half a module") {
    for (int wide = 17 * 16; wide < 9000; ++wide) {
        const SeamFrame frame = between_gables(sixteenths(wide));
        const std::vector<Length> seams = balanced_seams(frame);
        REQUIRE_FALSE(seams.empty());
        const Length left = seams.front() - frame.left.at, right = frame.right.at - seams.back();
        CHECK(absolute(left - right) <= nanometres(1));
        CHECK(left * 2 > inches(16));
        CHECK(left <= inches(16));
        for (std::size_t i = 1; i < seams.size(); ++i) {
            CHECK(seams[i] - seams[i - 1] == inches(16));
        }
    }
    CHECK(balanced_seams(between_gables(sixteenths(264))).empty());  // 16 in between the lines
}

TEST_CASE("Between two hips a seam or the middle of a pan is in the middle, what cuts wider") {
    const auto frame = [](double wide, double from, double to) {
        return SeamFrame{{Length(), false},
                         {in_feet(wide / 12), false},
                         {Length(), in_feet(wide / 12)},
                         {in_feet(from / 12), in_feet(to / 12)},
                         inches(16)};
    };
    CHECK(balanced_seams(frame(480, 144, 336)).front() == inches(16));
    // A seam at 244 leaves 4 in at the corners, the middle of a pan there 12.
    CHECK(balanced_seams(frame(488, 144, 344)).front() == inches(12));
    // With the ridge from 152 the one leaves 4 in at the eave and 12 at the ridge, the other 12 and
    // 4: as wide, so the seam.
    CHECK(balanced_seams(frame(488, 152, 336)).front() == inches(4));
    // A triangle, 200 in: a seam at 100 leaves 4 in at the corners, a pan's middle 12.
    CHECK(balanced_seams(frame(200, 100, 100)).front() == inches(12));
}

TEST_CASE("Between a gable and a hip the first pan is whole, but for a sliver at the corner") {
    const auto seams = [](double eave, bool gable_left) {
        const Length wide = in_feet(eave / 12), gap = sixteenths(4);
        return balanced_seams(
            {{gable_left ? gap : Length(), gable_left},
             {gable_left ? wide : wide - gap, !gable_left},
             {Length(), wide},
             gable_left ? LevelLine{Length(), wide - inches(50)} : LevelLine{inches(50), wide},
             inches(16)});
    };
    // The top, 150 in less 1/4: 9 pans and 5 3/4 in.
    CHECK(seams(200, true).front() == sixteenths(4) + inches(16));
    CHECK(seams(200, false).back() == inches(184) - sixteenths(4));
    // 147 in less 1/4: 2 3/4 in are left, so both ends are 9 3/8 in.
    CHECK(seams(197, true).front() == sixteenths(4) + sixteenths(150));
}

TEST_CASE("A hip's top lies on a seam or 2 in off it; a valley's always 2 in off") {
    const SeamFrame frame = between_gables(inches(150));  // first pan 10 3/4 in, seams 11 + 16 i
    const KeepOff hip{Text(), inches(27), inches(2), true};
    CHECK(lay_seams(frame, std::vector<KeepOff>{hip}).shift == Length());
    KeepOff off = hip;
    off.at += sixteenths(1);
    CHECK(lay_seams(frame, std::vector<KeepOff>{off}).shift == sixteenths(1));
    KeepOff valley = hip;
    valley.on_it = false;
    CHECK(lay_seams(frame, std::vector<KeepOff>{valley}).shift == inches(2));
}
