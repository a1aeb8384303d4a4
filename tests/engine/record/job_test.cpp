// The job is the fold of its events: readings, metal, steps and strikes.
#include "engine/record/job.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>

#include "tests/engine/record/eave_record.h"

namespace hemline {
namespace {

/// A record written by a single device, one event every millisecond.
struct Record {
    std::vector<Event> events;

    EventId add(Fact fact, std::vector<EventId> supersedes = {}) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{1, number}, {number, 0}, "Ada", std::move(supersedes), std::move(fact)});
        return events.back().id;
    }
    EventId cut(int piece, Length length, MetalTaken metal, TrimRole role = TrimRole::main) {
        return add(PieceCut{"A", role, piece, length, metal});
    }
    [[nodiscard]] Job job() const { return replay(events); }
};

Edge edge_called(const std::string& id) {
    Edge edge;
    edge.id = id;
    return edge;
}

Record record_of_edge_a() {
    Record record;
    record.add(JobStarted{"Invented house", "common practice"});
    record.add(EdgeAdded{edge_called("A")});
    return record;
}

TEST_CASE("A job's name, edges, pitch, style and rules are the latest stated") {
    Record record = record_of_edge_a();
    record.add(PitchTaken{"A", rise_in_12(5)});
    record.add(StyleChosen{"A", Style::equal});
    record.add(RuleSet{"lap", "8 in"});
    record.add(RuleSet{"no such rule", "8 in"});
    record.add(EdgeAdded{edge_called("B")});
    record.add(ReadingTaken{"A", ReadingOf::edge, feet(20)});
    Edge edge = edge_called("A");
    edge.left = End::gable;
    edge.pitch = rise_in_12(6);
    record.add(EdgeAdded{edge});
    const Job job = record.job();
    CHECK(job.name == "Invented house");
    CHECK(job.practice.lap == inches(8));
    REQUIRE(job.edges.size() == 2);
    const EdgeWork* a = job.find("A");
    REQUIRE(a == &job.edges[0]);
    CHECK(a->edge.left == End::gable);
    CHECK(a->edge.pitch == rise_in_12(6));
    CHECK(a->style == Style::equal);
    CHECK(a->readings.size() == 1);  // a replaced edge keeps its readings
    CHECK(job.find("C") == nullptr);
}

TEST_CASE("A struck reading stays in the record and no longer counts, wherever the strike stands") {
    Record record = record_of_edge_a();
    record.add(ReadingTaken{"A", ReadingOf::edge, feet(31)});
    const EventId wrong = record.add(ReadingTaken{"A", ReadingOf::edge, feet(31) + inches(1)});
    record.add(ReadingTaken{"A", ReadingOf::edge, feet(31) + sixteenths(1)});
    record.add(Struck{wrong, "burnt inch"});
    Job job = record.job();
    REQUIRE(job.find("A")->readings.size() == 3);
    CHECK(job.find("A")->readings[1].struck);
    CHECK_FALSE(job.find("A")->readings[0].struck);
    const Verdict verdict = job.find("A")->verdict(job.practice);
    CHECK(verdict.agreement == Agreement::agree);
    CHECK(job.find("A")->length(job.practice) == verdict.length);
    std::rotate(record.events.begin(), record.events.end() - 1, record.events.end());
    CHECK(record.job().find("A")->readings[1].struck);
}

TEST_CASE("What is left for the last piece is its own reading, the latest that stands") {
    Record record = record_of_edge_a();
    record.add(ReadingTaken{"A", ReadingOf::edge, feet(31)});
    CHECK_FALSE(record.job().find("A")->remainder());
    record.add(ReadingTaken{"A", ReadingOf::remainder, feet(9)});
    const EventId later = record.add(ReadingTaken{"A", ReadingOf::remainder, feet(8)});
    CHECK(record.job().find("A")->remainder() == feet(8));
    CHECK(record.job().find("A")->verdict({}).agreement == Agreement::once);
    record.add(Struck{later, ""});
    CHECK(record.job().find("A")->remainder() == feet(9));
}

