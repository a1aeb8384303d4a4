// Bodies of a job that run into one another, worked out together: by hand, as in roof_test.cpp of
// engine/body, and what readings, names and pitches make of them.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>

#include "engine/work/roof_body.h"
#include "engine/work/roof_solid.h"
#include "tests/engine/trim/sections.h"

namespace hemline {
namespace {

SideWalked side_said(const char* id, SideKind kind, std::optional<Length> length = {}) {
    SideWalked side;
    side.id = id;
    side.kind = kind;
    side.length = length;
    return side;
}

/// 40 ft by 24 ft.
WalkedBody gable_house() {
    return {"1",
            {},
            {side_said("A", SideKind::eave, feet(40)), side_said("B", SideKind::gable, feet(24)),
             side_said("C", SideKind::eave), side_said("D", SideKind::gable)},
            true,
            {}};
}

WalkedBody on_house(const HostSaid& host, Length wide) {
    return {"2",
            {},
            {side_said("P", SideKind::gable, wide), side_said("Q", SideKind::eave),
             side_said("R", SideKind::open), side_said("S", SideKind::eave)},
            true,
            host};
}
/// Its front 4 ft up a roof of 6 in 12 and its eaves 4 ft over the house's.
WalkedBody dormer() { return on_house({"A", feet(16), feet(4), feet(4)}, feet(8)); }
/// 10 ft out, its eaves 2 ft lower.
WalkedBody wing() { return on_house({"A", feet(12), -feet(10), -feet(2)}, feet(16)); }

struct OnJob {
    std::vector<Event> events;
    Job job;

