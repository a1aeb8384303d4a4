// Which divisions an edge has in given ranges, told by hand.
#include "engine/joint/needs.h"

#include <doctest/doctest.h>

using namespace hemline;

TEST_CASE("An edge whose sliver is short has pieces that another edge's longer sliver forbids") {
    // 130 in of metal in two pieces: 11 and 119, or 12 and 118, no shorter than its own sliver.
    JointJob job;
    job.stock = {{inches(120), std::nullopt, false}};
    for (const Length sliver : {inches(24), inches(10)}) {
        job.edges.push_back({{inches(124), {}, {}, inches(120), inches(6), sliver, sixteenths(1)},
                             Looks::free,
                             {}});
    }
    const auto needs = needs_of(job, ways_of(job), 0);
    REQUIRE(needs);
    DivisionSet set = all_divisions(*needs)[1];
    set.ranges = {{inches(11), inches(12)}, {Length(), inches(120)}};
    CHECK(has_division(*needs, 1, set));
    set.ranges[1].most = inches(117);
    CHECK(!has_division(*needs, 1, set));
}
