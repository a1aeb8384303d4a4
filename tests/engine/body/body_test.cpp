// The roof that a walk makes: edges, ends, true lengths and how far they may be off.
#include "engine/body/body.h"
#include "engine/words/result.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "tests/engine/body/said_sides.h"

using namespace hemline;
using namespace hemline::test;

namespace {

std::vector<BodySide> rectangle(SideKind ends, const std::string& pitch, double length = 40,
                                double width = 24) {
    const std::string of_ends = is_upright(ends) ? "" : pitch;
    return {said_side("A", SideKind::eave, length, pitch), said_side("B", ends, width, of_ends),
            said_side("C", SideKind::eave, length, pitch), said_side("D", ends, width, of_ends)};
}

}  // namespace

TEST_CASE("Hips are as long as the framing square says, by the foot of run") {
    // Length of hip or valley rafter per foot of run, as stamped on framing squares (TRADE: a table
    // in every carpentry handbook; here computed as it is there, sqrt(12² + 12² + rise²) in
    // inches).
    const std::pair<const char*, double> table[] = {
        {"2/12", 17.09},  {"3/12", 17.23},  {"4/12", 17.44}, {"5/12", 17.69},  {"6/12", 18.00},
        {"7/12", 18.36},  {"8/12", 18.76},  {"9/12", 19.21}, {"10/12", 19.70}, {"11/12", 20.22},
        {"12/12", 20.78}, {"15/12", 22.65}, {"18/12", 24.74}};
    for (const auto& [pitch, inches] : table) {
        const auto body = work_out_body(rectangle(SideKind::eave, pitch), Tape());
        REQUIRE(body);
        REQUIRE(body->edges.size() == 9);
        const BodyEdge& hip = edge_of(*body, "E");
        CHECK(hip.kind == EdgeKind::hip);
        CHECK(hip.length / foot * 12 / 12 == doctest::Approx(inches).epsilon(0.0005));
        CHECK(*hip.corner_degrees == doctest::Approx(90));
        CHECK(hip.left == End::eave);
        CHECK(hip.right == End::ridge);
    }
}

TEST_CASE("A gable's end gives two slopes, of which the first keeps its name") {
    const auto body = work_out_body(rectangle(SideKind::gable, "6/12"), Tape());
    REQUIRE(body);
    std::string order;
    for (const BodyEdge& edge : body->edges) {
        order += edge.id + ' ' + std::string(word_of(edge.kind)) + ' ' +
                 std::string(word_of(edge.left)) + ' ' + std::string(word_of(edge.right)) + '\n';
    }
    CHECK(order ==
          "A eave gable gable\n"
          "B gable eave ridge\n"
          "E gable eave ridge\n"
          "C eave gable gable\n"
          "D gable eave ridge\n"
          "F gable eave ridge\n"
          "G ridge gable gable\n");
    CHECK(edge_of(*body, "B").length / foot == doctest::Approx(12 * std::sqrt(1.25)));
    REQUIRE(body->planes.size() == 2);
    CHECK(body->planes[0].deck_area == doctest::Approx(480 * std::sqrt(1.25) * foot * foot));
}

TEST_CASE("Walls have sidewalls and a headwall; a high side ends a lean-to") {
    const std::vector<BodySide> against_a_wall = {
        said_side("A", SideKind::eave, 20, "4/12"), said_side("B", SideKind::wall, 9),
        said_side("C", SideKind::wall, 20), said_side("D", SideKind::gable, 9)};
    const auto body = work_out_body(against_a_wall, Tape());
    REQUIRE(body);
    CHECK(edge_of(*body, "B").kind == EdgeKind::sidewall);
    CHECK(edge_of(*body, "C").kind == EdgeKind::headwall);
    CHECK(edge_of(*body, "C").left == End::gable);  // from below, D is on the left
    CHECK(edge_of(*body, "C").right == End::wall);
    CHECK(edge_of(*body, "D").kind == EdgeKind::gable);
    CHECK(edge_of(*body, "A").left == End::gable);
    CHECK(edge_of(*body, "A").right == End::wall);
    std::vector<BodySide> lean_to = against_a_wall;
    lean_to[1].kind = SideKind::gable;
    lean_to[2].kind = SideKind::high_eave;
    const auto high = work_out_body(lean_to, Tape());
    REQUIRE(high);
    CHECK(edge_of(*high, "C").kind == EdgeKind::high_eave);
    CHECK(edge_of(*high, "B").length / foot == doctest::Approx(9 * std::sqrt(10) / 3));
}

