// How far the errors of readings carry the end of a walk, by hand.
#include "engine/roof/outline_close.h"
#include "engine/words/result.h"

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
    house[0].edge.corner_right =
        microdegrees(90'100'000);  // read to a tenth: 0.05 degrees either way
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

TEST_CASE(
    "A walk's end within reach its own way may still lie beyond what one side's tapes reach") {
    // By NIST HB 44 and half a mark: 40 ft sides are good to 5/32 in, 5 ft sides to 2/32; two of
    // each.
    const auto lies_within = [](Length ahead, Length aside) {
        constexpr End out = End::corner_out;
        const Walk walk = lay_walk(
            std::vector{eave("A", feet(40) + ahead, out, out), eave("B", feet(5) + aside, out, out),
                        eave("C", feet(40), out, out), eave("D", feet(5), out, out)},
            {});
        return close_walk(walk).lies_within;
    };
    CHECK(lies_within(thirty_seconds(8), thirty_seconds(4)));
    CHECK_FALSE(lies_within(thirty_seconds(8), thirty_seconds(6)));
}

TEST_CASE("The ridge of a gable is no corner though a hip runs up to it") {
    std::vector<WalkedEdge> house = gable_house();
    for (WalkedEdge& edge : house) {
        edge.edge.right = edge.edge.kind == EdgeKind::gable ? End::hip : edge.edge.right;
    }
    const Closing closing = close_walk(lay_walk(house, {}));
    CHECK(closing.turn_left == Angle());
    CHECK(closing.lies_within);
}

TEST_CASE("A builder's angle is exact, another is good to half its last decimal") {
    const auto within = [](Angle stated) {
        std::vector<WalkedEdge> house = l_house();
        house[0].edge.corner_right = stated;
        return lay_walk(house, {}).sides[0].after.within;
    };
    for (const std::int64_t exact : {105'000'000, 112'500'000, 135'000'000, 67'500'000}) {
        CHECK(within(microdegrees(exact)) == Angle());
    }
    CHECK(within(degrees(96)) == microdegrees(500'000));
    CHECK(within(microdegrees(96'300'000)) == microdegrees(50'000));
}

TEST_CASE(
    "A side that nothing settles is drawn as long as the sides that were read are on the mean") {
    std::vector<WalkedEdge> house = l_house();
    house[1].length = feet(20);
    for (std::size_t i = 2; i < house.size(); ++i) {
        house[i].length.reset();
    }
    const Result<Outline> outline = trace_outline(house, {});
    REQUIRE(outline.ok());
    CHECK(outline->lines[2].length == LengthIs::guessed);
    CHECK(outline->lines[2].plan == feet(30));
}

}  // namespace
}  // namespace hemline::test
