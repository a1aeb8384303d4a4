// Bodies together: dormers, wings, porches and what stands on a roof, by hand; a wing as part of
// one walk and as a body of its own.
#include "engine/body/roof.h"
#include "engine/words/result.h"

#include <doctest/doctest.h>

#include <cmath>
#include <map>

#include "tests/engine/body/said_sides.h"

using namespace hemline;
using namespace hemline::test;

namespace {

constexpr double square_foot = foot * foot;

RoofBody main_house(const std::string& pitch = "6/12") {
    return {"main",
            {said_side("A", SideKind::eave, 40, pitch), said_side("B", SideKind::gable, 24),
             said_side("C", SideKind::eave, 40, pitch), said_side("D", SideKind::gable, 24)},
            {}};
}

/// A gable's front, two eaves that go on until they meet the host, its back open.
RoofBody gable_dormer(double wide, const std::string& pitch, double along, double up, double rise,
                      const std::string& id = "d") {
    return {
        id,
        {said_side(id + "1", SideKind::gable, wide), said_side(id + "2", SideKind::eave, 0, pitch),
         said_side(id + "3", SideKind::open, 0), said_side(id + "4", SideKind::eave, 0, pitch)},
        RunsInto{"A", in_feet(along), in_feet(up), in_feet(rise)}};
}

RoofBody shed_dormer(const std::string& pitch, SideKind cheeks = SideKind::gable) {
    return {"shed",
            {said_side("s1", SideKind::eave, 10, pitch), said_side("s2", cheeks, 0),
             said_side("s3", SideKind::open, 0), said_side("s4", cheeks, 0)},
            RunsInto{"A", in_feet(15), in_feet(2), in_feet(4)}};
}

Result<Roof> together(std::vector<RoofBody> bodies) { return work_out_roof(bodies, Tape()); }

double plan_of_all(const Roof& roof) {
    double area = 0;
    for (const BodyPlane& plane : roof.planes) {
        area += plane.plan_area;
    }
    return area;
}

const BodyPlane& plane_of(const Roof& roof, std::size_t side) {
    return *std::find_if(roof.planes.begin(), roof.planes.end(),
                         [&](const BodyPlane& plane) { return plane.side == side; });
}

std::string listed(const Roof& roof) {
    std::string text;
    for (const BodyEdge& edge : roof.edges) {
        text += edge.id + ' ' + std::string(word_of(edge.kind)) + ' ' +
                std::string(word_of(edge.left)) + ' ' + std::string(word_of(edge.right)) + '\n';
    }
    return text;
}

std::string why_not(const Result<Roof>& roof) { return roof ? "" : roof.problem().what.english(); }

}  // namespace

TEST_CASE("A gable dormer: two valleys, the ridge's end, and a hole with its walls") {
    // The front stands 4 ft up the slope of 6 in 12, its eaves 4 ft over the host's: they meet the
    // host 8 ft up. Its ridge is 4 ft × 4/12 higher, at 5 ft 4 in, and meets it 10 ft 8 in up.
    const auto roof = together({main_house(), gable_dormer(8, "4/12", 16, 4, 4)});
    REQUIRE_MESSAGE(roof.ok(), why_not(roof));
    CHECK(listed(*roof) ==
          "A eave gable gable\n"
          "B gable eave ridge\n"
          "E gable eave ridge\n"
          "C eave gable gable\n"
          "D gable eave ridge\n"
          "F gable eave ridge\n"
          "d1 gable eave ridge\n"
          "G gable eave ridge\n"
          "d2 eave gable wall\n"
          "d4 eave wall gable\n"
          "H ridge gable gable\n"
          "J ridge gable valley\n"
          "K valley eave ridge\n"
          "L valley eave ridge\n"
          "M headwall corner_out corner_out\n"
          "N sidewall corner_out valley\n"
          "P sidewall corner_out valley\n");
    for (const char* eave : {"d2", "d4"}) {
        CHECK(edge_of(*roof, eave).length / foot == doctest::Approx(4));
    }
    CHECK(edge_of(*roof, "J").length / foot == doctest::Approx(10 + 2.0 / 3 - 4));
    for (const char* valley : {"K", "L"}) {
        const BodyEdge& it = edge_of(*roof, valley);
        const double in = 2 + 2.0 / 3, up = 4 * 4 / 12.0;
        CHECK(it.length / foot == doctest::Approx(std::sqrt(16 + in * in + up * up)));
        CHECK(it.from.z / foot == doctest::Approx(4));
        CHECK(*it.corner_degrees == doctest::Approx(270));
        CHECK(it.off > 0);
    }
    CHECK(edge_of(*roof, "M").length / foot == doctest::Approx(8));
    CHECK(edge_of(*roof, "M").from.z / foot == doctest::Approx(2));
    CHECK(edge_of(*roof, "N").length / foot == doctest::Approx(4 * std::sqrt(1.25)));
    const double hole = 8 * 4 + 8 * (2 + 2.0 / 3) / 2;
    CHECK(plane_of(*roof, 0).plan_area / square_foot == doctest::Approx(480 - hole));
    CHECK(plane_of(*roof, 0).deck_area / square_foot ==
          doctest::Approx((480 - hole) * std::sqrt(1.25)));
    REQUIRE(plane_of(*roof, 0).holes.size() == 1);
    CHECK(plane_of(*roof, 0).holes[0].size() == 5);
    CHECK(plane_of(*roof, 0).pieces.size() == 1);
    CHECK(plane_of(*roof, 4 + 1).plan_area / square_foot == doctest::Approx(hole / 2));
    CHECK(plan_of_all(*roof) / square_foot == doctest::Approx(960));
    CHECK(edge_of(*roof, "K").planes == std::vector<std::size_t>{5, 0});
}