TEST_CASE("Unequal pitches turn the hip as hip_line says") {
    std::vector<BodySide> sides = rectangle(SideKind::eave, "4/12");
    sides[1].pitch = sides[3].pitch = *parse_slope("9/12");
    const auto body = work_out_body(sides, Tape());
    REQUIRE(body);
    const auto line = hip_line({*sides[0].pitch, *sides[1].pitch, square_out});
    REQUIRE(line);
    const BodyEdge& hip =
        *std::find_if(body->edges.begin(), body->edges.end(), [](const BodyEdge& edge) {
            return edge.kind == EdgeKind::hip && edge.sides == std::vector<std::size_t>{0, 1};
        });
    const Space way = hip.to - hip.from;
    CHECK(degrees_in(std::atan2(way.y, -way.x)) == doctest::Approx(line->from_eave1_degrees));
    CHECK(degrees_in(std::asin(way.z / length_of(way))) == doctest::Approx(line->slope_degrees));
}

TEST_CASE("How far a length may be off follows from the readings alone") {
    const auto body = work_out_body(rectangle(SideKind::gable, "6/12"), Tape());
    REQUIRE(body);
    // A ridge between gables is as long as its eaves: both readings of 40 ft count by half.
    const double tape =
        static_cast<double>(
            allowed_difference(nanometres(std::int64_t{40} * 304'800'000), Tape()).nm()) /
        2;
    CHECK(edge_of(*body, "G").off == doctest::Approx(tape).epsilon(1e-6));
    // A pitch read to a degree's tenth moves the slope less than one read to 1/16 in 12.
    const auto level = work_out_body(rectangle(SideKind::gable, "26.6deg"), Tape());
    REQUIRE(level);
    CHECK(edge_of(*level, "B").off < edge_of(*body, "B").off);
}

TEST_CASE("A width a hair over the length makes no ridge of a hair") {
    const auto body = work_out_body(rectangle(SideKind::eave, "6/12", 24 + 0.125 / 12, 24), Tape());
    REQUIRE(body);
    CHECK(std::none_of(body->edges.begin(), body->edges.end(),
                       [](const BodyEdge& edge) { return edge.kind == EdgeKind::ridge; }));
}

TEST_CASE("What makes no roof is said with its sides") {
    const auto of_walls = [](std::size_t high) {
        std::vector<BodySide> sides = rectangle(SideKind::gable, "6/12");
        sides[high].kind = SideKind::high_eave;
        return work_out_body(sides, Tape());
    };
    REQUIRE_FALSE(of_walls(1));
    CHECK(of_walls(1).problem().what.english() ==
          "The roof above side A meets the high eave B on a slope.");
    std::vector<BodySide> walls = rectangle(SideKind::wall, "6/12");
    walls[0].kind = walls[2].kind = SideKind::wall;
    REQUIRE_FALSE(work_out_body(walls, Tape()));
    CHECK(work_out_body(walls, Tape()).problem().what.english() ==
          "These sides do not make a roof: A, B, C, D.");
    std::vector<BodySide> skew = rectangle(SideKind::wall, "6/12");
    skew[0].corner = degrees(120);
    skew[1].corner = degrees(60);
    skew[2].corner = degrees(120);
    skew[3].corner = degrees(60);
    REQUIRE_FALSE(work_out_body(skew, Tape()));
    CHECK(work_out_body(skew, Tape()).problem().what.english() ==
          "The roof above side C falls toward side D, which is upright.");
    std::vector<BodySide> turned = rectangle(SideKind::eave, "6/12");
    turned[0].corner = degrees(270);
    REQUIRE_FALSE(work_out_body(turned, Tape()));
    CHECK(work_out_body(turned, Tape()).problem().what.english() ==
          "The turns of the walk make 180°, not 360°.");
    turned = rectangle(SideKind::eave, "6/12");
    turned[2].length = nanometres(static_cast<std::int64_t>(39 * foot));
    const auto open = work_out_body(turned, Tape());
    REQUIRE(open);
    CHECK_FALSE(open->closes);
    CHECK(static_cast<double>(open->miss.nm()) == doctest::Approx(foot));
    CHECK(open->edges.empty());
}
