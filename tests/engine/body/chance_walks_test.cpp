// Walks by chance, however bad: an answer or a Problem, never a hang, never what is no number.
#include "tests/engine/body/chance_walks.h"

#include <doctest/doctest.h>

#include <algorithm>
#include <cstdlib>
#include <ctime>

#include "engine/body/planes.h"
#include "engine/words/result.h"
#include "tests/engine/body/said_sides.h"

using namespace hemline;
using namespace hemline::test;

namespace {

bool is_number(double value) { return std::isfinite(value); }

/// 100,000, or as many as HEMLINE_WALKS says: tools/nightly asks for ten million.
int walks_asked() {
    const char* asked = std::getenv("HEMLINE_WALKS");
    return asked == nullptr ? 100'000 : std::atoi(asked);
}

struct ChanceWalk {
    PlanWalk walk;
    std::vector<double> inward;
};
ChanceWalk any_walk_by_chance(std::mt19937& random) {
    const int kind = below(random, 4);
    ChanceWalk made;
    made.walk = kind == 0   ? star(random, 3 + below(random, 20))
                : kind == 1 ? steps(random)
                            : anyhow(random);
    const bool equal = below(random, 3) == 0;
    for (std::size_t k = 0; k < made.walk.size(); ++k) {
        made.inward.push_back(below(random, 5) == 0 ? 0 : equal ? 2 : 0.5 + 48 * share(random));
    }
    return made;
}

/// A house of square corners with kinds and pitches by chance, now and then with a length, a corner
/// or a kind that is wrong or not there.
std::vector<BodySide> keyed_in(std::mt19937& random, bool with_faults = true) {
    const PlanWalk walk = steps(random);
    const std::size_t n = walk.size();
    const std::string pitch = std::to_string(1 + below(random, 18)) + "/12";
    std::vector<BodySide> sides;
    for (std::size_t i = 0; i < n; ++i) {
        const PlanVector way = walk[(i + 1) % n] - walk[i];
        const PlanVector next = walk[(i + 2) % n] - walk[(i + 1) % n];
        const auto kind = with_faults && below(random, 4) == 0
                              ? static_cast<SideKind>(below(random, 6))
                              : SideKind::eave;
        BodySide side =
            said_side("s" + std::to_string(i), kind, length_of(way), is_upright(kind) ? "" : pitch,
                      turn(way, next) > 0 ? square_out : square_in);
        if (!with_faults) {
            sides.push_back(side);
            continue;
        }
        if (below(random, 40) == 0) {
            side.length.reset();
        }
        if (below(random, 100) == 0) {
            side.length = in_feet(1 + below(random, 60));
        }
        if (below(random, 200) == 0) {
            side.corner = degrees(1 + below(random, 400));
        }
        if (below(random, 20) == 0 && !is_upright(kind)) {
            side.pitch = rise_in_12(1 + below(random, 18));
        }
        sides.push_back(side);
    }
    return sides;
}

}  // namespace

TEST_CASE("A hundred thousand walks by chance: places that are numbers, or sides that are named" *
          doctest::test_suite("large")) {
    std::mt19937 random(29);
    const int walks = walks_asked();
    int whole = 0, wrong = 0;
    for (int i = 0; i < walks; ++i) {
        const auto [walk, inward] = any_walk_by_chance(random);
        const auto sides = sides_round(walk, inward);
        if (walk.size() < 3 || length_of(walk.front() - walk.back()) == 0) {
            continue;
        }
        const InnerLines lines = trace_inner_lines(sides);
        for (const LinePlace& place : lines.places) {
            wrong +=
                is_number(place.at.x) && is_number(place.at.y) && is_number(place.height) ? 0 : 1;
        }
        for (const InnerLine& line : lines.lines) {
            wrong += line.from < lines.places.size() && line.to < lines.places.size() ? 0 : 1;
        }
        for (const std::size_t side : lines.stuck) {
            wrong += side < sides.size() ? 0 : 1;
        }
        if (lines.stuck.empty()) {
            for (const Plane& plane : planes_of(sides, lines)) {
                wrong += is_number(area_of(plane, lines)) ? 0 : 1;
            }
            ++whole;
        }
    }
    CHECK(wrong == 0);
    CHECK(whole > walks / 20);
}

