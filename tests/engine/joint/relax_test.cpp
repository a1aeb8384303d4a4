// The metal of all edges against the sticks, told by hand.
#include "engine/joint/relax.h"

#include <doctest/doctest.h>

using namespace hemline;

namespace {

/// 60 in and 58 in of metal, laps of 2 and of 20 in.
JointJob two_edges() {
    JointJob job;
    job.stock = {{inches(120), std::nullopt, false}};
    const auto edge = [](Length metal, Length lap) {
        return JointEdge{
            {metal, {}, {}, inches(120), lap, inches(10), sixteenths(1)}, Looks::free, {}};
    };
    job.edges = {edge(inches(60), inches(2)), edge(inches(58), inches(20))};
    return job;
}

std::int64_t bound(const JointJob& job, std::int64_t laps) {
    return metal_bound(job, ways_of(job), laps);
}

}  // namespace

TEST_CASE("A lap more is metal of the shortest lap there is, and a kerf") {
    JointJob job = two_edges();
    CHECK(bound(job, 0) == 1);
    CHECK(bound(job, 1) == 1);  // 118 + 2 in: the stick to its end
    CHECK(bound(job, 2) == 2);
    job.kerf = inches(1);  // two pieces and their kerfs are 120, a stick and its own 121
    CHECK(bound(job, 0) == 1);
    CHECK(bound(job, 1) == 2);
}

TEST_CASE("What is on hand is taken off the metal before new sticks are counted") {
    JointJob job = two_edges();
    job.stock = {{inches(60), std::nullopt, false}, {inches(58), 1, true}};
    CHECK(bound(job, 0) == 1);  // 118 less 58: one of 60 to its end
    CHECK(bound(job, 1) == 2);
    job.stock[1].supply = 3;
    CHECK(bound(job, 1) == 0);
}
