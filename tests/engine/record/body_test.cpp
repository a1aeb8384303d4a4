// The walk round a roof in the journal: tests/golden/body.journal must always open, and body.txt
// is what it gives.
#include <doctest/doctest.h>

#include "engine/record/event_bytes.h"
#include "engine/record/fact_words.h"
#include "engine/record/job.h"
#include "engine/record/pick.h"
#include "engine/words/result.h"
#include "tests/engine/record/body_record.h"
#include "tests/engine/record/golden.h"
#include "tests/engine/record/same_event.h"

namespace hemline {
namespace {

std::string body_lines(const std::vector<Event>& events) {
    std::string lines;
    for (const Event& event : events) {
        lines += print_event_id(event.id) + " " + event.by + ": " + describe(event.fact).english() +
                 "\n";
    }
    return lines;
}

TEST_CASE("The golden journal of a walked roof gives its lines, its events and its bytes") {
    const std::string text = golden("body.journal");
    const Bytes bytes(text.begin(), text.end());
    const JournalRead read = read_journal(bytes);
    CHECK(read.set_aside.empty());
    CHECK(same_events(read.events, body_record()));
    CHECK(journal_of(body_record()) == bytes);
    CHECK(body_lines(read.events) == golden("body.txt"));
}

TEST_CASE("A body is what its last walk says, and gone when that has no sides") {
    std::vector<Event> events = body_record();
    Job job = replay(events);
    REQUIRE(job.bodies.size() == 2);
    CHECK(job.bodies[0].sides == shed_walked().sides);
    CHECK(job.bodies[1].host->up == feet(-2));
    CHECK(job.find("E")->place == PlaceOnBody{"1", "A", "C", 0});
    CHECK_FALSE(job.find("A")->place);

    BodyWalked wider = shed_walked();
    wider.sides[0].length = feet(40);
    const auto add = [&](Fact fact) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{eave_device, number}, {1'820'000'001'000, number}, "Ada", {}, fact});
        job = replay(events);
    };
    add(wider);
    REQUIRE(job.bodies.size() == 2);
    CHECK(job.bodies[0].id == "1");
    CHECK(job.bodies[0].sides[0].length == feet(40));
    add(BodyWalked{"1", {}, false, {}});
    REQUIRE(job.bodies.size() == 1);
    CHECK(job.bodies[0].id == "2");
}

TEST_CASE("An edge that is said anew keeps its place on the roof") {
    std::vector<Event> events = body_record();
    Edge ridge = replay(events).find("E")->edge;
    ridge.left = End::hip;
    events.push_back({{eave_device, 9}, {1'820'000'001'000, 0}, "Ada", {}, EdgeAdded{ridge}});
    const Job job = replay(events);
    CHECK(job.find("E")->edge.left == End::hip);
    CHECK(job.find("E")->place == PlaceOnBody{"1", "A", "C", 0});
}

TEST_CASE("Two tablets that walk one body apart disagree, hold no edge, and one is picked") {
    std::vector<Event> events = body_record();
    for (const int wide : {31, 32}) {
        BodyWalked walked = shed_walked();
        walked.sides[0].length = feet(wide);
        events.push_back({{static_cast<std::uint64_t>(wide), 1},
                          {1'820'000'001'000, static_cast<std::uint32_t>(wide)},
                          "Ada",
                          {{eave_device, 5}},
                          walked});
    }
    Job job = replay(events);
    REQUIRE(job.conflicts.size() == 1);
    CHECK(job.conflicts[0].thing.subject == Subject::body);
    CHECK(job.conflicts[0].what().english() ==
          "Two tablets disagree on the walk round roof 1: pick one, or enter it again.");
    CHECK_FALSE(job.conflicts[0].holds("1"));
    CHECK(job.find("A")->undecided.empty());
    const Result<ToWrite> picked = pick(job, events, {31, 1});
    REQUIRE(picked);
    events.push_back({{31, 2}, {1'820'000'002'000, 0}, "Ada", picked->supersedes, picked->fact});
    CHECK(read_journal(journal_of({events.back()})).events.size() == 1);
    job = replay(events);
    CHECK(job.conflicts.empty());
    CHECK(job.bodies[0].sides[0].length == feet(31));
}

TEST_CASE("A pitch said once holds for the body, and one of an edge's own goes first") {
    std::vector<Event> events = body_record();
    for (Event& event : events) {
        if (auto* const added = std::get_if<EdgeAdded>(&event.fact)) {
            added->edge.pitch.reset();
            added->edge.pitch2.reset();
        }
    }
    CHECK_FALSE(replay(events).find("C")->edge.pitch);
    const auto take = [&](const char* edge, int rise) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{eave_device, number},
                          {1'820'000'001'000, number},
                          "Ada",
                          {},
                          PitchTaken{edge, rise_in_12(rise)}});
    };
    take("A", 5);
    Job job = replay(events);
    CHECK(job.find("C")->edge.pitch == rise_in_12(5));
    CHECK(job.find("E")->edge.pitch == rise_in_12(5));
    CHECK(job.find("E")->edge.pitch2 == rise_in_12(5));
    CHECK_FALSE(job.find("B")->edge.pitch);  // a gable's slope has that of its eave, once placed
    take("C", 7);
    take("A", 6);
    job = replay(events);
    CHECK(job.find("C")->edge.pitch == rise_in_12(7));
    CHECK(job.find("E")->edge.pitch == rise_in_12(6));
    CHECK(job.find("E")->edge.pitch2 == rise_in_12(7));
}

TEST_CASE("More bodies than a job holds are named and left out") {
    std::vector<Event> events;
    for (std::uint32_t i = 1; i <= bodies_most + 1; ++i) {
        BodyWalked walked = shed_walked();
        walked.body = std::to_string(i);
        events.push_back({{eave_device, i}, {1'820'000'000'000, i}, "Ada", {}, walked});
    }
    const Job job = replay(events);
    CHECK(job.bodies.size() == bodies_most);
    REQUIRE(job.left_out.all().size() == 1);
    CHECK(job.left_out.all()[0].what.english().find("41 is left out") != std::string::npos);
}

}  // namespace
}  // namespace hemline
