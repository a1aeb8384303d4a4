// How far each length may be off is the same, to a few nanometers, as where the roof is worked out
// anew for every change.
#include <doctest/doctest.h>

#include "engine/body/off_of_edges.h"
#include "engine/body/worked_roof.h"
#include "engine/words/result.h"
#include "tests/engine/body/chance_walks.h"
#include "tests/engine/body/said_sides.h"
#include "tests/engine/body/slow_off.h"

using namespace hemline;
using namespace hemline::test;

namespace {

/// Square corners on a grid of half feet, or none two alike; now and then a gable, another pitch, a
/// length that the others settle, a corner that somebody measured.
std::vector<BodySide> house_by_chance(std::mt19937& random) {
    const PlanWalk corners = steps(random);
    const bool is_even = below(random, 2) == 0;
    const std::string pitches[] = {"6/12", below(random, 3) == 0 ? "9/12" : "6/12"};
    std::vector<BodySide> sides;
    for (std::size_t i = 0; i < corners.size(); ++i) {
        const PlanVector here = corners[i], next = corners[(i + 1) % corners.size()];
        const PlanVector after = corners[(i + 2) % corners.size()];
        const bool is_gable = below(random, 12) == 0;
        sides.push_back(said_side("s" + std::to_string(i),
                                  is_gable ? SideKind::gable : SideKind::eave,
                                  length_of(next - here), is_gable ? "" : pitches[below(random, 2)],
                                  turn(next - here, after - next) > 0 ? square_out : square_in));
        // What is read closes within the tapes only.
        if (!is_even) {
            *sides.back().length += sixteenths(below(random, 2));
        }
    }
    if (below(random, 4) == 0) {
        sides[0].length.reset();
    }
    return sides;
}

}  // namespace

TEST_CASE("How far lengths may be off is as if the roof were worked out anew for every reading" *
          doctest::test_suite("long")) {
    std::mt19937 random(29);
    int compared = 0;
    double farthest = 0;
    for (int i = 0; i < 2000 && compared < 300; ++i) {
        const RoofBody body = {"", house_by_chance(random), {}};
        const auto worked = work_out(std::span(&body, 1), Tape(), WalkThatIsOpen::is_said);
        if (!worked || !worked->closes || body.sides.size() > 40) {
            continue;
        }
        ++compared;
        CAPTURE(i);
        const auto off = off_of_edges(std::span(&body, 1), Tape(), *worked);
        const auto slow = slow_off_of_edges({body}, Tape(), worked->edges);
        for (std::size_t k = 0; k < off.size(); ++k) {
            farthest = std::max(farthest, std::abs(off[k] - slow[k]));
        }
        REQUIRE(farthest < 20);
    }
    MESSAGE(compared << " walks, at most " << farthest << " nm apart");
    CHECK(compared == 300);
}

TEST_CASE("A ridge that a reading turns round is worked out anew") {
    for (const int more : {0, 1, 2, 40}) {
        RoofBody body = {
            "",
            {said_side("A", SideKind::eave, 24, "6/12"), said_side("B", SideKind::eave, 24, "6/12"),
             said_side("C", SideKind::eave, 24, "6/12"),
             said_side("D", SideKind::eave, 24, "6/12")},
            {}};
        for (const std::size_t side : {std::size_t{0}, std::size_t{2}}) {
            *body.sides[side].length += sixteenths(more);
        }
        const auto worked = work_out(std::span(&body, 1), Tape(), WalkThatIsOpen::is_said);
        REQUIRE(worked);
        const auto off = off_of_edges(std::span(&body, 1), Tape(), *worked);
        const auto slow = slow_off_of_edges({body}, Tape(), worked->edges);
        for (std::size_t i = 0; i < off.size(); ++i) {
            CAPTURE(more);
            CHECK(std::abs(off[i] - slow[i]) < 20);
        }
    }
}