TEST_CASE("A wing is the same roof in one walk with its house, and as a body that runs in") {
    const auto in_one = work_out_body(
        std::vector<BodySide>{
            said_side("A", SideKind::eave, 12, "6/12", square_in),
            said_side("E", SideKind::eave, 10, "6/12"), said_side("F", SideKind::gable, 16),
            said_side("G", SideKind::eave, 10, "6/12", square_in),
            said_side("H", SideKind::eave, 12, "6/12"), said_side("B", SideKind::gable, 24),
            said_side("C", SideKind::eave, 40, "6/12"), said_side("D", SideKind::gable, 24)},
        Tape());
    const auto apart = together({main_house(), gable_dormer(16, "6/12", 12, -10, 0)});
    REQUIRE(in_one);
    REQUIRE_MESSAGE(apart.ok(), why_not(apart));
    for (const EdgeKind kind : {EdgeKind::ridge, EdgeKind::valley, EdgeKind::gable}) {
        const auto of_one = edges_of(*in_one, kind), of_two = edges_of(*apart, kind);
        REQUIRE(of_one.size() == of_two.size());
        for (const BodyEdge& edge : of_one) {
            CHECK(std::any_of(of_two.begin(), of_two.end(), [&](const BodyEdge& other) {
                // A ridge's left depends on which of its eaves is walked first.
                const bool ends = other.left == edge.left && other.right == edge.right;
                const bool turned =
                    kind == EdgeKind::ridge && other.left == edge.right && other.right == edge.left;
                return std::abs(other.length / edge.length - 1) < 1e-8 && (ends || turned) &&
                       other.corner_degrees.has_value() == edge.corner_degrees.has_value() &&
                       std::abs(other.corner_degrees.value_or(0) -
                                edge.corner_degrees.value_or(0)) < 1e-6;
            }));
        }
    }
    // The host's eave is in two pieces, which end at inside corners.
    const auto eaves = edges_of(*apart, EdgeKind::eave);
    REQUIRE(eaves.size() == 5);
    CHECK(eaves[0].length / foot == doctest::Approx(12));
    CHECK(eaves[0].right == End::corner_in);
    CHECK(eaves[1].left == End::corner_in);
    CHECK(eaves[0].id == "A");
    CHECK(plan_of_all(*apart) / plan_of_all(*in_one) == doctest::Approx(1));
    CHECK(edges_of(*apart, EdgeKind::headwall).empty());
    CHECK(edges_of(*apart, EdgeKind::sidewall).empty());
}

TEST_CASE("A wing as wide as its house ends at its ridge, though a tape says a hair more") {
    for (const double more : {0.0, 0.25 / 12, -0.25 / 12}) {
        const auto roof = together({main_house(), gable_dormer(24 + more, "6/12", 8, -6, 0)});
        REQUIRE_MESSAGE(roof.ok(), why_not(roof));
        const auto ridges = edges_of(*roof, EdgeKind::ridge);
        REQUIRE(ridges.size() == 2);
        CHECK(ridges[0].length / foot == doctest::Approx(40));
        CHECK(ridges[1].length / foot == doctest::Approx(18).epsilon(0.002));
        for (const BodyEdge& valley : edges_of(*roof, EdgeKind::valley)) {
            CHECK(valley.length / foot == doctest::Approx(18).epsilon(0.002));  // 18.00 in a foot
            CHECK(valley.right == End::ridge);
        }
        CHECK(edges_of(*roof, EdgeKind::valley).size() == 2);
        CHECK(plan_of_all(*roof) / square_foot ==
              doctest::Approx(960 + 6 * (24 + more)).epsilon(1e-6));
    }
}

