// How far lengths of bodies that are tied together may be off is the same, to a few nanometers, as
// where all of them are worked out anew for every change.
#include <doctest/doctest.h>

#include "engine/body/off_of_edges.h"
#include "engine/body/past_host.h"
#include "engine/body/worked_roof.h"
#include "engine/words/result.h"
#include "tests/engine/body/chance_walks.h"
#include "tests/engine/body/said_sides.h"
#include "tests/engine/body/slow_off.h"

using namespace hemline;
using namespace hemline::test;

namespace {

/// Now and then as read: not to the sixteenth what the other sides say.
Length read_by_chance(std::mt19937& random, double feet) {
    return in_feet(feet) + sixteenths(below(random, 3) == 0 ? below(random, 2) : 0);
}

RoofBody main_house(std::mt19937& random) {
    const bool hipped = below(random, 2) == 0;
    const std::string pitch = std::to_string(4 + below(random, 9)) + "/12";
    const SideKind ends = hipped ? SideKind::eave : SideKind::gable;
    const std::string of_ends = hipped ? pitch : "";
    RoofBody made = {"main",
                     {said_side("A", SideKind::eave, 60, pitch), said_side("B", ends, 30, of_ends),
                      said_side("C", SideKind::eave, 60, pitch), said_side("D", ends, 30, of_ends)},
                     {}};
    made.sides[0].length = read_by_chance(random, 60);
    made.sides[1].length = read_by_chance(random, 30);
    return made;
}

/// A dormer or wing by chance, its front a gable, a hip or an eave alone; flush with the eave, as
/// high as the host, or not; its eaves' lengths read or not.
RoofBody one_that_runs_in(std::mt19937& random, const std::string& id, const std::string& eave,
                          double along, double widest) {
    const int front = below(random, 3);
    const std::string pitch = std::to_string(2 + below(random, 7)) + "/12";
    const SideKind cheeks = front == 2 ? SideKind::gable : SideKind::eave;
    RoofBody made = {
        id,
        {said_side(id + "1", front == 0 ? SideKind::gable : SideKind::eave,
                   4 + (widest - 4) * share(random), front == 0 ? "" : pitch),
         said_side(id + "2", cheeks, below(random, 3) == 0 ? 3 : 0, front == 2 ? "" : pitch),
         said_side(id + "3", SideKind::open, 0),
         said_side(id + "4", cheeks, 0, front == 2 ? "" : pitch)},
        RunsInto{eave, read_by_chance(random, along), {}, {}}};
    if (below(random, 3) > 0) {
        made.host->up = read_by_chance(random, 9 * share(random) - 4);
    }
    if (below(random, 3) > 0) {
        made.host->rise = read_by_chance(random, 4 * share(random) - 1);
    }
    return made;
}

/// Its top lies under the eave.
RoofBody low_roof(std::mt19937& random, const std::string& eave) {
    const std::string pitch = std::to_string(2 + below(random, 4)) + "/12";
    RoofBody made = {
        "low",
        {said_side("l1", SideKind::eave, 8, pitch), said_side("l2", SideKind::gable, 4),
         said_side("l3", SideKind::transition, 0, pitch), said_side("l4", SideKind::gable, 0)},
        RunsInto{eave, read_by_chance(random, 10), {}, {}}};
    made.sides[2].meets = eave;
    return made;
}

std::vector<RoofBody> bodies_by_chance(std::mt19937& random) {
    std::vector<RoofBody> bodies = {main_house(random)};
    const int more = 1 + below(random, 3);
    for (int i = 0; i < more; ++i) {
        bodies.push_back(one_that_runs_in(random, std::string(1, static_cast<char>('e' + i)), "A",
                                          4 + 18 * i + 4 * share(random), 12));
    }
    if (below(random, 3) == 0) {
        bodies.push_back(low_roof(random, "C"));
    }
    if (below(random, 4) == 0) {
        bodies.push_back(one_that_runs_in(random, "n", "e4", 1 + share(random), 5));
    }
    if (below(random, 4) == 0) {
        std::swap(bodies.front(), bodies.back());  // the roof is seen from what is walked first
    }
    return bodies;
}

/// How far the two ways are apart at most, nm; none: that is no roof.
std::optional<double> ways_apart(const std::vector<RoofBody>& bodies) {
    const auto worked = work_out(bodies, Tape(), WalkThatIsOpen::is_said);
    if (!worked || !worked->closes || past_host(*worked->joined, bodies)) {
        return {};
    }
    const auto off = off_of_edges(bodies, Tape(), *worked);
    const auto slow = slow_off_of_edges(bodies, Tape(), worked->edges);
    double farthest = 0;
    for (std::size_t i = 0; i < off.size(); ++i) {
        farthest = std::max(farthest, std::abs(off[i] - slow[i]));
    }
    return farthest;
}

}  // namespace

TEST_CASE("How far lengths of tied bodies may be off is as if worked out anew for every reading" *
          doctest::test_suite("long")) {
    std::mt19937 random(61);
    int compared = 0;
    for (int i = 0; i < 2000 && compared < 120; ++i) {
        if (const auto apart = ways_apart(bodies_by_chance(random))) {
            ++compared;
            CAPTURE(i);
            CHECK(*apart < 1);
        }
    }
    CHECK(compared == 120);
}

TEST_CASE("Where a plane comes to the height of another, or a place to a line, all is anew") {
    // Of these roofs: where nothing but heights tells, where only places do, where a shed's depth
    // under its host must not pass for its top, where it matters from which body all is seen.
    using Roofs = std::initializer_list<std::pair<unsigned, int>>;
    for (const auto& [seed, which] : Roofs{{8, 738}, {61, 1064}, {7, 1164}, {7, 1904}}) {
        std::mt19937 random(seed);
        for (int i = 0; i < which; ++i) {
            bodies_by_chance(random);
        }
        const auto apart = ways_apart(bodies_by_chance(random));
        REQUIRE(apart);
        CHECK(*apart < 1);
    }
}

TEST_CASE(
    "A dormer on a dormer's eave lies as far along it as is seen of it, however deep the "
    "one goes on under its host") {
    const auto ridge_of_upper = [](double depth) {
        std::vector<RoofBody> bodies = {
            {"main",
             {said_side("A", SideKind::eave, 60, "12/12"), said_side("B", SideKind::gable, 30),
              said_side("C", SideKind::eave, 60, "12/12"), said_side("D", SideKind::gable, 30)},
             {}},
            {"wing",
             {said_side("E", SideKind::gable, 12), said_side("F", SideKind::eave, depth, "6/12"),
              said_side("G", SideKind::open, 0), said_side("H", SideKind::eave, 0, "6/12")},
             RunsInto{"A", in_feet(20), in_feet(-9), in_feet(0)}},
            {"upper",
             {said_side("J", SideKind::gable, 4), said_side("K", SideKind::eave, 0, "4/12"),
              said_side("L", SideKind::open, 0), said_side("M", SideKind::eave, 0, "4/12")},
             RunsInto{"H", in_feet(3), in_feet(1), in_feet(1)}}};
        const auto roof = work_out_roof(bodies, Tape());
        REQUIRE(roof);
        return edge_of(*roof, "J").from;
    };
    // H's left end is where it meets A's eave, at y = 0; by hand: 3 ft from there.
    for (const double depth : {0.0, 10.0, 14.0}) {
        const Space foot_of_gable = ridge_of_upper(depth);
        CHECK(std::min(std::abs(foot_of_gable.y / foot + 3), std::abs(foot_of_gable.y / foot + 7)) <
              1e-6);
    }
}
