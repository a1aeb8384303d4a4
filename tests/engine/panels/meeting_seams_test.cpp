// Seams that meet at the ridge: by hand, and beside every pair of shifts tried in the slow way.
// What is not geometry is common practice, no published source.
#include "engine/panels/meeting_seams.h"

#include <doctest/doctest.h>

#include <tuple>

#include "engine/panels/roof_panels.h"
#include "tests/engine/panels/said_planes.h"

using namespace hemline;
using namespace hemline::test;

namespace {

std::vector<PlaneAsked> asked_planes(const std::vector<RoofBody>& bodies) {
    const Result<Roof> roof = work_out_roof(bodies, Tape());
    REQUIRE(roof.ok());
    std::vector<PlaneAsked> planes;
    for (const BodyPlane& plane : roof->planes) {
        planes.push_back({deck_plane(*roof, bodies, plane), PanelJob(), {}});
    }
    return planes;
}

std::vector<PanelLayout> laid_roof(const std::vector<PlaneAsked>& planes) {
    const auto layouts = lay_roof(planes);
    REQUIRE(layouts.ok());
    return *layouts;
}

Penetration pipe(double x_inches, double base_inches) {
    return {Penetration::Kind::pipe, in_feet(x_inches / 12), inches(60), in_feet(base_inches / 12)};
}

bool says_unmet(const PanelLayout& layout) {
    for (const PanelDoubt& doubt : layout.doubts) {
        if (doubt.problem.what.english().find("The seams do not meet") == 0) {
            return true;
        }
    }
    return false;
}

/// A plane between gables, so wide in eighths: all that would be halved lies on 1/16 in.
SeamFrame between(std::int64_t wide) {
    return {{sixteenths(4), true}, {sixteenths(2 * wide - 4), true}, {}, {}, inches(16)};
}

/// Conflicts and seams for a first pan of that width; none: an end pan is too narrow or too wide.
struct Slow {
    std::size_t hurt = 0;
    Length first;
};
std::optional<Slow> slow_layout(const SeamTask& task, Length shift) {
    const Length first = balanced_seams(task.frame).front() + shift;
    Length last = first;
    std::vector<Length> seams;
    for (; last < task.frame.right.at; last += inches(16)) {
        seams.push_back(last);
    }
    if (seams.size() != balanced_seams(task.frame).size() ||
        first - task.frame.left.at < inches(4) || first - task.frame.left.at > inches(16) ||
        task.frame.right.at - seams.back() < inches(4) ||
        task.frame.right.at - seams.back() > inches(16)) {
        return {};
    }
    Slow slow{0, first};
    for (const KeepOff& one : task.keep_off) {
        bool near = false;
        for (const Length seam : seams) {
            near = near || absolute(seam - one.at) < one.off;
        }
        slow.hurt += near ? 1 : 0;
    }
    return slow;
}

}  // namespace

TEST_CASE("A pipe on one plane shifts both: their seams meet at the ridge") {
    std::vector<PlaneAsked> planes =
        asked_planes(gable_roof(150.375, 30, SideKind::gable, SideKind::wall));
    REQUIRE(planes.size() == 2);
    planes[0].through = {pipe(42, 9)};
    const std::vector<PanelLayout> layouts = laid_roof(planes);
    // As the plane alone has it (panel_layout_test.cpp), and mirrored on the other.
    CHECK(layouts[0].shift == sixteenths(73));
    CHECK(layouts[1].shift == -sixteenths(73));
    REQUIRE(layouts[0].seams.size() == layouts[1].seams.size());
    for (std::size_t i = 0; i < layouts[0].seams.size(); ++i) {
        CHECK(layouts[0].seams[i].at + layouts[1].seams[layouts[1].seams.size() - 1 - i].at ==
              sixteenths(150 * 16 + 6));
    }
    CHECK_FALSE(says_unmet(layouts[0]));
}

TEST_CASE("Where no common shift clears both planes each has its own, and both say so") {
    // 40 ft, seams on 16 i, end pans 15 3/4 in: 1/4 in to the right, 1/4 in to the left. A pipe
    // beside a seam on each plane asks A's to go right and C's to go right: C's mirror is left.
    std::vector<PlaneAsked> planes = asked_planes(gable_roof(480, 30));
    planes[0].through = {pipe(160 - 5.5, 9)};
    planes[1].through = {pipe(160 - 5.5, 9)};
    const std::vector<PanelLayout> layouts = laid_roof(planes);
    CHECK(layouts[0].shift == sixteenths(4));
    CHECK(layouts[1].shift == sixteenths(4));
    CHECK(says_unmet(layouts[0]));
    CHECK(says_unmet(layouts[1]));
    // To the left is the same line of the ridge on C: then both can.
    planes[1].through = {pipe(160 + 5.5, 9)};
    const std::vector<PanelLayout> both = laid_roof(planes);
    CHECK(both[0].shift == sixteenths(4));
    CHECK(both[1].shift == -sixteenths(4));
    CHECK_FALSE(says_unmet(both[0]));
}

