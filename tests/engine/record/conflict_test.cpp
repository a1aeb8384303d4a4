// Two people out of reach of each other write about the same edge: what is shown, what waits, and
// what settles it.
#include <doctest/doctest.h>

#include <algorithm>

#include "engine/record/job.h"
#include "engine/record/pick.h"
#include "engine/record/seen.h"
#include "engine/record/standing.h"
#include "engine/words/result.h"
#include "engine/work/procedure.h"
#include "engine/work/readiness.h"

namespace hemline {
namespace {

constexpr Length read = inches(120);

/// A tablet that writes what it is told, having seen what it is told.
struct Pen {
    std::vector<Event> events;
    std::int64_t clock = 1'000;

    EventId write(std::uint64_t device, Fact fact, std::vector<EventId> supersedes = {}) {
        std::uint32_t sequence = 1;
        for (const Event& event : events) {
            if (event.id.device == device) {
                sequence = std::max(sequence, event.id.sequence + 1);
            }
        }
        events.push_back(
            {{device, sequence}, {++clock, 0}, "Ada", std::move(supersedes), std::move(fact)});
        return events.back().id;
    }
    [[nodiscard]] Job job() const { return replay(in_order(events)); }
};

Pen edge_read_once() {
    Pen pen;
    Edge edge;
    edge.id = "A";
    edge.pitch = rise_in_12(5);
    pen.write(1, EdgeAdded{edge});
    pen.write(1, ReadingTaken{"A", ReadingOf::edge, read});
    return pen;
}

Text waits(const Job& job) { return reading_missing(job.edges.at(0), job.practice); }

TEST_CASE("Two readings made apart are both kept and shown, and the cut waits") {
    Pen pen = edge_read_once();
    const EventId first = pen.events.back().id;
    const EventId ada = pen.write(1, ReadingTaken{"A", ReadingOf::edge, read}, {first});
    CHECK(waits(pen.job()).empty());
    const EventId ben = pen.write(2, ReadingTaken{"A", ReadingOf::edge, read + inches(1)}, {first});
    const Job job = pen.job();
    CHECK(job.edges[0].readings.size() == 3);
    REQUIRE(job.conflicts.size() == 1);
    CHECK(job.conflicts[0].sides == std::vector<Tip>{{ada, ada}, {ben, ben}});
    CHECK(job.conflicts[0].thing.subject == Subject::reading);
    CHECK(waits(job) ==
          "Two tablets disagree on the length of edge A: pick one, or measure again.");
    CHECK(status_of(job.edges[0], {}, job.practice) == EdgeStatus::undecided);
    // A second reading by who had seen the first does not disagree, on whichever tablet.
    pen.events.pop_back();
    pen.write(2, ReadingTaken{"A", ReadingOf::edge, read}, {ada});
    CHECK(pen.job().conflicts.empty());
}

TEST_CASE("A reading taken again, having seen both, ends the wait with the readings that agree") {
    Pen pen = edge_read_once();
    const EventId first = pen.events.back().id;
    const EventId ada = pen.write(1, ReadingTaken{"A", ReadingOf::edge, read}, {first});
    const EventId ben = pen.write(2, ReadingTaken{"A", ReadingOf::edge, read + inches(1)}, {first});
    pen.write(3, ReadingTaken{"A", ReadingOf::edge, read + inches(1)}, {ada, ben});
    const Job job = pen.job();
    CHECK(job.conflicts.empty());
    CHECK(waits(job).empty());
    // Ada's two readings agree as well, but it was Ben's that was measured again.
    CHECK(job.edges[0].length(job.practice) == read + inches(1));
}

TEST_CASE("A pick crosses out the other side with all that led to it alone, and is no reading") {
    Pen pen = edge_read_once();
    const EventId first = pen.events.back().id;
    const EventId ada = pen.write(1, ReadingTaken{"A", ReadingOf::edge, read}, {first});
    const Length other = read + inches(1);
    const EventId ben = pen.write(2, ReadingTaken{"A", ReadingOf::edge, other}, {first});
    const EventId ben2 = pen.write(2, ReadingTaken{"A", ReadingOf::edge, other}, {ben});
    const Result<ToWrite> picked = pick(pen.job(), in_order(pen.events), ada);
    REQUIRE(picked);
    CHECK(picked->supersedes == std::vector<EventId>{ada, ben2});
    pen.write(3, picked->fact, picked->supersedes);
    const Job job = pen.job();
    CHECK(job.conflicts.empty());
    CHECK(job.struck == std::set<EventId>{ben, ben2});
    CHECK(job.edges[0].readings.size() == 4);
    CHECK(job.edges[0].length(job.practice) == read);
    CHECK_FALSE(pick(job, in_order(pen.events), ada));
    CHECK_FALSE(pick(job, in_order(pen.events), EventId{9, 9}));
}

TEST_CASE("A rule made apart holds every edge, a plan those it divides, all else its own") {
    Conflict conflict;
    conflict.thing.name = "A";
    const auto holds = [&](Subject subject, const char* edge) {
        conflict.thing.subject = subject;
        return conflict.holds(edge);
    };
    CHECK(holds(Subject::rule, "B"));
    CHECK(holds(Subject::reading, "A"));
    CHECK_FALSE(holds(Subject::reading, "B"));
    CHECK_FALSE(holds(Subject::job, "A"));
    conflict.edges = {"B"};
    CHECK(holds(Subject::plan, "B"));
    CHECK_FALSE(holds(Subject::plan, "A"));
}

TEST_CASE("Striking the reading that settled it brings the conflict back") {
    Pen pen = edge_read_once();
    const EventId first = pen.events.back().id;
    const EventId ada = pen.write(1, ReadingTaken{"A", ReadingOf::edge, read}, {first});
    const EventId ben = pen.write(2, ReadingTaken{"A", ReadingOf::edge, read + inches(1)}, {first});
    const EventId again = pen.write(3, ReadingTaken{"A", ReadingOf::edge, feet(9)}, {ada, ben});
    pen.write(3, Struck{again, "slip of the finger"});
    REQUIRE(pen.job().conflicts.size() == 1);
    CHECK(pen.job().conflicts[0].sides == std::vector<Tip>{{ada, ada}, {ben, ben}});
}

TEST_CASE("A reading seen through one that was struck since is still seen") {
    Pen pen = edge_read_once();
    const EventId first = pen.events.back().id;
    const EventId ben = pen.write(2, ReadingTaken{"A", ReadingOf::edge, feet(9)}, {first});
    pen.write(3, ReadingTaken{"A", ReadingOf::edge, read}, {ben});
    pen.write(2, Struck{ben, "burnt inch"});
    CHECK(pen.job().conflicts.empty());
}

TEST_CASE("One piece cut by two tablets is a conflict; the loss of one leaves the other standing") {
    Pen pen = edge_read_once();
    const PieceCut cut{"A", TrimRole::main, 1, feet(6), {feet(10), {}}};
    const EventId ada = pen.write(1, cut), ben = pen.write(2, cut);
    CHECK(pen.job().conflicts.size() == 1);
    CHECK(pen.job().sticks_opened == 2);
    for (const auto& [lost, left] : {std::pair(ada, ben), std::pair(ben, ada)}) {
        Pen after = pen;
        after.write(3, PieceSpoiled{"A", TrimRole::main, 1, feet(6), {feet(10), {}}}, {lost});
        const Job job = after.job();
        CHECK(job.conflicts.empty());
        CHECK(job.sticks_opened == 2);
        REQUIRE(job.edges[0].cut.size() == 1);
        CHECK(job.edges[0].cut[0].id == left);
    }
}

TEST_CASE("Two answers to one step made apart are a conflict; what is the same agrees") {
    Pen pen = edge_read_once();
    pen.write(1, StepDone{"A", "fasten", 1, {AnswerKind::count, {}, 8, ""}, "", ""});
    pen.write(2, StepDone{"A", "fasten", 1, {AnswerKind::count, {}, 9, ""}, "", ""});
    REQUIRE(pen.job().conflicts.size() == 1);
    CHECK(pen.job().conflicts[0].what() ==
          "Two tablets disagree on the step \"fasten\" of piece 1 on edge A: pick one, or enter it "
          "again.");
    pen.events.resize(2);
    pen.write(1, RuleSet{"lap", "6 in"});
    pen.write(2, RuleSet{"lap", "6 in"});
    CHECK(pen.job().conflicts.empty());
    pen.write(3, RuleSet{"lap", "8 in"});
    CHECK(pen.job().conflicts.size() == 1);
    CHECK(pen.job().edges[0].undecided.size() == 1);  // every cut depends on the rules
}

TEST_CASE("A number used twice is kept twice and flagged, and seen only when named twice") {
    Pen pen = edge_read_once();
    const EventId number{1, 3};
    pen.events.push_back({number, {2'000, 0}, "", {}, ReadingTaken{"A", ReadingOf::edge, read}});
    pen.events.push_back(
        {number, {2'001, 0}, "", {}, ReadingTaken{"A", ReadingOf::edge, read + inches(2)}});
    const auto flags = [](const Job& job) {
        return std::count_if(
            job.conflicts.begin(), job.conflicts.end(),
            [](const Conflict& conflict) { return conflict.apart == Apart::number_twice; });
    };
    const Job job = pen.job();
    CHECK(job.edges[0].readings.size() == 3);
    CHECK(job.conflicts.size() == 2);
    CHECK(flags(job) == 1);
    CHECK_FALSE(pick(job, in_order(pen.events), number));
    const Event next{{9, 1}, {9'000, 0}, "", {}, ReadingTaken{"A", ReadingOf::edge, {}}};
    CHECK(Seen(in_order(pen.events)).of(next) == std::vector<EventId>{number, number});
    Pen once = pen, both = pen;
    once.clock = both.clock = 3'000;
    once.write(2, ReadingTaken{"A", ReadingOf::edge, read}, {number});
    CHECK_FALSE(once.job().edges[0].undecided.empty());  // that tablet had seen one of the two
    both.write(2, ReadingTaken{"A", ReadingOf::edge, read}, {number, number});
    CHECK(both.job().edges[0].undecided.empty());
    CHECK(flags(both.job()) == 1);
}

TEST_CASE("Old journals of one tablet, which name nothing they had seen, hold no conflict") {
    Pen pen = edge_read_once();
    for (int i = 0; i < 5; ++i) {
        pen.write(1, ReadingTaken{"A", ReadingOf::edge, read + inches(i)});
        pen.write(1, EdgeFinished{"A", ""});
    }
    CHECK(pen.job().conflicts.empty());
}

TEST_CASE("Two tablets that chose other stock, or other looks of one edge, are in conflict") {
    const auto conflicts = [](const Fact& here, const Fact& there) {
        const std::vector<Event> events = {{{1, 1}, {1, 0}, "Ada", {}, here},
                                           {{2, 1}, {2, 0}, "Ben", {}, there}};
        return standing_of(events).conflicts.size();
    };
    CHECK(conflicts(StockChosen{{feet(12)}}, StockChosen{{feet(10)}}) == 1);
    CHECK(conflicts(StockChosen{{feet(12)}}, StockChosen{{feet(12)}}) == 0);
    CHECK(conflicts(LooksChosen{"A", Looks::free}, StyleChosen{"A", Style::full}) == 1);
    CHECK(conflicts(LooksChosen{"A", Looks::free}, LooksChosen{"B", Looks::balanced}) == 0);
    CHECK(conflicts(MetalCounted{"A", TrimRole::main, feet(7), 2},
                    MetalCounted{"A", TrimRole::main, feet(7), 2}) == 0);  // both lie there
}

}  // namespace
}  // namespace hemline
