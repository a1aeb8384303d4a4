// The reason for taking back an event is saved as a choice, and put into words where it is shown.
// tests/golden/struck_for.journal must always open, and struck_for.txt is what it gives.
#include <doctest/doctest.h>

#include "engine/record/event_bytes.h"
#include "engine/record/fact_words.h"
#include "engine/record/job.h"
#include "tests/engine/record/golden.h"
#include "tests/engine/record/same_event.h"
#include "tests/engine/record/struck_for_record.h"

namespace hemline {
namespace {

TEST_CASE("The golden journal of events taken back gives its lines, its events and its bytes") {
    const std::string text = golden("struck_for.journal");
    const Bytes bytes(text.begin(), text.end());
    const JournalRead read = read_journal(bytes);
    CHECK(read.set_aside.empty());
    CHECK(same_events(read.events, struck_for_record()));
    CHECK(journal_of(struck_for_record()) == bytes);
    std::string lines;
    for (const Event& event : read.events) {
        lines += print_event_id(event.id) + " " + event.by + ": " + describe(event.fact).english() +
                 "\n";
    }
    CHECK(lines == golden("struck_for.txt"));
}

TEST_CASE("What was taken back does not count, and a strike its own tablet took back does not") {
    const Job job = replay(struck_for_record());
    CHECK(job.find("A")->length(job.practice) == std::nullopt);  // only the reading of 32 ft
    const auto& readings = job.find("A")->readings;
    REQUIRE(readings.size() == 4);
    CHECK(readings[0].struck);
    CHECK(readings[1].struck);
    CHECK(readings[2].struck);
    CHECK_FALSE(readings[3].struck);
}

TEST_CASE("Both kinds strike alike, and undo goes past both") {
    const EventId read{1, 1};
    for (const Fact& strike :
         {Fact(Struck{read, "undone"}), Fact(StruckFor{read, StrikeReason::undone})}) {
        const std::vector<Event> events{
            {read, {1, 0}, "Ada", {}, ReadingTaken{"A", ReadingOf::edge, feet(3)}},
            {{1, 2}, {2, 0}, "Ada", {}, ReadingTaken{"A", ReadingOf::edge, feet(4)}},
            {{1, 3}, {3, 0}, "Ada", {read}, strike}};
        const Job job = replay(events);
        CHECK(job.struck == std::set<EventId>{read});
        CHECK(undo_target(events, job.struck, 1) == EventId{1, 2});
        CHECK(describe(strike) == "Crossed out 0000000000000001-1: undone");
    }
}

}  // namespace
}  // namespace hemline
