// A step's answer is kept with what practice asked, as values: the exception's words are made from
// them. tests/golden/answered.journal must always open, and answered.txt is what it gives.
#include <doctest/doctest.h>

#include "engine/record/event_bytes.h"
#include "engine/record/fact_words.h"
#include "engine/record/job.h"
#include "tests/engine/record/answered_record.h"
#include "tests/engine/record/apart.h"
#include "tests/engine/record/golden.h"
#include "tests/engine/record/same_event.h"

namespace hemline {
namespace {

StepAnswered screws(std::int64_t count) {
    StepAnswered step{"A", "fasten", 1, AnswerKind::count};
    step.count = count;
    step.limits.count_least = 10;
    return step;
}

TEST_CASE("The golden journal of steps answered gives its lines, its events and its bytes") {
    const std::string text = golden("answered.journal");
    const Bytes bytes(text.begin(), text.end());
    const JournalRead read = read_journal(bytes);
    CHECK(read.set_aside.empty());
    CHECK(same_events(read.events, answered_record()));
    CHECK(journal_of(answered_record()) == bytes);
    std::string lines;
    for (const Event& event : read.events) {
        lines += print_event_id(event.id) + " " + event.by + ": " + describe(event.fact).english() +
                 "\n";
    }
    CHECK(lines == golden("answered.txt"));
}

TEST_CASE("Both kinds of answer fold alike, and an exception is one that misses what was asked") {
    const Job job = replay(answered_record());
    const std::vector<DoneStep>& steps = job.edges[0].steps;
    REQUIRE(steps.size() == 7);
    CHECK(steps[0].step.answer == steps[1].step.answer);
    CHECK(steps[1].step.exception ==
          "1/8 in is over the most, 1/16 in. The rule: gap of a hook, most.");
    CHECK(steps[1].step.exception_by == "Ben");
    CHECK(steps[3].step.exception.empty());
    CHECK(steps[4].step.exception == "9 is under the least, 10.");
    CHECK(steps[5].step.exception == "It is not as it should be.");
    CHECK(steps[6].step.answer.seen == "left");
    CHECK(steps[6].step.exception.empty());
}

TEST_CASE(
    "A value kept as a value is told on the reader's marks; a sentence stays as it was kept") {
    const std::vector<Event> events = answered_record();
    const auto told = [&](std::size_t place) {
        return describe(events[place].fact).english(Marks::millimetre);
    };
    CHECK(told(1).find("1/8 in is over the most, 1/16 in.") != std::string::npos);
    CHECK(told(2).find("3 mm is over the most, 2 mm.") != std::string::npos);
}

TEST_CASE("Without a limit nothing is outside it, whoever accepted it") {
    StepAnswered step = screws(3);
    step.limits = {};
    step.accepted_by = "Ben";
    CHECK(step.said().exception.empty());
    step.kind = AnswerKind::seen;
    step.finding = Finding::bad;
    CHECK(step.said().exception.empty());
}

TEST_CASE("The same answer apart is no conflict, whichever kind and whatever was asked") {
    const auto conflicts = [](const Fact& here, const Fact& there) {
        ApartCrew crew = crew_with_edge();
        crew.write(1, here);
        crew.write(2, there, "Ben");
        return crew.job().conflicts.size();
    };
    StepAnswered asked_less = screws(12);
    asked_less.limits.count_least = 8;
    CHECK(conflicts(screws(12), screws(12)) == 0);
    CHECK(conflicts(screws(12), asked_less) == 0);
    CHECK(conflicts(screws(12),
                    StepDone{"A", "fasten", 1, {AnswerKind::count, {}, 12, ""}, "", ""}) == 0);
    CHECK(conflicts(screws(12), screws(11)) == 1);
}

}  // namespace
}  // namespace hemline
