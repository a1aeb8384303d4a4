// From memory: a bent hook makes one man's tape read the same small amount short on every edge.
#include "engine/work/hook_doubt.h"

#include <doctest/doctest.h>

using namespace hemline;

namespace {

/// A job whose edges are read twice, the second so much longer than the first.
Job job_read(const std::vector<Length>& second_minus_first) {
    Job job;
    for (const Length more : second_minus_first) {
        EdgeWork work;
        work.edge.id = std::string(1, static_cast<char>('A' + job.edges.size()));
        for (const Length length : {feet(20), feet(20) + more}) {
            RecordedReading reading;
            reading.length = length;
            work.readings.push_back(reading);
        }
        job.edges.push_back(work);
    }
    return job;
}

}  // namespace

TEST_CASE("The same sixteenth between the readings of three edges names the hook and its mend") {
    const std::string doubt =
        hook_doubt(job_read({sixteenths(1), sixteenths(1), sixteenths(1)})).english();
    CHECK(doubt.find("hook") != std::string::npos);
    CHECK(doubt.find("another tape") != std::string::npos);
}

TEST_CASE("Two edges alike, or three that differ both ways, say nothing of the hook") {
    CHECK(hook_doubt(job_read({sixteenths(1), sixteenths(1)})).empty());
    CHECK(hook_doubt(job_read({sixteenths(1), -sixteenths(1), Length()})).empty());
    CHECK(hook_doubt(Job()).empty());
}

TEST_CASE("A struck reading and the rest of a run are no part of the hook's doubt") {
    Job job = job_read({sixteenths(1), sixteenths(1), sixteenths(1)});
    SUBCASE("struck") { job.edges[0].readings[1].struck = true; }
    SUBCASE("for the last piece") { job.edges[0].readings[1].of = ReadingOf::remainder; }
    CHECK(hook_doubt(job).empty());
}