TEST_CASE("Eaves beside a wing lie in one line, though its sides were read a hair apart") {
    const auto wing = [](double other) {
        return work_out_body(
            std::vector<BodySide>{
                said_side("A", SideKind::eave, 12, "6/12", square_in),
                said_side("E", SideKind::eave, 10, "6/12"), said_side("F", SideKind::gable, 16),
                said_side("G", SideKind::eave, 10 + other / 12, "6/12", square_in),
                said_side("H", SideKind::eave, 12, "6/12"), said_side("B", SideKind::gable, 24),
                said_side("C", SideKind::eave, 40, "6/12"), said_side("D", SideKind::gable, 24)},
            Tape());
    };
    for (const double inches_more : {0.0, 0.0625, -0.125}) {
        const auto roof = wing(inches_more);
        REQUIRE(roof);
        REQUIRE(roof->closes);
        CHECK(roof->planes.size() == 4);
        CHECK(roof->planes[0].eaves == std::vector<std::size_t>{0, 4});
        const auto ridges = edges_of(*roof, EdgeKind::ridge);
        REQUIRE(ridges.size() == 2);
        CHECK(std::max(ridges[0].length, ridges[1].length) / foot == doctest::Approx(40));
        CHECK(edges_of(*roof, EdgeKind::hip).empty());
        CHECK(edges_of(*roof, EdgeKind::gable).size() == 6);
        for (const BodyEdge& edge : roof->edges) {
            CHECK(edge.off < inches(1).nm());
        }
    }
}

TEST_CASE("A wing with a lower eave goes under the host's eave at its wall") {
    // Rise 2 ft lower, 6 in 12, 16 ft wide: 4 ft in from its own eave the wing is as high as the
    // host's eave; from there valleys run in, and outside them sidewalls lie on the wing.
    const auto roof = together({main_house(), gable_dormer(16, "6/12", 12, -10, -2)});
    REQUIRE_MESSAGE(roof.ok(), why_not(roof));
    const auto walls = edges_of(*roof, EdgeKind::sidewall);
    REQUIRE(walls.size() == 2);
    CHECK(walls[0].length / foot == doctest::Approx(4 * std::sqrt(1.25)));
    CHECK(walls[0].from.z / foot == doctest::Approx(-2));
    const auto valleys = edges_of(*roof, EdgeKind::valley);
    REQUIRE(valleys.size() == 2);
    CHECK(valleys[0].length / foot == doctest::Approx(4 * 1.5));  // 18.00 in per foot of run
    const auto eaves = edges_of(*roof, EdgeKind::eave);
    CHECK(std::count_if(eaves.begin(), eaves.end(), [](const BodyEdge& eave) {
              return std::abs(eave.length / foot - 10) < 1e-6;
          }) == 2);
    CHECK(std::count_if(eaves.begin(), eaves.end(), [](const BodyEdge& eave) {
              return std::abs(eave.length / foot - 16) < 1e-6;  // of 40 ft, 8 ft of wing between
          }) == 2);
}

TEST_CASE("A shed dormer meets its host in a level line: a transition, the lower roof first") {
    // Up 2 ft and at 4 ft: 2 in 12 meets 6 in 12 where 4 + 2/12·x = (2 + x)·6/12, x = 9 ft.
    const auto roof = together({main_house(), shed_dormer("2/12")});
    REQUIRE_MESSAGE(roof.ok(), why_not(roof));
    const auto met = edges_of(*roof, EdgeKind::transition);
    REQUIRE(met.size() == 1);
    CHECK(met[0].length / foot == doctest::Approx(10));
    CHECK(met[0].from.y / foot == doctest::Approx(11));
    CHECK(met[0].planes == std::vector<std::size_t>{4, 0});
    CHECK(edge_of(*roof, "s2").kind == EdgeKind::gable);
    CHECK(edge_of(*roof, "s2").length / foot == doctest::Approx(9 * std::hypot(1, 2 / 12.0)));
    REQUIRE(edges_of(*roof, EdgeKind::sidewall).size() == 2);
    CHECK(edges_of(*roof, EdgeKind::sidewall)[0].right == End::open);
    CHECK(edges_of(*roof, EdgeKind::headwall).size() == 1);
}