TEST_CASE("Seams chosen for one plane are followed by the other") {
    std::vector<PlaneAsked> planes = asked_planes(gable_roof(471, 30));
    planes[1].job.chosen = ChosenSeams{sixteenths(-16), false};
    const std::vector<PanelLayout> layouts = laid_roof(planes);
    CHECK(layouts[1].shift == sixteenths(-16));
    CHECK(layouts[0].shift == sixteenths(16));
    planes[1].job.chosen = ChosenSeams{inches(13), false};
    CHECK(laid_roof(planes)[1].doubts[0].problem.what.english() ==
          "Shifted as chosen, an end pan would be too narrow or too wide.");
}

TEST_CASE("On hip, L and dormer roofs the seams of every ridge meet") {
    for (const std::vector<RoofBody>& bodies :
         {hip_roof(480, 24), l_roof(), gable_roof(471, 21, SideKind::eave),
          dormer_roof(456, 188)}) {
        const std::vector<PlaneAsked> planes = asked_planes(bodies);
        const std::vector<SharedRidge> ridges = shared_ridges(planes);
        CHECK_FALSE(ridges.empty());
        const std::vector<PanelLayout> layouts = laid_roof(planes);
        for (const SharedRidge& ridge : ridges) {
            const Length apart =
                ridge.sum - layouts[ridge.a].seams.front().at - layouts[ridge.b].seams.front().at;
            CHECK(absolute(apart - nearest_on(apart, inches(16))) <= nanometres(1000));
        }
    }
}

TEST_CASE("The common shift is the least of all that hurt least, on 400 pairs by chance") {
    std::mt19937 random(6);
    int met = 0, own = 0;
    for (int i = 0; i < 400; ++i) {
        std::vector<SeamTask> tasks;
        for (int plane = 0; plane < 2; ++plane) {
            tasks.push_back({between(within(random, 200, 750)), {}, {}});
            for (std::int64_t k = within(random, 0, 2); k > 0; --k) {
                tasks.back().keep_off.push_back({Text(), sixteenths(within(random, 0, 1500)),
                                                 sixteenths(within(random, 8, 90)), false});
            }
        }
        const std::vector<SharedRidge> ridge = {{0, 1, sixteenths(within(random, 0, 3000)), "R"}};
        const MeetingSeams meeting = meeting_seams(tasks, ridge);
        using Cost = std::tuple<std::size_t, Length, Length>;
        std::optional<Cost> best;
        for (int a = -256; a <= 256; ++a) {
            const auto one = slow_layout(tasks[0], sixteenths(a));
            for (int b = -256; one && b <= 256; ++b) {
                const auto other = slow_layout(tasks[1], sixteenths(b));
                if (other &&
                    (ridge[0].sum - one->first - other->first).nm() % inches(16).nm() == 0) {
                    const Length left = sixteenths(std::abs(a)), right = sixteenths(std::abs(b));
                    const Cost cost{one->hurt + other->hurt, std::max(left, right), left + right};
                    best = best ? std::min(*best, cost) : cost;
                }
            }
        }
        const SeamLayout &a = meeting.layouts[0], &b = meeting.layouts[1];
        const SeamLayout alone_a = lay_seams(tasks[0].frame, tasks[0].keep_off),
                         alone_b = lay_seams(tasks[1].frame, tasks[1].keep_off);
        const std::size_t alone = alone_a.staying.size() + alone_b.staying.size();
        if (best && std::get<0>(*best) <= alone) {
            CHECK(meeting.met[0]);
            CHECK(Cost{a.staying.size() + b.staying.size(),
                       std::max(absolute(a.shift), absolute(b.shift)),
                       absolute(a.shift) + absolute(b.shift)} == *best);
            ++met;
        } else {
            CHECK(a.seams == alone_a.seams);
            CHECK(b.seams == alone_b.seams);
            ++own;
        }
    }
    CHECK(met > 100);
    CHECK(own > 20);
}
