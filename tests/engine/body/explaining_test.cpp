// Readings that teach the roof: the pitch or side that explains what inner edges read.
#include "engine/body/explaining.h"

#include <doctest/doctest.h>

#include "engine/roof/nearest.h"
#include "engine/words/result.h"
#include "tests/engine/body/said_sides.h"

using namespace hemline;
using namespace hemline::test;

namespace {

/// 40 × 24 ft with hips; D is not read.
RoofBody hip_house(const std::string& pitch, double width) {
    RoofBody body = {
        "",
        {said_side("A", SideKind::eave, 40, pitch), said_side("B", SideKind::eave, width, pitch),
         said_side("C", SideKind::eave, 40, pitch), said_side("D", SideKind::eave, 0, pitch)},
        {}};
    return body;
}

/// What somebody reads of the inner edges of one roof who takes it for another.
std::vector<EdgeRead> read_on(const RoofBody& real, const Roof& taken_for) {
    const auto roof = work_out_roof(std::span(&real, 1), Tape());
    REQUIRE(roof);
    std::vector<EdgeRead> readings;
    for (const BodyEdge& edge : taken_for.edges) {
        const auto same =
            std::find_if(roof->edges.begin(), roof->edges.end(),
                         [&](const BodyEdge& other) { return other.sides == edge.sides; });
        if (edge.sides.size() == 2 && same != roof->edges.end()) {
            readings.push_back({edge, nearest_on(nearest_nm(same->length), sixteenths(1))});
        }
    }
    return readings;
}

std::vector<Explanation> explained(const RoofBody& said, const RoofBody& real) {
    const auto roof = work_out_roof(std::span(&said, 1), Tape());
    REQUIRE(roof);
    return what_explains(std::span(&said, 1), Tape(), read_on(real, *roof));
}

}  // namespace

TEST_CASE("Hips of another pitch than the one said name that pitch") {
    const auto found = explained(hip_house("6/12", 24), hip_house("8/12", 24));
    REQUIRE(found.size() == 1);
    REQUIRE(found[0].pitch);
    CHECK(*found[0].pitch == rise_in_12(6));
    CHECK(found[0].pitch_instead == rise_in_12(8));
    CHECK(found[0].sides == std::vector<std::size_t>{0, 1, 2, 3});
    CHECK(found[0].misfit < 0.2);
}

TEST_CASE("A width a foot off, which the open side D does not hold, is named with its length") {
    const auto found = explained(hip_house("6/12", 24), hip_house("6/12", 25));
    REQUIRE(found.size() == 1);
    CHECK_FALSE(found[0].pitch);
    CHECK(found[0].sides == std::vector<std::size_t>{1});
    CHECK(std::abs(found[0].length_instead.nm() - feet(25).nm()) < inches(1).nm() / 8);
}

TEST_CASE("Readings that agree with the roof, or one alone that does not, teach nothing") {
    CHECK(explained(hip_house("6/12", 24), hip_house("6/12", 24)).empty());
    const RoofBody said = hip_house("6/12", 24);
    const auto roof = work_out_roof(std::span(&said, 1), Tape());
    auto readings = read_on(said, *roof);
    readings[0].length += feet(1);
    CHECK(what_explains(std::span(&said, 1), Tape(), readings).empty());
    auto one_hip = read_on(hip_house("8/12", 24), *roof);
    one_hip.resize(1);
    CHECK(what_explains(std::span(&said, 1), Tape(), one_hip).empty());
    readings = read_on(said, *roof);
    readings[0].length += feet(1);
    // Two that contradict one another are explained by nothing.
    readings[1].length += -feet(1);
    CHECK(what_explains(std::span(&said, 1), Tape(), readings).empty());
}

TEST_CASE("Of two pitches the one that its own hips point to is named") {
    RoofBody said = hip_house("6/12", 24), real = said;
    said.sides[1].pitch = real.sides[1].pitch = *parse_slope("9/12");
    real.sides[1].pitch = *parse_slope("12/12");
    const auto found = explained(said, real);
    REQUIRE_FALSE(found.empty());
    REQUIRE(found[0].pitch);
    CHECK(found[0].sides == std::vector<std::size_t>{1});
    CHECK(found[0].pitch_instead == rise_in_12(12));
}
