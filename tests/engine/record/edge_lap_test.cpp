// The lap of a single edge, as it is recorded. tests/golden/edge_lap.journal must always open, and
// edge_lap.txt is what it gives.
#include <doctest/doctest.h>

#include "engine/record/event_bytes.h"
#include "engine/record/fact_words.h"
#include "engine/record/job.h"
#include "engine/record/pick.h"
#include "engine/words/result.h"
#include "tests/engine/record/edge_lap_record.h"
#include "tests/engine/record/golden.h"
#include "tests/engine/record/growing_record.h"
#include "tests/engine/record/same_event.h"

namespace hemline {
namespace {

TEST_CASE("An edge keeps the lap chosen for it until the job's rule is to serve it again") {
    GrowingRecord record{edge_lap_record()};
    Job job = record.job();
    CHECK(job.find("A")->edge.lap == inches(8));
    CHECK_FALSE(job.find("B")->edge.lap);
    record.add(RuleSet{"lap", "7 in"});
    job = record.job();
    CHECK(lap_on(job.find("A")->edge, job.practice) == inches(8));
    CHECK(lap_on(job.find("B")->edge, job.practice) == inches(7));
    record.add(LapChosen{"none", inches(9)});
    CHECK(record.job().edges.size() == 2);
}

TEST_CASE("An edge changed or put back keeps its lap, and a new one has none") {
    GrowingRecord record{edge_lap_record()};
    Edge changed = invented_eave();
    changed.left = End::wall;
    record.add(EdgeAdded{changed});
    CHECK(record.job().find("A")->edge.lap == inches(8));
    changed.lap = inches(9);  // not EdgeAdded's to say: the bytes have no place for it
    record.add(EdgeAdded{changed});
    CHECK(record.job().find("A")->edge.lap == inches(8));
    changed.id = "C";
    record.add(EdgeAdded{changed});
    CHECK_FALSE(record.job().find("C")->edge.lap);
}

TEST_CASE("A lap chosen divides its run anew and no other, and undone it is as before") {
    GrowingRecord record{edge_lap_record()};
    record.add(PlanChosen{Prefer::laps,
                          "eave_two_part",
                          0,
                          1,
                          2,
                          {{"A", TrimRole::main, {feet(10), inches(42)}},
                           {"B", TrimRole::main, {feet(10), inches(42)}}}});
    REQUIRE(record.job().find("A")->chosen.size() == 1);
    const EventId lap = record.add(LapChosen{"A", inches(6)});
    CHECK(record.job().find("A")->chosen.empty());
    CHECK(record.job().find("B")->chosen.size() == 1);
    record.add(Struck{lap, "undone"});
    CHECK(record.job().find("A")->edge.lap == inches(8));
    CHECK(record.job().find("A")->chosen.size() == 1);
}

TEST_CASE("Two tablets that gave one edge different laps apart: the edge waits for one word") {
    GrowingRecord record{edge_lap_record()};
    const EventId seen = record.events[2].id;
    record.add(LapChosen{"A", inches(9)}, {seen}, 1);
    record.add(LapChosen{"A", inches(9)}, {seen}, 2);
    CHECK(record.job().conflicts.empty());  // they agree
    const EventId there = record.add(LapChosen{"A", std::nullopt}, {seen}, 3);
    const Job job = record.job();
    REQUIRE(job.conflicts.size() == 1);
    CHECK(job.conflicts[0].thing.subject == Subject::lap);
    CHECK(job.conflicts[0].what() ==
          "Two tablets disagree on the lap of edge A: pick one, or enter it again.");
    CHECK(job.find("A")->undecided.size() == 1);
    CHECK(job.find("B")->undecided.empty());
    const Result<ToWrite> picked = pick(job, record.events, there);
    REQUIRE(picked);
    record.add(picked->fact, picked->supersedes);
    CHECK(record.job().conflicts.empty());
    CHECK_FALSE(record.job().find("A")->edge.lap);
}

TEST_CASE("A lap and a change of the edge, made apart, contradict nothing") {
    GrowingRecord record{edge_lap_record()};
    Edge changed = invented_eave();
    changed.left = End::wall;
    record.add(EdgeAdded{changed}, {record.events[0].id}, 2);
    record.add(LapChosen{"A", inches(9)}, {record.events[2].id}, 3);
    const Job job = record.job();
    CHECK(job.conflicts.empty());
    CHECK(job.find("A")->edge.lap == inches(9));
    CHECK(job.find("A")->edge.left == End::wall);
}

TEST_CASE("The golden journal of an edge's lap gives its lines, its events and its bytes") {
    const std::string text = golden("edge_lap.journal");
    const Bytes bytes(text.begin(), text.end());
    const JournalRead read = read_journal(bytes);
    CHECK(read.set_aside.empty());
    CHECK(same_events(read.events, edge_lap_record()));
    CHECK(journal_of(edge_lap_record()) == bytes);
    std::string lines;
    for (const Event& event : read.events) {
        lines += print_event_id(event.id) + " " + event.by + ": " + describe(event.fact).english() +
                 "\n";
    }
    CHECK(lines == golden("edge_lap.txt"));
}

}  // namespace
}  // namespace hemline