TEST_CASE(
    "A cut leaves what is left of the stick, however short: the plan may have a piece for it") {
    Record record = record_of_edge_a();
    const EventId first = record.cut(1, inches(80), new_stick);
    Job job = record.job();
    CHECK(job.sticks_opened == 1);
    REQUIRE(job.offcuts.size() == 1);
    CHECK(job.offcuts[0].left_by == first);
    CHECK(job.offcuts[0].length == inches(40));
    record.cut(2, inches(16), {feet(10), first});  // leaves 24 in
    job = record.job();
    CHECK(job.sticks_opened == 1);
    REQUIRE(job.offcuts.size() == 1);
    CHECK(job.offcuts[0].length == inches(24));
    record.cut(3, sixteenths(1), {feet(10), job.offcuts[0].left_by});
    job = record.job();
    REQUIRE(job.offcuts.size() == 1);
    CHECK(job.offcuts[0].length == inches(24) - sixteenths(1));
    record.cut(4, inches(24) - sixteenths(1), {feet(10), job.offcuts[0].left_by});
    CHECK(record.job().offcuts.empty());
}

TEST_CASE("The kerf is lost at each cut") {
    Record record = record_of_edge_a();
    record.add(RuleSet{"kerf", "1/8 in"});
    record.cut(1, inches(80), new_stick);
    CHECK(record.job().offcuts.at(0).length == inches(40) - sixteenths(2));
}

TEST_CASE(
    "Metal is never invented: an offcut that is not there leaves nothing and opens no stick") {
    Record record = record_of_edge_a();
    const EventId first = record.cut(1, inches(60), new_stick);
    record.cut(2, inches(20), {feet(10), first});
    const EventId again = record.cut(3, inches(20), {feet(10), first});  // another tablet's hand
    const Job job = record.job();
    CHECK(job.sticks_opened == 1);
    CHECK(job.offcuts.size() == 1);
    CHECK(job.find("A")->cut.back().id == again);  // it is cut all the same
}

TEST_CASE("A piece spoiled after its cut must be cut again, and its metal is gone once") {
    Record record = record_of_edge_a();
    const EventId cut = record.cut(1, inches(80), new_stick);
    record.add(PieceSpoiled{"A", TrimRole::main, 1, inches(80), new_stick}, {cut});
    record.add(PieceSpoiled{"A", TrimRole::main, 1, inches(80), new_stick}, {cut});  // both saw it
    const Job job = record.job();
    CHECK(job.find("A")->cut.empty());
    CHECK(job.find("A")->spoiled == 2);
    CHECK(job.sticks_opened == 1);
    REQUIRE(job.offcuts.size() == 1);  // what the cut itself left
    CHECK(job.offcuts[0].length == inches(40));
}

TEST_CASE("Metal spoiled before there was a cut is taken, and the rest is kept") {
    Record record = record_of_edge_a();
    const EventId spoiled = record.add(PieceSpoiled{"A", TrimRole::main, 1, inches(50), new_stick});
    const Job job = record.job();
    CHECK(job.sticks_opened == 1);
    REQUIRE(job.offcuts.size() == 1);
    CHECK(job.offcuts[0].left_by == spoiled);
    CHECK(job.offcuts[0].length == inches(70));
    CHECK(job.find("A")->cut.empty());
}

TEST_CASE("A piece cut again stands as cut last, and a piece of another role stands beside it") {
    Record record = record_of_edge_a();
    record.cut(1, inches(80), new_stick);
    record.cut(1, inches(90), new_stick, TrimRole::cleat);
    const EventId last = record.cut(1, inches(81), new_stick);
    const Job job = record.job();
    REQUIRE(job.find("A")->cut.size() == 2);
    CHECK(job.find("A")->cut[1].id == last);
    CHECK(job.find("A")->cut[1].cut == inches(81));
    CHECK(job.sticks_opened == 3);
}

TEST_CASE("A struck cut never took its metal") {
    Record record = record_of_edge_a();
    const EventId cut = record.cut(1, inches(80), new_stick);
    record.add(Struck{cut, ""});
    const Job job = record.job();
    CHECK(job.sticks_opened == 0);
    CHECK(job.offcuts.empty());
    CHECK(job.find("A")->cut.empty());
    CHECK(job.struck.count(cut) == 1);
}

