// An edge removed here and cut there returns, and both tablets say so.
#include "engine/record/edge_back.h"

#include <doctest/doctest.h>

#include "engine/record/pick.h"
#include "engine/words/result.h"
#include "engine/work/readiness.h"
#include "tests/engine/record/apart.h"

namespace hemline {
namespace {

/// Ada takes edge A off, Ben cuts its first piece; then they meet.
struct Back {
    ApartCrew crew = crew_with_edge();
    EventId off = crew.write(1, EdgeTakenOff{"A"});
    EventId cut = crew.write(2, PieceCut{"A", TrimRole::wrap, 1, feet(6), new_stick}, "Ben");

    Back() { crew.meet({1, 2}); }
};

TEST_CASE("An edge taken off on one tablet and cut for on another is back, and both say so") {
    Back back;
    for (const std::uint64_t tablet : {1U, 2U}) {
        const Job job = back.crew.job_on(tablet);
        REQUIRE(job.find("A") != nullptr);
        REQUIRE(job.conflicts.size() == 1);
        CHECK(job.conflicts[0].apart == Apart::edge_back);
        CHECK(job.conflicts[0].sides ==
              std::vector<Tip>{{back.off, back.off}, {back.cut, back.cut}});
        CHECK(job.conflicts[0].holds("A"));
        CHECK(
            job.conflicts[0].what() ==
            "Edge A was taken off the job on one tablet, and fascia wrap piece 1 on edge A is cut "
            "for it on another. It is back: keep it, or undo the cut.");
        CHECK(reading_missing(*job.find("A"), job.practice) == job.conflicts[0].what());
    }
}

TEST_CASE("Kept, the edge is on the job again as it was") {
    Back back;
    back.crew.write(2, PitchTaken{"A", rise_in_12(9)});
    back.crew.pick(2, back.cut);
    const Job job = back.crew.job();
    CHECK(job.conflicts.empty());
    REQUIRE(job.find("A") != nullptr);
    CHECK(job.find("A")->edge.pitch == rise_in_12(9));
    CHECK(job.find("A")->cut.size() == 1);
    CHECK_FALSE(job.find("A")->taken_off);
}

TEST_CASE("The cut undone, the edge is off; the taking off undone, it stays") {
    Back back;
    ApartCrew other = back.crew;
    back.crew.undo(2, back.cut);
    CHECK(back.crew.job().find("A") == nullptr);
    CHECK(back.crew.job().conflicts.empty());
    other.undo(1, back.off);
    CHECK(other.job().find("A") != nullptr);
    CHECK(other.job().conflicts.empty());
}

TEST_CASE("Metal that was struck since does not stand against the taking off") {
    ApartCrew crew = crew_with_edge();
    crew.write(1, EdgeTakenOff{"A"});
    const EventId counted = crew.write(2, MetalCounted{"A", TrimRole::main, feet(7), 2});
    const EventId struck = crew.write(2, MetalCounted{"A", TrimRole::main, feet(6), 1});
    crew.undo(2, struck);
    const Job job = crew.job();
    REQUIRE(job.conflicts.size() == 1);
    CHECK(job.conflicts[0].sides[1].id == counted);
}

TEST_CASE("That metal is cut for it cannot be picked away") {
    Back back;
    const std::vector<Event> held = back.crew.held_by(1);
    const Result<ToWrite> picked = pick(replay(held), held, back.off);
    REQUIRE_FALSE(picked);
    CHECK(picked.problem().what == "Metal is cut or counted for edge A: it stays.");
}

TEST_CASE("Metal counted or lost for an edge that was taken off brings it back too") {
    for (const Fact& fact : {Fact(MetalCounted{"A", TrimRole::main, feet(7), 2}),
                             Fact(PieceSpoiled{"A", TrimRole::main, 1, feet(7), new_stick})}) {
        ApartCrew crew = crew_with_edge();
        const EventId off = crew.write(1, EdgeTakenOff{"A"});
        const EventId metal = crew.write(2, fact);
        REQUIRE(crew.job().conflicts.size() == 1);
        CHECK(crew.job().conflicts[0].sides == std::vector<Tip>{{off, off}, {metal, metal}});
        CHECK(crew.job().conflicts[0].what() ==
              "Edge A was taken off the job on one tablet, and metal was counted or lost for it on "
              "another. It is back: keep it, or undo that.");
    }
}

TEST_CASE("Whether an edge is on the job at all is asked once, and not twice over") {
    Back back;
    Edge changed;
    changed.id = "A";
    changed.left = End::wall;
    back.crew.write(3, EdgeAdded{changed});
    REQUIRE(back.crew.job().conflicts.size() == 1);
    CHECK(back.crew.job().conflicts[0].apart == Apart::values);
    back.crew.meet({1, 2, 3});
    back.crew.pick(3, back.off);
    REQUIRE(back.crew.job().conflicts.size() == 1);  // off, but cut for
    CHECK(back.crew.job().conflicts[0].apart == Apart::edge_back);
}

}  // namespace
}  // namespace hemline
