// Pairs from one length: a hip roof's by hand, and every pairing tried on planes by chance.
#include "engine/panels/pan_pairs.h"

#include <doctest/doctest.h>

#include <functional>
#include <random>

#include "tests/engine/panels/said_planes.h"

using namespace hemline;
using namespace hemline::test;

namespace {

LaidPan slanted(int number, double width, double shorter, double rise, bool at_top) {
    LaidPan pan;
    pan.number = number;
    pan.width = in_feet(width / 12);
    const double w = width * 25.4e6, low = shorter * 25.4e6, high = (shorter + rise) * 25.4e6;
    pan.flat = {at_top ? DeckPart{0, w, 0, 0, low, high, 0, 1}
                       : DeckPart{0, w, 0, high - low, high, high, 0, 1}};
    pan.exact = in_feet((shorter + rise + 2.5) / 12);
    pan.length = round_up_to(pan.exact, sixteenths(4));
    return pan;
}

/// Of the pans in inches; 0 where they cannot lie in one length.
double saved_by(const LaidPan& a, const LaidPan& b, SeamLegs legs) {
    const DeckPart &one = a.flat[0], &two = b.flat[0];
    const bool top1 = one.top1 != one.top2, top2 = two.top1 != two.top2;
    const double rise1 = top1 ? one.top2 - one.top1 : one.foot2 - one.foot1;
    const double rise2 = top2 ? two.top2 - two.top1 : two.foot2 - two.foot1;
    if (a.width != b.width || std::abs(rise1 - rise2) > 1000 ||
        (top1 == top2 && legs == SeamLegs::of_two_kinds)) {
        return 0;
    }
    const double both = in(a.exact) + in(b.exact) - std::abs(rise1) / 25.4e6;
    return in(a.length) + in(b.length) - std::ceil(both * 4 - 1e-6) / 4;
}

double best_by_trying(const std::vector<LaidPan>& pans, SeamLegs legs) {
    std::vector<bool> taken(pans.size());
    const std::function<double(std::size_t)> best = [&](std::size_t i) -> double {
        if (i == pans.size()) {
            return 0;
        }
        double most = best(i + 1);
        for (std::size_t k = i + 1; k < pans.size() && !taken[i]; ++k) {
            const double saved = taken[k] ? 0 : saved_by(pans[i], pans[k], legs);
            if (saved > 0) {
                taken[i] = taken[k] = true;
                most = std::max(most, saved + best(i + 1));
                taken[i] = taken[k] = false;
            }
        }
        return most;
    };
    return best(0);
}

}  // namespace

TEST_CASE("Two hip pans come from one length where the seam's legs are alike, else none do") {
    const DeckPlane plane = said_plane(hip_roof(480, 24));
    CHECK(laid(plane).pairs.empty());
    PanelJob job;
    job.legs = SeamLegs::alike;
    const PanelLayout layout = laid(plane, job);
    REQUIRE(layout.pairs.size() == 8);  // nine on each side: one is left over
    Length saved;
    for (const PanPair& pair : layout.pairs) {
        CHECK(pair.turned);
        const LaidPan &a = layout.pans[pair.first], &b = layout.pans[pair.second];
        CHECK((a.number <= 9) == (b.number <= 9));
        // The jack difference by the framing square, 17.89 in, but for rounding up to 1/4 in.
        CHECK(std::abs(in(a.exact + b.exact) - 17.89 - in(pair.length)) < 0.26);
        CHECK(pair.saved == a.length + b.length - pair.length);
        saved += pair.saved;
    }
    CHECK(in(saved) == doctest::Approx(8 * 17.8885).epsilon(0.02));  // rounding up twice or once
    // 8 and 9 from 291.717 in.
    std::vector<LaidPan> two = {layout.pans[7], layout.pans[8]};
    const auto pairs = pan_pairs(two, SeamLegs::alike, sixteenths(4));
    REQUIRE(pairs.size() == 1);
    CHECK(pairs[0].length == sixteenths(291 * 16 + 12));
}

TEST_CASE("The rest of a hip pan is a valley pan: nothing is turned, legs of two kinds will do") {
    const PanelLayout layout = laid(said_plane(l_roof()));
    REQUIRE_FALSE(layout.pairs.empty());
    for (const PanPair& pair : layout.pairs) {
        CHECK_FALSE(pair.turned);
        CHECK(pair.saved > inches(10));
    }
}

TEST_CASE("Pans of other slants, widths or hands do not come from one length") {
    const LaidPan hip = slanted(1, 16, 20, 17, true);
    const auto pairs = [&](const LaidPan& other) {
        return pan_pairs(std::vector<LaidPan>{hip, other}, SeamLegs::alike, sixteenths(4)).size();
    };
    CHECK(pairs(slanted(2, 16, 40, 17, true)) == 1);
    CHECK(pairs(slanted(2, 16, 40, 17, false)) == 1);
    CHECK(pairs(slanted(2, 16, 40, 16, true)) == 0);
    CHECK(pairs(slanted(2, 15, 40, 17, true)) == 0);
    CHECK(pairs(slanted(2, 16, 40, -17, true)) == 0);
    CHECK(pairs(slanted(2, 16, 40, 0, true)) == 0);
}

TEST_CASE("The pairing saves as much as the best of all, on 300 sets of pans by chance") {
    std::mt19937 random(11);
    const auto below = [&](int n) { return static_cast<int>(random() % static_cast<unsigned>(n)); };
    for (int set = 0; set < 300; ++set) {
        std::vector<LaidPan> pans;
        for (int i = 0; i < 9; ++i) {
            pans.push_back(slanted(i + 1, below(4) == 0 ? 12 : 16, 5 + below(400) / 7.0,
                                   below(2) == 0 ? 17.8885 : 11.3, below(2) == 0));
        }
        const SeamLegs legs = below(2) == 0 ? SeamLegs::alike : SeamLegs::of_two_kinds;
        double saved = 0;
        for (const PanPair& pair : pan_pairs(pans, legs, sixteenths(4))) {
            saved += in(pair.saved);
        }
        CHECK(saved == doctest::Approx(best_by_trying(pans, legs)));
    }
}