TEST_CASE("A walk of a hair's width, which never gets smaller, is given up, each side named once") {
    std::mt19937 random(29);
    ChanceWalk flat;
    for (int i = 0; i <= 269'311; ++i) {  // the first that took minutes
        flat = any_walk_by_chance(random);
    }
    const std::clock_t begun = std::clock();
    std::vector<std::size_t> stuck = trace_inner_lines(sides_round(flat.walk, flat.inward)).stuck;
    CHECK(std::clock() - begun < 10 * CLOCKS_PER_SEC);
    CHECK_FALSE(stuck.empty());
    std::sort(stuck.begin(), stuck.end());
    CHECK(std::adjacent_find(stuck.begin(), stuck.end()) == stuck.end());
}

TEST_CASE("Walks as somebody could key them in: an answer or a Problem" *
          doctest::test_suite("large")) {
    std::mt19937 random(31);
    int answers = 0, problems = 0, open = 0;
    for (int i = 0; i < 3000; ++i) {
        const auto body = work_out_body(keyed_in(random), Tape());
        if (!body) {
            CHECK_FALSE(body.problem().what.empty());
            CHECK_FALSE(body.problem().mend.empty());
            ++problems;
            continue;
        }
        ++(body->closes ? answers : open);
        for (const BodyEdge& edge : body->edges) {
            CHECK(is_number(edge.length));
            CHECK(is_number(edge.off));
            CHECK(edge.length > 0);
        }
    }
    CHECK(answers > 500);
    CHECK(open > 100);
    CHECK(problems > 500);
}

TEST_CASE("Bodies by chance that run into one another: a roof or a Problem" *
          doctest::test_suite("large")) {
    std::mt19937 random(47);
    int answers = 0, problems = 0;
    for (int i = 0; i < 1000; ++i) {
        std::vector<RoofBody> bodies = {{"main", keyed_in(random, i % 4 == 0), {}}};
        const int more = 1 + below(random, 3);
        for (int k = 0; k < more; ++k) {
            const std::string id = "b" + std::to_string(k) + "_";
            const bool sound = below(random, 3) > 0;
            const auto kind = [&] {
                return sound ? SideKind::eave : static_cast<SideKind>(below(random, 6));
            };
            RoofBody body = {id, {}, {}};
            for (int side = 0; side < 4; ++side) {
                body.sides.push_back(said_side(id + std::to_string(side),
                                               side == 2 ? SideKind::open : kind(),
                                               side == 0 ? 1 + below(random, sound ? 4 : 14) : 0));
                if (!is_upright(body.sides.back())) {
                    body.sides.back().pitch = rise_in_12(1 + below(random, 12));
                }
            }
            if (sound) {
                body.host = RunsInto{"s0", in_feet(5 * k + share(random)),
                                     in_feet(2 * share(random) - 1), in_feet(share(random))};
            } else {
                const std::string host = k > 0 && below(random, 3) == 0 ? "b0_" : "s";
                body.host =
                    RunsInto{host + std::to_string(below(random, 6)), in_feet(below(random, 20)),
                             in_feet(below(random, 12) - 5), in_feet(below(random, 10) - 4)};
            }
            bodies.push_back(body);
        }
        const auto roof = work_out_roof(bodies, Tape());
        if (!roof) {
            CHECK_FALSE(roof.problem().what.empty());
            ++problems;
            continue;
        }
        ++answers;
        for (const BodyEdge& edge : roof->edges) {
            CHECK(is_number(edge.length));
            CHECK(edge.length > edge.off);
        }
        for (const BodyPlane& plane : roof->planes) {
            CHECK(plane.plan_area > 0);
        }
    }
    CHECK(answers > 50);
    CHECK(problems > 100);
}
