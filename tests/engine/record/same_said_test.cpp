// What agrees and what does not: two that say the same agree, by their values and not by a printed
// sentence; what each answers for himself contradicts nobody.
#include <doctest/doctest.h>

#include "engine/record/about_thing.h"
#include "engine/record/fact_words.h"
#include "engine/record/standing.h"
#include "engine/work/procedure.h"
#include "tests/engine/assets.h"
#include "tests/engine/record/apart.h"

namespace hemline {
namespace {

Job apart(const Fact& here, const Fact& there) {
    ApartCrew crew = crew_with_edge();
    crew.write(1, here);
    crew.write(2, there, "Ben");
    return crew.job();
}

TEST_CASE("A line snapped on two tablets is no conflict, and the step is done") {
    const Job job = apart(StepDone{"A", "cleat_line", 0, {}, "", ""},
                          StepDone{"A", "cleat_line", 0, {}, "", ""});
    CHECK(job.conflicts.empty());
    CHECK(job.edges[0].undecided.empty());
    CHECK(job.edges[0].steps.size() == 1);
}

TEST_CASE("Two readings of one length made apart agree, and are two readings") {
    const ReadingTaken reading{"A", ReadingOf::edge, feet(12)};
    const Job job = apart(reading, reading);
    CHECK(job.conflicts.empty());
    CHECK(job.edges[0].length(job.practice) == feet(12));
}

TEST_CASE("A reading by someone who had seen two of one length leaves both counting") {
    ApartCrew crew = crew_with_edge();
    crew.write(1, ReadingTaken{"A", ReadingOf::edge, feet(12)});
    crew.write(2, ReadingTaken{"A", ReadingOf::edge, feet(12)});
    crew.meet({1, 2, 3});
    crew.write(3, ReadingTaken{"A", ReadingOf::edge, feet(13)});
    CHECK(crew.job().edges[0].verdict({}).length == feet(12));
}

TEST_CASE("What each answers for himself never conflicts, and stands for each") {
    for (const char* step : {"tie_off", "ground"}) {
        const Answer calm{AnswerKind::seen, {}, 0, "calm"}, wind{AnswerKind::seen, {}, 0, "wind"};
        const Job job = apart(StepDone{"A", step, 0, calm, "", ""},
                              StepDone{"A", step, 0, wind, "gusts", "Foreman"});
        CHECK(job.conflicts.empty());
        CHECK(job.edges[0].undecided.empty());
        CHECK(job.edges[0].steps.size() == 2);
    }
    // Whose answer it is, the name tells: a person with two tablets can contradict himself.
    ApartCrew crew = crew_with_edge();
    crew.write(1, StepDone{"A", "tie_off", 0, {}, "", ""});
    crew.write(2, StepDone{"A", "tie_off", 0, {}, "by the ridge anchor", "Ada"});
    CHECK(crew.job().conflicts.size() == 1);
}

TEST_CASE("The steps that each answers for himself are those of safety, on every edge") {
    for (const char* kind : {"eave", "gable", "headwall", "high_eave", "hip", "penetration",
                             "ridge", "sidewall", "transition", "valley"}) {
        CAPTURE(kind);
        const auto procedure = read_procedure(asset("procedures/" + std::string(kind) + ".csv"));
        REQUIRE(procedure.ok());
        for (const StepRule& rule : *procedure) {
            CAPTURE(rule.id);
            CHECK(is_personal(rule.id) == (rule.part == "Safety"));
        }
    }
}

TEST_CASE("Stock of 3000 mm and of 3001 mm set apart is a conflict") {
    const StockChosen one{{millimetres(3000)}}, other{{millimetres(3001)}};
    CHECK(apart(one, one).conflicts.empty());
    CHECK(apart(one, other).conflicts.size() == 1);
    CHECK(describe(one) != describe(other));  // the sentence tells them apart too
}

TEST_CASE("Two plans, or two words on new sticks, made apart are a conflict of the edges in them") {
    const PlanChosen one{
        Prefer::looks, "eave_two_part", 0, 0, 2, {{"A", TrimRole::main, {feet(6), feet(7)}}}};
    PlanChosen other = one;
    other.runs[0].cuts = {feet(7), feet(6)};
    CHECK(apart(one, one).conflicts.empty());
    const Job job = apart(one, other);
    REQUIRE(job.conflicts.size() == 1);
    CHECK(job.conflicts[0].edges == std::vector<std::string>{"A"});
    CHECK(job.edges[0].undecided.size() == 1);
    other.trim = "gable_rake";
    CHECK(apart(one, other).conflicts.empty());
    CHECK(apart(SupplyChosen{"A", TrimRole::main, Supply::as_wanted},
                SupplyChosen{"A", TrimRole::main, Supply::on_hand_only})
              .conflicts.size() == 1);
    CHECK(apart(SupplyChosen{"A", TrimRole::main, Supply::as_wanted},
                SupplyChosen{"A", TrimRole::wrap, Supply::on_hand_only})
              .conflicts.empty());
}

TEST_CASE("Plans and supply of journals that named nothing are one after the other, as they were") {
    ApartCrew crew = crew_with_edge();
    const auto old = [&](std::uint64_t device, const Fact& fact) {
        crew.write(device, fact);
        crew.events.back().moment.reset();
        crew.events.back().supersedes.clear();
        return crew.events.back().id;
    };
    const SupplyChosen only{"A", TrimRole::main, Supply::on_hand_only};
    const SupplyChosen wanted{"A", TrimRole::main, Supply::as_wanted};
    old(1, only);
    const EventId second = old(2, wanted);
    old(1, PlanChosen{Prefer::looks, "eave_two_part", 0, 0, 2, {}});
    old(2, PlanChosen{Prefer::looks, "eave_two_part", 0, 0, 3, {}});
    CHECK(crew.job().conflicts.empty());
    CHECK(crew.job().supplies.back().supply == wanted.supply);
    // And an event of today's kind that had not seen the last of them disagrees.
    const EventId today = crew.write(1, only);
    REQUIRE(crew.job().conflicts.size() == 1);
    CHECK(values_of(crew.job().conflicts[0]) == std::vector<EventId>{second, today});
}

TEST_CASE("Piles counted apart lie there both; one pile corrected apart is a conflict") {
    ApartCrew crew = crew_with_edge();
    const EventId pile = crew.write(1, MetalCounted{"A", TrimRole::main, feet(7), 5});
    crew.write(2, MetalCounted{"A", TrimRole::main, feet(7), 5});
    crew.meet({1, 2, 3});
    CHECK(crew.job().conflicts.empty());
    CHECK(crew.job().offcuts.size() == 2);
    ApartCrew same = crew;
    const EventId four =
        crew.write(1, MetalCounted{"A", TrimRole::main, feet(7), 4}, "Ada", {pile});
    const EventId three =
        crew.write(2, MetalCounted{"A", TrimRole::main, feet(7), 3}, "Ben", {pile});
    const Job job = crew.job();
    REQUIRE(job.conflicts.size() == 1);
    CHECK(values_of(job.conflicts[0]) == std::vector<EventId>{four, three});
    CHECK(job.conflicts[0].what() ==
          "Two tablets disagree on the metal that lies there for edge A: pick one, or enter it "
          "again.");
    CHECK(job.edges[0].undecided.size() == 1);
    for (const EventId chosen : {four, three}) {
        ApartCrew picked = crew;
        picked.meet({1, 2, 3});
        picked.pick(3, chosen);
        const Job after = picked.job();
        CHECK(after.conflicts.empty());
        REQUIRE(after.offcuts.size() == 2);
        CHECK(after.offcuts[1].left_by == chosen);
        CHECK(after.offcuts[1].count == (chosen == four ? 4 : 3));
    }
    crew.meet({1, 2, 3});
    crew.write(3, MetalCounted{"A", TrimRole::main, feet(7), 2}, "Cleo", {four});
    CHECK(crew.job().conflicts.empty());  // counted again by someone who had both
    CHECK(crew.job().offcuts.back().count == 2);
    same.write(1, MetalCounted{"A", TrimRole::main, feet(7), 4}, "Ada", {pile});
    same.write(2, MetalCounted{"A", TrimRole::main, feet(7), 4}, "Ben", {pile});
    CHECK(same.job().conflicts.empty());
    CHECK(same.job().offcuts.size() == 2);
}

TEST_CASE("One offcut measured, spoiled or counted apart is a conflict; two of a pile are two") {
    ApartCrew crew = crew_with_edge();
    const EventId cut = crew.write(1, PieceCut{"A", TrimRole::main, 1, feet(6), new_stick});
    const EventId pile = crew.write(1, MetalCounted{"A", TrimRole::main, feet(7), 5});
    crew.meet({1, 2, 3});
    const MetalTaken offcut{feet(4), cut}, of_pile{feet(7), pile};
    const auto measured = [](const MetalTaken& metal, Length length) {
        return StickMeasured{"A", TrimRole::main, metal, length};
    };
    const auto conflicts = [&](const Fact& here, const Fact& there,
                               std::vector<EventId> corrects = {}) {
        ApartCrew two = crew;
        two.write(1, here);
        two.write(2, there, "Ben", std::move(corrects));
        return two.job().conflicts.size();
    };
    CHECK(conflicts(measured(offcut, inches(47)), measured(offcut, inches(46))) == 1);
    CHECK(conflicts(measured(offcut, inches(47)), measured(offcut, inches(47))) == 0);
    CHECK(conflicts(measured(offcut, inches(47)), StickSpoiled{"A", TrimRole::main, offcut}) == 1);
    CHECK(conflicts(StickSpoiled{"A", TrimRole::main, offcut},
                    StickSpoiled{"A", TrimRole::main, offcut}) == 0);
    CHECK(conflicts(measured(offcut, inches(47)), MetalCounted{"A", TrimRole::main, inches(40), 1},
                    {cut}) == 1);
    CHECK(conflicts(measured(of_pile, feet(6)), measured(of_pile, feet(5))) == 0);
    CHECK(conflicts(StickSpoiled{"A", TrimRole::main, of_pile}, measured(of_pile, feet(5))) == 0);
    CHECK(conflicts(measured(new_stick, feet(9)), measured(new_stick, feet(8))) == 0);
    CHECK(conflicts(StickSpoiled{"A", TrimRole::main, new_stick},
                    StickSpoiled{"A", TrimRole::main, new_stick}) == 0);
    // Measured again by someone who had both lengths.
    crew.write(1, measured(offcut, inches(47)));
    const EventId ben = crew.write(2, measured(offcut, inches(46)));
    crew.meet({1, 2, 3});
    ApartCrew picked = crew;
    picked.pick(3, ben);
    CHECK(picked.job().conflicts.empty());
    CHECK(picked.job().offcuts.back().length == inches(46));
    crew.write(3, measured({feet(4), crew.job().offcuts.back().left_by}, inches(45)));
    CHECK(crew.job().conflicts.empty());
    CHECK(crew.job().offcuts.back().length == inches(45));
}

TEST_CASE("Two losses of one piece are two, and contradict nothing") {
    const PieceSpoiled loss{"A", TrimRole::main, 1, feet(6), new_stick};
    const Job job = apart(loss, loss);
    CHECK(job.conflicts.empty());
    CHECK(job.edges[0].spoiled == 2);
    CHECK(job.sticks_opened == 2);
}

TEST_CASE("A loss that had no cut supersedes nothing, whatever was lost before") {
    ApartCrew crew = crew_with_edge();
    const PieceSpoiled loss{"A", TrimRole::main, 1, feet(6), new_stick};
    crew.write(1, loss);
    crew.write(1, loss);
    CHECK(crew.events.back().supersedes.empty());
    CHECK(crew.job().sticks_opened == 2);
}

TEST_CASE("A pitch or looks said on one tablet outlive a change of the edge made apart") {
    ApartCrew crew = crew_with_edge();
    crew.write(1, PitchTaken{"A", rise_in_12(7)});
    crew.write(1, LooksChosen{"A", Looks::balanced});
    const Job there = crew.job_on(2);
    Edge changed = there.edges[0].edge;
    changed.left = End::wall;
    crew.write(2, EdgeAdded{said_anew(there.edges[0], changed)});
    Job job = crew.job();
    CHECK(job.conflicts.empty());
    CHECK(job.edges[0].edge.left == End::wall);
    CHECK(job.edges[0].edge.pitch == rise_in_12(7));
    CHECK(job.edges[0].edge.looks == Looks::balanced);
    // And on a tablet that knew an earlier pitch.
    crew.meet({1, 2, 3});
    const Job now = crew.job_on(2);
    crew.write(1, PitchTaken{"A", rise_in_12(8)});
    changed = now.edges[0].edge;
    changed.right = End::wall;
    crew.write(2, EdgeAdded{said_anew(now.edges[0], changed)});
    job = crew.job();
    CHECK(job.edges[0].edge.right == End::wall);
    CHECK(job.edges[0].edge.pitch == rise_in_12(8));
}

TEST_CASE("Every kind of event has its thing, or none for a reason") {
    static_assert(Fact::kinds == 33, "say here what the new kind is about");
    Edge edge;
    edge.id = "A";
    const MetalTaken offcut{feet(3), EventId{7, 7}};
    const std::pair<Fact, Subject> kinds[] = {
        {JobStarted{}, Subject::job},
        {EdgeAdded{edge}, Subject::edge},
        {EdgeTakenOff{"A"}, Subject::edge},
        {ReadingTaken{"A", ReadingOf::edge, {}}, Subject::reading},
        {ReadingTaken{"A", ReadingOf::remainder, {}}, Subject::remainder},
        {PitchTaken{"A", {}}, Subject::pitch},
        {StyleChosen{"A", {}}, Subject::style},
        {LooksChosen{"A", {}}, Subject::style},
        {LapChosen{"A", {}}, Subject::lap},
        {RuleSet{"A", ""}, Subject::rule},
        {StockChosen{}, Subject::rule},
        {SectionChosen{"A", {}}, Subject::rule},
        {PlanChosen{Prefer::looks, "A", 0, 0, 0, {}}, Subject::plan},
        {SupplyChosen{"A", {}, {}}, Subject::supply},
        {PieceCut{"A", {}, 1, {}, {}}, Subject::piece},
        {PieceSpoiled{"A", {}, 1, {}, {}}, Subject::loss},
        {StepDone{"A", "hook", 1, {}, "", ""}, Subject::step},
        {StepAnswered{"A", "hook", 1}, Subject::step},
        {StepLifted{"A", "ground", "", ""}, Subject::step},
        {EdgeFinished{"A", ""}, Subject::finish},
        {EdgeSentBack{"A", ""}, Subject::finish},
        {MetalCounted{"A", {}, {}, 1}, Subject::metal},
        {StickMeasured{"A", {}, {}, {}}, Subject::metal},
        {StickSpoiled{"A", {}, offcut}, Subject::none},  // it is not there
        {Picked{{1, 1}, {Subject::lap, "A", {}, 0, "", ""}}, Subject::lap},
        {StruckFor{{1, 1}}, Subject::none},
        {Struck{{1, 1}, ""}, Subject::none},
        {CopyNoted{{1, 1}, 2}, Subject::none},
        {GateAnswered{"A", {}, "", ""}, Subject::none},  // each says it for himself
        {GateLifted{"A", {}, ""}, Subject::none},        // names what it lifts
        {ValueAccepted{"A", "fasten 2: 9"}, Subject::none},
        {BodyWalked{"A", {}, false, {}}, Subject::body},
        {EdgePlaced{"A", {}}, Subject::place},
        {Unknown{99, {}}, Subject::none},
    };
    std::set<std::size_t> told;
    for (const auto& [fact, subject] : kinds) {
        const std::string said = describe(fact).english();
        CAPTURE(said);
        const Event event{{1, 2}, {1, 0}, "Ada", {}, fact};
        const Thing thing = Things().of(event);
        CHECK(thing.subject == subject);
        CHECK_FALSE(name_of(thing).empty());
        CHECK(is_on_edge(thing) ==
              (subject > Subject::rule && subject != Subject::plan && subject != Subject::body));
        told.insert(fact.index());
    }
    CHECK(told.size() == Fact::kinds);
}

}  // namespace
}  // namespace hemline
