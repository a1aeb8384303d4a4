// How far the errors of readings carry the end of a walk, by hand.
#include "engine/roof/outline_close.h"

#include <doctest/doctest.h>

#include <numbers>

#include "tests/engine/roof/outline_shapes.h"

namespace hemline::test {
namespace {

double reach(const std::vector<WalkedEdge>& edges, PlanVector way) {
    const Walk walk = lay_walk(edges, {});
    return reach_along(walk, close_walk(walk), way);
}

TEST_CASE("A doubtful corner turns what comes after it, not the side before it") {
    std::vector<WalkedEdge> house = l_house();
    const double square = reach(house, {0, 1});
    house[0].edge.corner_right_udeg = 90'100'000;  // read to a tenth: 0.05 degrees either way
    // From the corner on, the walk ends 40 ft back along the first side.
    const double turned = static_cast<double>(feet(40).nm()) * 0.05 * std::numbers::pi / 180;
    CHECK(reach(house, {0, 1}) - square == doctest::Approx(turned).epsilon(0.01));
}

TEST_CASE("One pitch is off alike on all its gables: up one side and down the other it cancels") {
    const Walk walk = lay_walk(gable_house(), {});
    double tapes = 0;
    for (const WalkSide& side : walk.sides) {
        tapes += walk.edges[side.edge.value()].edge.kind == EdgeKind::gable ? side.tape_nm : 0;
    }
    CHECK(tapes > 0);
    CHECK(reach(gable_house(), {0, 1}) == doctest::Approx(tapes));
}

}  // namespace
}  // namespace hemline::test
