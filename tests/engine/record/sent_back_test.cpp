// The foreman sends an edge back: it is open again until it is fixed and signed off again.
// tests/golden/sent_back.journal must always open, and sent_back.txt is what it gives.
#include <doctest/doctest.h>

#include "engine/record/event_bytes.h"
#include "engine/record/fact_words.h"
#include "engine/record/job.h"
#include "tests/engine/record/golden.h"
#include "tests/engine/record/growing_record.h"
#include "tests/engine/record/same_event.h"
#include "tests/engine/record/sent_back_record.h"

namespace hemline {
namespace {

TEST_CASE("An edge that is sent back is finished no more, and says why and who") {
    GrowingRecord record{sent_back_record()};
    const Job sent = record.job();
    const EdgeWork& work = sent.edges[0];
    CHECK_FALSE(work.finished);
    REQUIRE(work.sent_back);
    CHECK(work.sent_back->reason == "lap too short at piece 2");
    CHECK(work.sent_back->by == "Ada");
    record.add(EdgeFinished{"A", ""}, {record.events.back().id});
    const Job ticked = record.job();
    CHECK(ticked.edges[0].finished);
    CHECK_FALSE(ticked.edges[0].sent_back);
}

TEST_CASE("What was mended the last time does not answer the next") {
    GrowingRecord record{sent_back_record()};
    record.add(StepDone{"A", std::string(mend_step), 0, {}, "", ""});
    const Job mended = record.job();
    CHECK(mended.edges[0].steps.size() == 1);
    record.add(EdgeSentBack{"A", "still too short"});
    const Job again = record.job();
    CHECK(again.edges[0].steps.empty());
    CHECK(again.edges[0].sent_back->reason == "still too short");
}

TEST_CASE("Undone, the foreman's word is as if it were not said") {
    GrowingRecord record{sent_back_record()};
    record.add(Struck{record.events.back().id, "undone"});
    const Job job = record.job();
    CHECK(job.edges[0].finished);
    CHECK_FALSE(job.edges[0].sent_back);
}

TEST_CASE("Ticked on one tablet and sent back on another, apart: it waits for one word") {
    GrowingRecord record;
    record.add(EdgeAdded{invented_eave()});
    record.add(EdgeFinished{"A", ""}, {}, 1);
    record.add(EdgeSentBack{"A", "bead missing"}, {}, 2);
    const Job job = record.job();
    REQUIRE(job.conflicts.size() == 1);
    CHECK(job.conflicts[0].thing.subject == Subject::finish);
    CHECK(job.edges[0].undecided.size() == 1);
}

TEST_CASE("The golden journal of an edge sent back gives its lines, its events and its bytes") {
    const std::string text = golden("sent_back.journal");
    const Bytes bytes(text.begin(), text.end());
    const JournalRead read = read_journal(bytes);
    CHECK(read.set_aside.empty());
    CHECK(same_events(read.events, sent_back_record()));
    CHECK(journal_of(sent_back_record()) == bytes);
    std::string lines;
    for (const Event& event : read.events) {
        lines += print_event_id(event.id) + " " + event.by + ": " + describe(event.fact).english() +
                 "\n";
    }
    CHECK(lines == golden("sent_back.txt"));
}

}  // namespace
}  // namespace hemline