TEST_CASE("A step done again stands as answered last, and a finished edge until it is struck") {
    Record record = record_of_edge_a();
    record.add(StepDone{"A", "hook", 1, {AnswerKind::seen, {}, 0, "gap"}, "", ""});
    record.add(StepDone{"A", "hook", 2, {}, "", ""});
    record.add(StepDone{"A", "hook", 1, {AnswerKind::seen, {}, 0, "tight"}, "", ""});
    const EventId finished = record.add(EdgeFinished{"A", ""});
    record.add(EdgeAdded{edge_called("A")});
    Job job = record.job();
    REQUIRE(job.find("A")->steps.size() == 2);
    CHECK(job.find("A")->steps[1].step.answer.seen == "tight");
    CHECK(job.find("A")->finished == finished);
    CHECK(job.find("A")->finished_by == "Ada");
    record.add(Struck{finished, ""});
    CHECK_FALSE(record.job().find("A")->finished);
}

TEST_CASE("An event that makes no sense here changes nothing") {
    Record record = record_of_edge_a();
    record.cut(0, inches(80), new_stick);
    record.cut(-3, inches(80), new_stick);
    record.add(PieceCut{"nowhere", TrimRole::main, 1, inches(80), new_stick});
    record.add(PieceSpoiled{"A", TrimRole::main, 0, inches(80), new_stick});
    record.add(ReadingTaken{"nowhere", ReadingOf::edge, inches(80)});
    record.add(StepDone{"A", "hook", -1, {}, "", ""});
    record.add(EdgeFinished{"nowhere", ""});
    record.add(Struck{{99, 99}, ""});
    const Job job = record.job();
    CHECK(job.edges.size() == 1);
    CHECK(job.sticks_opened == 0);
    CHECK(job.find("A")->cut.empty());
    CHECK(job.find("A")->steps.empty());
    CHECK(job.find("A")->spoiled == 0);
    CHECK(job.unknown_events == 0);
}

TEST_CASE("An unknown event is counted and changes nothing else") {
    Record record;
    record.events = eave_record();
    const Job job = record.job();
    CHECK(job.unknown_events == 1);
    CHECK(job.edges.size() == 1);
    CHECK(job.practice.lap == inches(8));
    CHECK(job.find("A")->edge.pitch == Slope{SlopeNotation::percent, 41'000'000});
}

TEST_CASE("Offcuts and what was cut from new sticks never come to more than the sticks opened") {
    CHECK(rc::check([] {
        Record record = record_of_edge_a();
        Length cut_in_all;
        const int events = *rc::gen::inRange<int>(1, 30);
        for (int i = 0; i < events; ++i) {
            const Job job = record.job();
            MetalTaken metal{feet(10), {}};
            Length there = feet(10);
            if (!job.offcuts.empty() && *rc::gen::arbitrary<bool>()) {
                const auto chosen = *rc::gen::inRange<std::size_t>(0, job.offcuts.size());
                metal.offcut = job.offcuts[chosen].left_by;
                there = job.offcuts[chosen].length;
            }
            const Length length =
                sixteenths(*rc::gen::inRange<std::int64_t>(1, there.nm() / 1'587'500 + 1));
            cut_in_all += length;
            if (*rc::gen::arbitrary<bool>()) {
                record.cut(i + 1, length, metal);
            } else {
                record.add(PieceSpoiled{"A", TrimRole::main, i + 1, length, metal});
            }
        }
        const Job job = record.job();
        Length accounted = cut_in_all;
        for (const Offcut& offcut : job.offcuts) {
            RC_ASSERT(offcut.length > Length());
            accounted += offcut.length;
        }
        RC_ASSERT(accounted == job.sticks_opened * feet(10));
    }));
}

TEST_CASE("Sticks counted lie there so many times, and one is gone with each cut") {
    Record record = record_of_edge_a();
    const EventId counted = record.add(MetalCounted{"A", TrimRole::main, inches(60), 2});
    record.cut(1, inches(20), {inches(60), counted});
    Job job = record.job();
    REQUIRE(job.offcuts.size() == 2);
    CHECK(job.offcuts[0].count == 1);
    CHECK(job.offcuts[1].length == inches(40));
    CHECK(job.sticks_opened == 0);
    record.cut(2, inches(60), {inches(60), counted});
    record.cut(3, inches(60), {inches(60), counted});  // a third was never there
    job = record.job();
    REQUIRE(job.offcuts.size() == 1);
    CHECK(job.offcuts[0].length == inches(40));
}

