// tests/golden/picked.journal must always open, and picked.txt is what it gives.
#include <doctest/doctest.h>

#include "engine/record/event_bytes.h"
#include "engine/record/fact_words.h"
#include "engine/record/job.h"
#include "tests/engine/record/golden.h"
#include "tests/engine/record/picked_record.h"
#include "tests/engine/record/same_event.h"

namespace hemline {
namespace {

TEST_CASE("The golden journal of picks gives its lines, its events, its bytes and its job") {
    const std::string text = golden("picked.journal");
    const Bytes bytes(text.begin(), text.end());
    const JournalRead read = read_journal(bytes);
    CHECK(read.set_aside.empty());
    CHECK(same_events(read.events, picked_record()));
    CHECK(journal_of(picked_record()) == bytes);
    std::string lines;
    for (const Event& event : read.events) {
        lines += print_event_id(event.id) + " " + event.by + ": " + describe(event.fact).english() +
                 "\n";
    }
    CHECK(lines == golden("picked.txt"));

    const Job job = replay(in_order(read.events));
    CHECK(job.conflicts.empty());
    REQUIRE(job.find("A") != nullptr);
    CHECK(job.find("A")->readings[0].struck);
    CHECK_FALSE(job.find("A")->readings[1].struck);
    CHECK(job.find("A")->cut.size() == 1);
    CHECK(job.find("A")->steps.size() == 1);
}

}  // namespace
}  // namespace hemline
