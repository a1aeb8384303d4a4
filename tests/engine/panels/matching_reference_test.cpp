// The pairing of most weight against general solvers: each pair a whole variable, nobody in two.
#include <doctest/doctest.h>

#include <map>
#include <random>

#include "engine/panels/most_weight_matching.h"
#include "tests/engine/panels/said_planes.h"
#include "tests/reference/general_solver.h"
#include "tests/reference/linear_text.h"

using namespace hemline;
using namespace hemline::test;

namespace {

reference::Program pairing_program(std::size_t people, const std::vector<Match>& matches) {
    reference::Program program;
    std::vector<reference::Terms> with(people);
    for (const Match& match : matches) {
        program.cost.push_back({-match.worth, program.variables});
        with[match.a].push_back({1, program.variables});
        with[match.b].push_back({1, program.variables});
        ++program.variables;
    }
    for (const reference::Terms& one : with) {
        program.add_row(one, "<=", 1);
    }
    return program;
}

std::int64_t worth_of(const std::vector<Match>& matches,
                      const std::vector<std::optional<std::size_t>>& mates) {
    std::int64_t worth = 0;
    for (const Match& match : matches) {
        worth += mates[match.a] == match.b ? match.worth : 0;
    }
    return worth;
}

}  // namespace

TEST_CASE("Forty graphs are paired for as much as general solvers prove" *
          doctest::test_suite("full")) {
    std::mt19937 random(1965);
    int proved = 0;
    for (int graph = 0; graph < 40; ++graph) {
        const auto people = static_cast<std::size_t>(within(random, 8, 40));
        // Few worths, so that odd circles tie.
        const std::int64_t most = graph % 2 == 0 ? 5 : 4000;
        std::map<std::pair<std::size_t, std::size_t>, std::int64_t> links;
        for (std::int64_t i = within(random, 10, 120); i > 0; --i) {
            const auto last = static_cast<std::int64_t>(people) - 1;
            const auto a = static_cast<std::size_t>(within(random, 0, last));
            const auto b = static_cast<std::size_t>(within(random, 0, last));
            if (a != b) {
                links[std::minmax(a, b)] = within(random, 1, most);
            }
        }
        std::vector<Match> matches;
        for (const auto& [pair, worth] : links) {
            matches.push_back({pair.first, pair.second, worth});
        }
        const auto mates = most_weight_matching(people, matches);
        const auto solver = graph % 4 < 2 ? reference::Solver::glpk : reference::Solver::cbc;
        const reference::Answer answer =
            reference::solve(solver, pairing_program(people, matches).text(), 60);
        REQUIRE_MESSAGE(answer.ran, reference::name_of(solver)
                                        << " is needed: install glpk-utils and coinor-cbc");
        if (answer.optimum) {
            CHECK(worth_of(matches, mates) == -*answer.optimum);
            ++proved;
        }
    }
    CHECK(proved >= 30);
}