TEST_CASE("A corrected count stands in place of the former, and of what is gone there is none") {
    Record record = record_of_edge_a();
    const EventId counted = record.add(MetalCounted{"A", TrimRole::main, inches(60), 5});
    const EventId again = record.add(MetalCounted{"A", TrimRole::main, inches(60), 3}, {counted});
    record.add(MetalCounted{"A", TrimRole::main, inches(60), 4}, {counted});  // by another tablet
    Job job = record.job();
    REQUIRE(job.offcuts.size() == 1);
    CHECK(job.offcuts[0].count == 3);
    CHECK(job.offcuts[0].left_by == again);
    record.add(MetalCounted{"A", TrimRole::main, inches(60), 0}, {again});
    CHECK(record.job().offcuts.empty());
    record.add(MetalCounted{"no such edge", TrimRole::main, inches(60), 1});
    CHECK(record.job().offcuts.empty());
}

TEST_CASE("A stick measured short is one on hand of its own length, once") {
    Record record = record_of_edge_a();
    const EventId short_one =
        record.add(StickMeasured{"A", TrimRole::main, new_stick, feet(9) + inches(11)});
    Job job = record.job();
    CHECK(job.sticks_opened == 1);
    REQUIRE(job.offcuts.size() == 1);
    CHECK(job.offcuts[0].length == inches(119));
    record.cut(1, inches(19), {inches(119), short_one});
    job = record.job();
    CHECK(job.sticks_opened == 1);
    REQUIRE(job.offcuts.size() == 1);
    CHECK(job.offcuts[0].length == inches(100));
    record.add(StickSpoiled{"A", TrimRole::main, {inches(100), job.offcuts[0].left_by}});
    record.add(StickSpoiled{"A", TrimRole::main, {inches(100), job.offcuts[0].left_by}});
    CHECK(record.job().offcuts.empty());
}

TEST_CASE("The longest stock divides the edges, and a rule that sets one length sets it alone") {
    Record record = record_of_edge_a();
    record.add(StockChosen{{feet(10), feet(12), feet(10)}});
    Job job = record.job();
    CHECK(job.practice.stock == feet(12));
    CHECK(job.stock_shorter == std::vector<Length>{feet(10)});
    record.add(StockChosen{{}});
    record.add(StockChosen{{inches(6)}});  // no longer than the lap
    record.add(StockChosen{{feet(10), Length()}});
    job = record.job();
    CHECK(job.practice.stock == feet(12));
    CHECK(job.stock_shorter == std::vector<Length>{feet(10)});
    record.add(RuleSet{"stock", "16 ft"});
    job = record.job();
    CHECK(job.practice.stock == feet(16));
    CHECK(job.stock_shorter.empty());
}

TEST_CASE("How an edge shall look takes back the style that was chosen for it") {
    Record record = record_of_edge_a();
    record.add(StyleChosen{"A", Style::full});
    CHECK(record.job().find("A")->style == Style::full);
    record.add(LooksChosen{"A", Looks::balanced});
    CHECK_FALSE(record.job().find("A")->style);
}

TEST_CASE("A plan picked stays until style, looks, the edge or a rule of division is chosen") {
    const auto chosen_after = [](Fact fact) {
        Record record = record_of_edge_a();
        record.add(PlanChosen{
            Prefer::laps, "eave_rolled", 0, 1, 2, {{"A", TrimRole::main, {feet(10), inches(42)}}}});
        record.add(std::move(fact));
        const Job job = record.job();
        CHECK(job.prefer == Prefer::laps);
        return job.find("A")->chosen.size();
    };
    CHECK(chosen_after(ReadingTaken{"A", ReadingOf::edge, feet(13)}) == 1);
    for (const char* divides_nothing :
         {"offcut_kept", "cleat_clear", "hem_notch_clear", "bead_gap", "bead_width",
          "screw_spacing", "screw_margin", "hook_gap_most", "seam_spacing"}) {
        CHECK(chosen_after(RuleSet{divides_nothing, "1 5/8 in"}) == 1);
    }
    CHECK(chosen_after(RuleSet{"lap", "6 in"}) == 1);  // as it was
    CHECK(chosen_after(RuleSet{"lap", "8 in"}) == 0);
    CHECK(chosen_after(StockChosen{{feet(12)}}) == 0);
    CHECK(chosen_after(StyleChosen{"A", Style::full}) == 0);
    CHECK(chosen_after(LooksChosen{"A", Looks::balanced}) == 0);
    CHECK(chosen_after(EdgeAdded{edge_called("A")}) == 0);
    CHECK(chosen_after(LapChosen{"A", inches(8)}) == 0);
}

}  // namespace
}  // namespace hemline