    void tell(const Fact& fact) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{1, number}, {1'000, number}, "Ada", {}, fact});
        job = replay(events);
    }
    void tell(const std::vector<Fact>& facts) {
        for (const Fact& fact : facts) {
            tell(fact);
        }
    }
    void read(const std::string& edge, Length length) {
        tell(ReadingTaken{edge, ReadingOf::edge, length});
    }
    [[nodiscard]] double feet_of(const std::string& edge) const {
        const auto expected = expected_of(roof_bodies(job), edge);
        REQUIRE_MESSAGE(expected, edge);
        return static_cast<double>(expected->length.nm()) / static_cast<double>(feet(1).nm());
    }
    [[nodiscard]] std::vector<std::string> of_kind(EdgeKind kind) const {
        std::vector<std::string> edges;
        for (const EdgeWork& work : job.edges) {
            if (work.edge.kind == kind) {
                edges.push_back(work.edge.id);
            }
        }
        return edges;
    }
};

OnJob house_with(const WalkedBody& body, Slope pitch) {
    OnJob on;
    on.tell(facts_of_walk(on.job, gable_house(), rise_in_12(6), catalogue_of_assets()));
    on.tell(facts_of_walk(on.job, body, pitch, catalogue_of_assets()));
    return on;
}

bool is_whole(const OnJob& on) {
    const std::vector<BodyOnJob> roofs = roof_bodies(on.job);
    return roofs.size() == 1 && roofs[0].worked && !roofs[0].problem &&
           roofs[0].without_place.empty() &&
           lacking_edges(on.job, roofs[0], catalogue_of_assets()).empty();
}

double square_feet_of(const std::vector<Facet>& facets, std::size_t leg) {
    double area = 0;
    for (const Facet& facet : facets) {
        if (facet.leg == leg) {
            area += length_of(cross(facet.corners[1] - facet.corners[0],
                                    facet.corners[2] - facet.corners[0])) /
                    2;
        }
    }
    return area * 400 / (304.8 * 304.8);
}

TEST_CASE("A dormer that names its host is one roof with it: every edge in its place") {
    const OnJob on = house_with(dormer(), rise_in_12(4));
    CHECK(is_whole(on));
    CHECK(on.job.edges.size() == 17);
    // As in roof_test.cpp: eaves meet the house 8 ft up, the ridge 10 ft 8 in up.
    CHECK(on.feet_of("Q") == doctest::Approx(4));
    CHECK(on.feet_of("S") == doctest::Approx(4));
    REQUIRE(on.of_kind(EdgeKind::ridge).size() == 2);
    CHECK(on.feet_of(on.of_kind(EdgeKind::ridge)[1]) == doctest::Approx(10 + 2.0 / 3 - 4));
    REQUIRE(on.of_kind(EdgeKind::valley).size() == 2);
    REQUIRE(on.of_kind(EdgeKind::sidewall).size() == 2);
    REQUIRE(on.of_kind(EdgeKind::headwall).size() == 1);
    const std::string headwall = on.of_kind(EdgeKind::headwall)[0];
    CHECK(on.feet_of(headwall) == doctest::Approx(8));
    CHECK(*on.job.find(headwall)->place == PlaceOnBody{"2", "P", "A", 0});
    const BodyOnJob roof = roof_bodies(on.job)[0];
    const double foot = static_cast<double>(feet(1).nm());
    CHECK(roof.worked->walk[4].from.x / foot == doctest::Approx(16));
    CHECK(roof.worked->walk[4].from.y / foot == doctest::Approx(4));
    CHECK(roof.worked->walk[4].to.x / foot == doctest::Approx(24));
}

TEST_CASE("Edges between two bodies have the pitches of the roofs they lie on") {
    const OnJob on = house_with(dormer(), rise_in_12(4));
    const auto edge = [&](EdgeKind kind) { return on.job.find(on.of_kind(kind)[0])->edge; };
    CHECK(edge(EdgeKind::valley).pitch == rise_in_12(4));
    CHECK(edge(EdgeKind::valley).pitch2 == rise_in_12(6));
    for (const EdgeKind on_house : {EdgeKind::headwall, EdgeKind::sidewall}) {
        CHECK(edge(on_house).pitch == rise_in_12(6));
    }
    CHECK(on.job.find("Q")->edge.pitch == rise_in_12(4));
    CHECK(on.job.find("P")->edge.pitch == rise_in_12(4));
    // An eave as the dormer's front: what stands on the house has the house's pitch all the same.
    WalkedBody hip = dormer();
    hip.sides[0].kind = SideKind::eave;
    const OnJob other = house_with(hip, rise_in_12(4));
    CHECK(is_whole(other));
    CHECK(other.job.find(other.of_kind(EdgeKind::headwall)[0])->edge.pitch == rise_in_12(6));
}

TEST_CASE("A wing cuts its host's eave in two, and both pieces' readings leave the house as long") {
    OnJob on = house_with(wing(), rise_in_12(6));
    CHECK(is_whole(on));
    const SideWalked eave = on.job.bodies[0].sides[0];
    REQUIRE(eave.edges.size() == 2);
    CHECK(eave.edges[0] == "A");
    // 2 ft lower at 6 in 12, the wing is as high as the house's eave 4 ft in: 8 ft are cut out.
    CHECK(on.feet_of("A") == doctest::Approx(16));
    CHECK(on.feet_of(eave.edges[1]) == doctest::Approx(16));
    CHECK(on.job.find("A")->edge.left == End::gable);
    CHECK(on.job.find("A")->edge.right == End::wall);  // before the wing was walked a gable
    CHECK(on.job.find("A")->edge.pitch == rise_in_12(6));
    const std::string ridge = on.of_kind(EdgeKind::ridge)[0];
    CHECK(on.feet_of(ridge) == doctest::Approx(40));
    on.read("A", feet(16));
    on.read(eave.edges[1], feet(16));
    CHECK(is_whole(on));
    CHECK(on.feet_of(ridge) == doctest::Approx(40));
    // The other long eave and both pieces a foot longer: so is the house.
    on.read("A", feet(17));
    on.read("C", feet(41));
    CHECK(is_whole(on));
    CHECK(on.feet_of(ridge) == doctest::Approx(41));
    CHECK(on.feet_of("A") == doctest::Approx(16));  // where the wing stands, nobody said otherwise
}

TEST_CASE("Readings of eaves that end at the host say nothing of how far they go under it") {
    OnJob on = house_with(dormer(), rise_in_12(4));
    on.read("Q", feet(4));
    on.read("S", feet(4) + inches(3));
    CHECK(is_whole(on));
    CHECK(on.feet_of("S") == doctest::Approx(4));
}

TEST_CASE("A body that fails on its host is said, and the house stays whole") {
    OnJob on;
    on.tell(facts_of_walk(on.job, gable_house(), rise_in_12(6), catalogue_of_assets()));
    on.tell(facts_of_walk(on.job, dormer(), rise_in_12(4), catalogue_of_assets()));
    WalkedBody past = on_house({"C", feet(25), feet(2), feet(4)}, feet(12));
    past.id = "3";
    for (SideWalked& side : past.sides) {
        side.id += "3";
    }
    const BodyOnJob alone = roof_body(on.job, past, rise_in_12(12));
    REQUIRE(alone.problem);
    CHECK(alone.problem->what.english() ==
          "Body 3 goes on past the roof above C, into which it runs.");
    CHECK_FALSE(alone.worked);
    CHECK(alone.corners.size() == 5);
    on.tell(facts_of_walk(on.job, past, rise_in_12(12), catalogue_of_assets()));
    on.tell(BodyWalked{"3", past.sides, true, past.host});
    const std::vector<BodyOnJob> roofs = roof_bodies(on.job);
    REQUIRE(roofs.size() == 2);
    CHECK(roofs[0].bodies.size() == 2);
    CHECK(roofs[0].worked);
    CHECK_FALSE(roofs[0].problem);
    CHECK(roofs[1].id == "3");
    CHECK(roofs[1].problem);
    CHECK_FALSE(roofs[1].worked);
}

TEST_CASE("A host that was taken off the job is named, and the body drawn as walked") {
    OnJob on = house_with(dormer(), rise_in_12(4));
    on.tell(BodyWalked{"1", {}, false, {}});
    const std::vector<BodyOnJob> roofs = roof_bodies(on.job);
    REQUIRE(roofs.size() == 1);
    REQUIRE(roofs[0].problem);
    CHECK(roofs[0].problem->what.english() == "A is no eave of another body.");
    CHECK(roofs[0].corners.size() == 5);
}

TEST_CASE("An edge between bodies is the one's that runs in, whichever was walked first") {
    OnJob on;
    const Result<std::vector<Fact>> facts = [&] {
        WalkedBody house = gable_house(), second = dormer();
        house.sides[0].pitch = house.sides[2].pitch = rise_in_12(6);
        second.sides[1].pitch = second.sides[3].pitch = rise_in_12(4);
        return facts_of_walks(on.job, {second, house}, catalogue_of_assets());
    }();
    REQUIRE(facts);
    on.tell(*facts);
    CHECK(is_whole(on));
    REQUIRE(on.of_kind(EdgeKind::valley).size() == 2);
    for (const std::string& valley : on.of_kind(EdgeKind::valley)) {
        CHECK(on.job.find(valley)->place->body == "2");
        CHECK(on.job.find(valley)->edge.pitch == rise_in_12(4));
    }
    CHECK(on.feet_of("Q") == doctest::Approx(4));
}

TEST_CASE("An eave that lies on a porch's transition is that edge, with both pitches") {
    OnJob on;
    on.tell(facts_of_walk(on.job, gable_house(), rise_in_12(8), catalogue_of_assets()));
    WalkedBody porch = {
        "2",
        {},
        {side_said("P", SideKind::eave, feet(20)), side_said("Q", SideKind::gable, feet(8)),
         side_said("R", SideKind::transition, feet(20)), side_said("S", SideKind::gable)},
        true,
        {}};
    porch.sides[2].meets = "A";
    on.tell(facts_of_walk(on.job, porch, rise_in_12(3), catalogue_of_assets()));
    CHECK(is_whole(on));
    CHECK(on.feet_of("R") == doctest::Approx(20));
    CHECK(on.feet_of("A") == doctest::Approx(20));
    CHECK(on.job.find("R")->edge.kind == EdgeKind::transition);
    CHECK(on.job.find("R")->edge.pitch == rise_in_12(3));
    CHECK(on.job.find("R")->edge.pitch2 == rise_in_12(8));
    CHECK(on.job.find("A")->edge.pitch == rise_in_12(8));
    // Half of the eave is read, half lies on the porch.
    on.read("A", feet(20));
    CHECK(is_whole(on));
    CHECK(on.feet_of(on.of_kind(EdgeKind::ridge)[0]) == doctest::Approx(40));
}

TEST_CASE("A transition has the lower roof's pitch first, whichever is walked first or runs in") {
    OnJob on;
    on.tell(facts_of_walk(on.job, gable_house(), rise_in_12(8), catalogue_of_assets()));
    WalkedBody porch = {
        "2",
        {},
        {side_said("R", SideKind::transition, feet(20)), side_said("S", SideKind::gable, feet(8)),
         side_said("P", SideKind::eave, feet(20)), side_said("Q", SideKind::gable)},
        true,
        {}};
    porch.sides[0].meets = "A";
    on.tell(facts_of_walk(on.job, porch, rise_in_12(3), catalogue_of_assets()));
    CHECK(on.feet_of("R") == doctest::Approx(20));
    CHECK(on.job.find("R")->place->side == "P");
    CHECK(on.job.find("R")->edge.pitch == rise_in_12(3));
    CHECK(on.job.find("R")->edge.pitch2 == rise_in_12(8));

    // A steeper roof that comes out of the house's, 6 ft up, and goes on to its ridge: its own eave
    // is nowhere seen.
    OnJob upper;
    upper.tell(facts_of_walk(upper.job, gable_house(), rise_in_12(4), catalogue_of_assets()));
    WalkedBody steeper = {
        "2",
        {},
        {side_said("P", SideKind::eave, feet(16)), side_said("Q", SideKind::gable, feet(8)),
         side_said("R", SideKind::high_eave), side_said("S", SideKind::gable)},
        true,
        HostSaid{"A", feet(12), feet(4), {}}};
    steeper.sides[0].pitch = rise_in_12(12);
    upper.tell(facts_of_walk(upper.job, steeper, {}, catalogue_of_assets()));
    const std::vector<std::string> above = upper.of_kind(EdgeKind::transition);
    REQUIRE(above.size() == 1);
    CHECK(upper.job.find(above[0])->place->side == "A");
    CHECK(upper.job.find(above[0])->edge.pitch == rise_in_12(4));
    // As jobs from before have it, it is still that edge.
    upper.tell(EdgePlaced{above[0], {"2", "P", "A", 0}});
    CHECK(upper.feet_of(above[0]) == doctest::Approx(16));

    // A shed dormer's top comes up to the house's roof: there the house is the upper one.
    OnJob shed;
    shed.tell(facts_of_walk(shed.job, gable_house(), rise_in_12(8), catalogue_of_assets()));
    WalkedBody dormer_shed = dormer();
    dormer_shed.sides[0].kind = SideKind::eave;
    dormer_shed.sides[1].kind = dormer_shed.sides[3].kind = SideKind::gable;
    shed.tell(facts_of_walk(shed.job, dormer_shed, rise_in_12(2), catalogue_of_assets()));
    const std::vector<std::string> below = shed.of_kind(EdgeKind::transition);
    REQUIRE(below.size() == 1);
    CHECK(shed.job.find(below[0])->edge.pitch == rise_in_12(2));
    CHECK(shed.job.find(below[0])->edge.pitch2 == rise_in_12(8));
}

TEST_CASE("What a roof lacked on purpose it goes on lacking when another is walked on it") {
    OnJob on;
    on.tell(facts_of_walk(on.job, gable_house(), rise_in_12(6), catalogue_of_assets()));
    on.tell(EdgeTakenOff{on.of_kind(EdgeKind::ridge)[0]});
    on.tell(facts_of_walk(on.job, dormer(), rise_in_12(4), catalogue_of_assets()));
    CHECK(on.of_kind(EdgeKind::ridge).size() == 1);
    CHECK(on.job.edges.size() == 16);
}

// Decks by hand: planes seen in plan, by 1 / cos of their pitches. The dormer's front is 8 ft by
// the 2 ft from the house's roof to its eave, and its gable; its cheeks are triangles, 4 ft in plan
// and 2 ft high where they are highest.
TEST_CASE("A dormer's solid stands on the house, which has a hole there") {
    const OnJob on = house_with(dormer(), rise_in_12(4));
    const std::vector<BodyOnJob> roofs = roof_bodies(on.job);
    const std::vector<Facet> solid = roof_solid(roofs);
    const double hole = 8 * 4 + 8 * (2 + 2.0 / 3) / 2;
    const double deck = (960 - hole) * std::sqrt(1.25) + hole * std::hypot(1, 4 / 12.0);
    CHECK(square_feet_of(solid, 0) == doctest::Approx(deck));
    const double house = 2 * (40 + 24) * 2400 / 304.8 + 2 * 24 * 6 / 2.0;
    const double front = 8 * 2 + 8 * (4 * 4 / 12.0) / 2, cheeks = 2 * 4 * 2 / 2.0;
    CHECK(square_feet_of(solid, 1) == doctest::Approx(house + front + cheeks));
}

}  // namespace
}  // namespace hemline
