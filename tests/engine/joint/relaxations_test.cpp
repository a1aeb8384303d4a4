// Which edges may run out in a relaxed job, counted by hand.
#include "engine/joint/relaxations.h"

#include <doctest/doctest.h>

#include <algorithm>

using namespace hemline;

namespace {

/// Edges of 162 in of metal, which two balanced pieces of a 120 in stick cover.
JointJob job_of(const std::vector<Looks>& looks) {
    JointJob job;
    job.stock = {{inches(120), std::nullopt, false}};
    for (const Looks own : looks) {
        job.edges.push_back(
            {{inches(162), {}, {}, inches(120), inches(6), inches(24), sixteenths(1)}, own, {}});
    }
    return job;
}

/// The most edges that run out in any relaxation within what is allowed.
std::int64_t most_run_out(const JointJob& job, Allowed allowed) {
    std::int64_t most = 0;
    const bool all = every_relaxation(
        ways_of(job), alike_edges(job), allowed, 0, 1000, [&](const Relaxation& relaxation) {
            const std::int64_t out =
                std::count(relaxation.ask.begin(), relaxation.ask.end(), Ask::anything);
            most = std::max(most, out);
            return true;
        });
    CHECK(all);
    return most;
}

}  // namespace

TEST_CASE("Edges that may run out are no like of those that must be even") {
    using Kinds = std::vector<std::vector<std::size_t>>;
    CHECK(alike_edges(job_of({Looks::free, Looks::balanced, Looks::free})) == Kinds{{0, 2}, {1}});
    CHECK(most_run_out(job_of({Looks::balanced, Looks::free, Looks::free}), {0, 3}) == 2);
}

TEST_CASE("As many edges run out as may be unbalanced, and one for each lap more") {
    const JointJob job = job_of({Looks::free, Looks::free, Looks::free});
    CHECK(most_run_out(job, {0, 0}) == 0);
    CHECK(most_run_out(job, {0, 2}) == 2);
    CHECK(most_run_out(job, {1, 0}) == 1);
    CHECK(most_run_out(job, {1, 1}) == 2);
    CHECK(most_run_out(job, {2, 2}) == 3);
}
