// A no to a safety check, lifted: tests/golden/lifted.journal must always open, and lifted.txt is
// what it gives.
#include <doctest/doctest.h>

#include "engine/record/event_bytes.h"
#include "engine/record/fact_words.h"
#include "engine/record/job.h"
#include "tests/engine/record/golden.h"
#include "tests/engine/record/lifted_record.h"
#include "tests/engine/record/same_event.h"

namespace hemline {
namespace {

std::string lines_of(const std::vector<Event>& events) {
    std::string lines;
    for (const Event& event : events) {
        lines += print_event_id(event.id) + " " + event.by + ": " + describe(event.fact).english() +
                 "\n";
    }
    return lines;
}

TEST_CASE("The golden journal of a no that was lifted gives its lines, its events and its bytes") {
    const std::string text = golden("lifted.journal");
    const Bytes bytes(text.begin(), text.end());
    const JournalRead read = read_journal(bytes);
    CHECK(read.set_aside.empty());
    CHECK(same_events(read.events, lifted_record()));
    CHECK(journal_of(lifted_record()) == bytes);
    CHECK(lines_of(read.events) == golden("lifted.txt"));
}

TEST_CASE(
    "A no is one as long as nobody signed for it, and a lift is an exception with its reason") {
    const Job job = replay(lifted_record());
    const std::vector<DoneStep>& steps = job.edges[0].steps;
    REQUIRE(steps.size() == 2);
    CHECK(says_no(steps[0].step));
    CHECK_FALSE(says_no(steps[1].step));
    CHECK(steps[1].step.exception == "The no was lifted: wind is down.");
    CHECK(steps[1].step.exception_by == "Ben");
    // As programs wrote it that let the installer sign a no away.
    StepAnswered signed_away{"A", "ground", 0, AnswerKind::seen};
    signed_away.finding = Finding::bad;
    signed_away.accepted_by = "Ada";
    CHECK_FALSE(says_no(signed_away.said()));
}

}  // namespace
}  // namespace hemline
