// A journal written by the first version of the format must always open: tests/golden/eave.journal
// and what it must give, line by line, in eave.txt. The same for sticks.journal, which was added
// with the events about sticks and choices.
#include <doctest/doctest.h>

#include <string>

#include "engine/record/event_bytes.h"
#include "engine/record/fact_words.h"
#include "engine/record/job.h"
#include "tests/engine/record/eave_record.h"
#include "tests/engine/record/golden.h"
#include "tests/engine/record/same_event.h"
#include "tests/engine/record/sections_record.h"
#include "tests/engine/record/sticks_record.h"

namespace hemline {
namespace {

Bytes golden_journal(const std::string& name = "eave.journal") {
    const std::string text = golden(name);
    return {text.begin(), text.end()};
}

TEST_CASE("The golden journal gives the lines it gave when it was written") {
    const JournalRead read = read_journal(golden_journal());
    CHECK(read.set_aside.empty());
    std::string lines;
    for (const Event& event : read.events) {
        lines += print_event_id(event.id) + " " + event.by + ": " + describe(event.fact).english() +
                 "\n";
    }
    CHECK(lines == golden("eave.txt"));
}

TEST_CASE("The golden journal gives the very events that went in, and they give its very bytes") {
    const Bytes bytes = golden_journal();
    CHECK(same_events(read_journal(bytes).events, eave_record()));
    CHECK(journal_of(eave_record()) == bytes);
}

TEST_CASE("The golden journal gives the job it gave when it was written") {
    const Job job = replay(read_journal(golden_journal()).events);
    CHECK(job.name == "Invented house");
    CHECK(job.practice.lap == inches(8));
    CHECK(job.sticks_opened == 1);  // the spoiled cleat's metal went with the cut it supersedes
    REQUIRE(job.offcuts.size() == 1);
    CHECK(job.offcuts[0].length == inches(18));  // 10 ft less 6 ft less 2 ft 6 in
    const EdgeWork* eave = job.find("A");
    REQUIRE(eave != nullptr);
    // 31 ft 7 5/8 in and 1/16 in more agree; half up on the 1/16 in.
    CHECK(eave->length(job.practice) == feet(31) + inches(7) + sixteenths(11));
    CHECK(eave->remainder() == feet(9));
    CHECK(eave->style == Style::full);
    CHECK(eave->finished_by == "Ada");
    CHECK(job.unknown_events == 1);
}

TEST_CASE("The golden journal of sticks gives its lines, its events, its bytes and its job") {
    const Bytes bytes = golden_journal("sticks.journal");
    const JournalRead read = read_journal(bytes);
    CHECK(read.set_aside.empty());
    CHECK(same_events(read.events, sticks_record()));
    CHECK(journal_of(sticks_record()) == bytes);
    std::string lines;
    for (const Event& event : read.events) {
        lines += print_event_id(event.id) + " " + event.by + ": " + describe(event.fact).english() +
                 "\n";
    }
    CHECK(lines == golden("sticks.txt"));

    const Job job = replay(read.events);
    CHECK(job.practice.stock == feet(12));
    CHECK(job.stock_shorter == std::vector<Length>{feet(10), feet(8)});
    CHECK(job.prefer == Prefer::sticks);
    CHECK(job.sticks_opened == 2);  // a stick measured short, a cleat spoiled
    // Two of the wrap; the stick of 9 ft 11 in; of two offcuts one was 39 in and the other was
    // spoiled.
    REQUIRE(job.offcuts.size() == 3);
    CHECK(job.offcuts[0].count == 2);
    CHECK(job.offcuts[0].length == inches(67));
    CHECK(job.offcuts[1].length == inches(119));
    CHECK(job.offcuts[2].length == inches(39));
    CHECK(job.supplies.size() == 1);
    CHECK(job.find("B")->edge.looks == Looks::free);
    CHECK(job.find("B")->chosen.size() == 1);
}

TEST_CASE("The golden journal of sections gives its lines, its events, its bytes and its job") {
    const Bytes bytes = golden_journal("sections.journal");
    const JournalRead read = read_journal(bytes);
    CHECK(read.set_aside.empty());
    CHECK(same_events(read.events, sections_record()));
    CHECK(journal_of(sections_record()) == bytes);
    std::string lines;
    for (const Event& event : read.events) {
        lines += print_event_id(event.id) + " " + event.by + ": " + describe(event.fact).english() +
                 "\n";
    }
    CHECK(lines == golden("sections.txt"));

    const Job job = replay(read.events);
    REQUIRE(job.sections.size() == 1);  // the gable's is the catalogue's again
    const std::vector<LegChosen>& legs = job.sections.at("eave_rolled");
    REQUIRE(legs.size() == 4);
    CHECK(legs[1].width == inches(6));
    CHECK(legs[2].bend == microdegrees(-25'500'000));
    CHECK(legs[3].hem == Hem::closed);
}

}  // namespace
}  // namespace hemline