TEST_CASE("A porch under an eave: the eave lies on its transition") {
    RoofBody porch = {
        "porch",
        {said_side("p1", SideKind::eave, 40, "3/12"), said_side("p2", SideKind::gable, 8),
         said_side("p3", SideKind::transition, 40), said_side("p4", SideKind::gable, 8)},
        {}};
    porch.sides[2].meets = "A";
    for (const bool porch_first : {false, true}) {
        const auto roof = porch_first ? together({porch, main_house("8/12")})
                                      : together({main_house("8/12"), porch});
        REQUIRE_MESSAGE(roof.ok(), why_not(roof));
        const BodyEdge& met = edge_of(*roof, "p3");
        CHECK(met.kind == EdgeKind::transition);
        CHECK(met.length / foot == doctest::Approx(40));
        const std::size_t upper = porch_first ? 4 : 0, lower = porch_first ? 0 : 4;
        CHECK(met.planes == std::vector<std::size_t>{lower, upper});
        CHECK(std::none_of(roof->edges.begin(), roof->edges.end(),
                           [](const BodyEdge& edge) { return edge.id == "A"; }));
        CHECK(plan_of_all(*roof) / square_foot == doctest::Approx(40 * 24 + 40 * 8));
        CHECK(edge_of(*roof, "p1").from.z / foot == doctest::Approx(porch_first ? 0 : -2));
    }
    // Half as long, it leaves the other half an eave.
    porch.sides[0].length = porch.sides[2].length = in_feet(20);
    const auto half = together({main_house("8/12"), porch});
    REQUIRE_MESSAGE(half.ok(), why_not(half));
    CHECK(edge_of(*half, "A").length / foot == doctest::Approx(20));
    CHECK(edge_of(*half, "p3").length / foot == doctest::Approx(20));
}

TEST_CASE("A porch as long as it is said lies along its host's eave, whatever up and rise say") {
    RoofBody porch = {
        "porch",
        {said_side("p1", SideKind::eave, 16, "3/12"), said_side("p2", SideKind::gable, 8),
         said_side("p3", SideKind::transition, 16), said_side("p4", SideKind::gable, 8)},
        RunsInto{"A", in_feet(10), in_feet(-7), in_feet(0)}};
    porch.sides[2].meets = "A";
    for (const bool porch_first : {false, true}) {
        const auto roof = porch_first ? together({porch, main_house("8/12")})
                                      : together({main_house("8/12"), porch});
        REQUIRE_MESSAGE(roof.ok(), why_not(roof));
        CHECK(edge_of(*roof, "p3").kind == EdgeKind::transition);
        CHECK(edge_of(*roof, "p3").length / foot == doctest::Approx(16));
        // The eave is 10 ft before it, and 14 ft after.
        CHECK(edge_of(*roof, "A").length / foot == doctest::Approx(10));
        const auto eaves = edges_of(*roof, EdgeKind::eave);
        CHECK(std::any_of(eaves.begin(), eaves.end(), [](const BodyEdge& eave) {
            return std::abs(eave.length / foot - 14) < 1e-9;
        }));
        CHECK(edge_of(*roof, "A").from.z / foot - edge_of(*roof, "p1").from.z / foot ==
              doctest::Approx(2));  // 8 ft at 3 in 12
    }
}

TEST_CASE("A porch with hipped ends ends at the wall where it is lower than the eave on it") {
    RoofBody porch = {
        "porch",
        {said_side("p1", SideKind::eave, 40, "3/12"), said_side("p2", SideKind::eave, 8, "3/12"),
         said_side("p3", SideKind::transition, 40), said_side("p4", SideKind::eave, 8, "3/12")},
        {}};
    porch.sides[2].meets = "A";
    const auto roof = together({main_house("8/12"), porch});
    REQUIRE_MESSAGE(roof.ok(), why_not(roof));
    // Hips of one pitch run 8 ft in: 24 ft are left level, and the eave beside them.
    const auto met = edges_of(*roof, EdgeKind::transition);
    REQUIRE(met.size() == 1);
    CHECK(met[0].length / foot == doctest::Approx(24));
    CHECK(met[0].planes.size() == 2);
    const auto walls = edges_of(*roof, EdgeKind::sidewall);
    REQUIRE(walls.size() == 2);
    for (const BodyEdge& wall : walls) {
        CHECK(wall.length / foot == doctest::Approx(std::hypot(8, 2)));
    }
    CHECK(edge_of(*roof, "p2").right == End::wall);
    CHECK(edge_of(*roof, "A").length / foot == doctest::Approx(8));
    CHECK(edges_of(*roof, EdgeKind::hip).size() == 2);
}

