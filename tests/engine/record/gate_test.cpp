// The day's safety questions: tests/golden/gate.journal must always open, and gate.txt is what it
// gives. What a no does is common practice, no published source.
#include <doctest/doctest.h>

#include "engine/record/event_bytes.h"
#include "engine/record/fact_words.h"
#include "engine/record/job.h"
#include "tests/engine/record/gate_record.h"
#include "tests/engine/record/golden.h"
#include "tests/engine/record/same_event.h"

namespace hemline {
namespace {

std::string gate_lines(const std::vector<Event>& events) {
    std::string lines;
    for (const Event& event : events) {
        lines += print_event_id(event.id) + " " + event.by + ": " + describe(event.fact).english() +
                 "\n";
    }
    return lines;
}

/// The record up to that event.
Job after(std::size_t events) {
    const std::vector<Event> all = gate_record();
    return replay(std::span(all).first(events));
}

TEST_CASE("The golden journal of the day's questions gives its lines, its events and its bytes") {
    const std::string text = golden("gate.journal");
    const Bytes bytes(text.begin(), text.end());
    const JournalRead read = read_journal(bytes);
    CHECK(read.set_aside.empty());
    CHECK(same_events(read.events, gate_record()));
    CHECK(journal_of(gate_record()) == bytes);
    CHECK(gate_lines(read.events) == golden("gate.txt"));
}

TEST_CASE("A no for the whole roof holds every edge, a no here its edge, until each is lifted") {
    CHECK_FALSE(after(2).edges[0].said_no);
    const Job windy = after(3);
    REQUIRE(windy.edges[0].said_no);
    CHECK(windy.edges[0].said_no->by == "Dee");
    CHECK(windy.edges[0].said_no->checks == std::vector{GateCheck::wires, GateCheck::wind});
    // Both stand now; the foreman had seen the first alone.
    CHECK(noes_on(after(4), "A").size() == 2);
    CHECK(noes_on(after(4), "B").size() == 1);
    const Job lifted = after(5);
    REQUIRE(lifted.edges[0].said_no);
    CHECK(lifted.edges[0].said_no->by == "Cy");
    CHECK(noes_on(lifted, "A") == std::vector<EventId>{{eave_device, 4}});
    CHECK(noes_on(lifted, "B").empty());
}

TEST_CASE("An edge sent back has nothing accepted any more") {
    std::vector<Event> events = gate_record();
    CHECK(replay(events).edges[0].accepted.size() == 1);
    events.push_back({{eave_device, 7}, {1'820'000'000'000, 0}, "Ben", {}, EdgeSentBack{"A", "x"}});
    CHECK(replay(events).edges[0].accepted.empty());
}

}  // namespace
}  // namespace hemline
