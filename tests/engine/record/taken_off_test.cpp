// An edge added by mistake is taken off the job, and undo puts it back with what was read.
// tests/golden/taken_off.journal must always open, and taken_off.txt is what it gives.
#include <doctest/doctest.h>

#include "engine/record/event_bytes.h"
#include "engine/record/fact_words.h"
#include "engine/record/job.h"
#include "tests/engine/record/golden.h"
#include "tests/engine/record/growing_record.h"
#include "tests/engine/record/same_event.h"
#include "tests/engine/record/taken_off_record.h"

namespace hemline {
namespace {

TEST_CASE("An edge taken off is not on the job, and the others stay") {
    const Job job = GrowingRecord{taken_off_record()}.job();
    CHECK(job.find("A2") == nullptr);
    CHECK(job.find("A") != nullptr);
}

TEST_CASE("Undone, an edge taken off is back with its readings") {
    GrowingRecord record{taken_off_record()};
    record.add(Struck{record.events.back().id, "undone"});
    const Job job = record.job();
    REQUIRE(job.find("A2") != nullptr);
    CHECK(job.find("A2")->readings.size() == 1);
}

TEST_CASE("An edge added again after it was taken off is on the job") {
    GrowingRecord record{taken_off_record()};
    Edge again = invented_eave();
    again.id = "A2";
    record.add(EdgeAdded{again}, {record.events.back().id});
    const Job job = record.job();
    CHECK(job.find("A2") != nullptr);
}

TEST_CASE("An edge that metal was cut for on another tablet meanwhile stays on the job") {
    GrowingRecord record{taken_off_record()};
    record.add(PieceCut{"A2", TrimRole::main, 1, feet(9), {feet(10), {}}}, {}, 2);
    const Job job = record.job();
    REQUIRE(job.find("A2") != nullptr);
    CHECK(job.sticks_opened == 1);
}

TEST_CASE("Changed on one tablet and taken off on another, apart: it waits for one word") {
    GrowingRecord record{taken_off_record()};
    Edge changed = invented_eave();
    changed.id = "A2";
    changed.left = End::wall;
    record.add(EdgeAdded{changed}, {record.events[1].id}, 2);
    const Job job = record.job();
    REQUIRE(job.conflicts.size() == 1);
    CHECK(job.conflicts[0].thing.subject == Subject::edge);
}

TEST_CASE("The golden journal of an edge taken off gives its lines, its events and its bytes") {
    const std::string text = golden("taken_off.journal");
    const Bytes bytes(text.begin(), text.end());
    const JournalRead read = read_journal(bytes);
    CHECK(read.set_aside.empty());
    CHECK(same_events(read.events, taken_off_record()));
    CHECK(journal_of(taken_off_record()) == bytes);
    std::string lines;
    for (const Event& event : read.events) {
        lines += print_event_id(event.id) + " " + event.by + ": " + describe(event.fact).english() +
                 "\n";
    }
    CHECK(lines == golden("taken_off.txt"));
}

}  // namespace
}  // namespace hemline