TEST_CASE("What stands on a roof has a headwall below, sidewalls, and a curb head above") {
    const std::vector<BodySide> four = {
        said_side("h1", SideKind::eave, 4, "12/12"), said_side("h2", SideKind::eave, 4, "12/12"),
        said_side("h3", SideKind::eave, 4, "12/12"), said_side("h4", SideKind::eave, 4, "12/12")};
    const auto roof = together(
        {main_house(), {"hood", four, RunsInto{"A", in_feet(18), in_feet(4), in_feet(5)}}});
    REQUIRE_MESSAGE(roof.ok(), why_not(roof));
    CHECK(edges_of(*roof, EdgeKind::headwall).size() == 1);
    CHECK(edges_of(*roof, EdgeKind::sidewall).size() == 2);
    const auto heads = edges_of(*roof, EdgeKind::curb_head);
    REQUIRE(heads.size() == 1);
    CHECK(heads[0].from.z / foot == doctest::Approx(4));
    CHECK(plane_of(*roof, 0).plan_area / square_foot == doctest::Approx(480 - 16));
    // Across the ridge both of the house's roofs have walls.
    const auto over = together(
        {main_house(), {"hood", four, RunsInto{"A", in_feet(18), in_feet(10), in_feet(7)}}});
    REQUIRE_MESSAGE(over.ok(), why_not(over));
    CHECK(edges_of(*over, EdgeKind::headwall).size() == 2);
    CHECK(edges_of(*over, EdgeKind::sidewall).size() == 4);
    CHECK(edges_of(*over, EdgeKind::ridge).size() == 2);
    CHECK(plan_of_all(*over) / square_foot == doctest::Approx(960));
}

TEST_CASE("What never meets its host, lies under it, or has none is said by name") {
    CHECK(why_not(together({main_house(), shed_dormer("7/12")})) ==
          "Body shed never meets the roof above A, into which it runs.");
    CHECK(why_not(together({main_house(), gable_dormer(12, "12/12", 14, 2, 4)})) ==
          "Body d goes on past the roof above A, into which it runs.");
    CHECK(why_not(together({main_house(), gable_dormer(8, "4/12", 16, 4, 0)})) ==
          "Body d lies under another roof.");
    RoofBody lost = gable_dormer(8, "4/12", 16, 4, 4);
    lost.host->eave = "X";
    CHECK(why_not(together({main_house(), lost})) == "X is no eave of another body.");
    RoofBody one = gable_dormer(8, "4/12", 16, 4, 4, "e"), other = gable_dormer(8, "4/12", 1, 4, 4);
    one.host->eave = "d2";
    other.host->eave = "e2";
    CHECK(why_not(together({one, other})) == "Body e runs into a roof that runs into it.");
    RoofBody wide = main_house();
    wide.sides[0].length = in_feet(44);
    const auto open = together({wide, gable_dormer(8, "4/12", 16, 4, 4)});
    REQUIRE(open);
    CHECK_FALSE(open->closes);
    CHECK(static_cast<double>(open->miss.nm()) == doctest::Approx(4 * foot));
}

TEST_CASE("What hangs past the end of its host's eave is said, with the side that it hangs past") {
    // Its own eave lies 1 ft below the host's, and it goes 2 ft past A's left or right end, or not.
    const auto lower = [](double along) {
        return why_not(together({main_house(), gable_dormer(8, "4/12", along, -3, -1)}));
    };
    CHECK(lower(0) == "");
    CHECK(lower(32) == "");
    CHECK(lower(-2) ==
          "Body d hangs past side D, where the roof above A ends, into which it runs.");
    CHECK(lower(34) ==
          "Body d hangs past side B, where the roof above A ends, into which it runs.");
    // Beside its host it does not lie under it.
    CHECK(lower(-9) ==
          "Body d hangs past side D, where the roof above A ends, into which it runs.");
}

TEST_CASE("A dormer with its lengths said is the same roof as one without") {
    RoofBody said = gable_dormer(8, "4/12", 16, 4, 4);
    said.sides[1].length = said.sides[3].length = in_feet(4);  // as far as its eaves go
    said.sides[2].length = in_feet(8);
    const auto roof = together({main_house(), said});
    REQUIRE_MESSAGE(roof.ok(), why_not(roof));
    CHECK(edges_of(*roof, EdgeKind::valley).size() == 2);
    CHECK(edge_of(*roof, "d2").length / foot == doctest::Approx(4));
    CHECK(plane_of(*roof, 5).plan_area / square_foot ==
          doctest::Approx((8 * 4 + 8 * (2 + 2.0 / 3) / 2) / 2));
}
