// What a pick does, and what two that disagree do: a disagreement again, and never a value that
// nobody chose.
#include <doctest/doctest.h>

#include "engine/record/standing.h"
#include "engine/work/day_sheet.h"
#include "engine/work/readiness.h"
#include "tests/engine/record/apart.h"

namespace hemline {
namespace {

constexpr Length ada_read = inches(120), ben_read = inches(121);

ReadingTaken reading(Length length) { return {"A", ReadingOf::edge, length}; }

/// Two readings that disagree; tablets 1 and 2 hold both.
struct TwoReadings {
    ApartCrew crew = crew_with_edge();
    EventId ada = crew.write(1, reading(ada_read)), ben = crew.write(2, reading(ben_read), "Ben");

    TwoReadings() { crew.meet({1, 2, 3}); }
    [[nodiscard]] const RecordedReading& read(const Job& job, EventId id) const {
        for (const RecordedReading& one : job.edges[0].readings) {
            if (one.id == id) {
                return one;
            }
        }
        FAIL("no such reading");
        return job.edges[0].readings[0];
    }
};

TEST_CASE("Two different picks of two readings, made apart, are a conflict with both values") {
    TwoReadings two;
    const EventId one = two.crew.pick(1, two.ada), other = two.crew.pick(2, two.ben);
    CHECK(two.crew.job_on(1).conflicts.empty());
    CHECK(two.crew.job_on(2).conflicts.empty());
    const Job job = two.crew.job();
    REQUIRE(job.conflicts.size() == 1);
    CHECK(job.conflicts[0].sides == std::vector<Tip>{{one, two.ada}, {other, two.ben}});
    CHECK(job.conflicts[0].what() ==
          "Two tablets disagree on the length of edge A: pick one, or measure again.");
    CHECK_FALSE(two.read(job, two.ada).struck);
    CHECK_FALSE(two.read(job, two.ben).struck);
    CHECK_FALSE(reading_missing(job.edges[0], job.practice).empty());
    // Picked once more by someone who has both.
    two.crew.meet({1, 2, 3});
    two.crew.pick(3, two.ben);
    const Job after = two.crew.job();
    CHECK(after.conflicts.empty());
    CHECK(two.read(after, two.ada).struck);
    CHECK_FALSE(two.read(after, two.ben).struck);
    CHECK(after.edges[0].readings.size() == 2);  // a pick is not a reading
    CHECK(after.edges[0].verdict(after.practice).agreement == Agreement::once);
}

TEST_CASE("A pick that names another pick chooses nothing") {
    TwoReadings two;
    const EventId picked = two.crew.pick(1, two.ada);
    two.crew.undo(1, picked);
    Thing about;
    about.subject = Subject::reading;
    about.name = "A";
    two.crew.write(1, Picked{picked, about}, "Ada", {two.ada, two.ben});
    CHECK(two.crew.job().conflicts.size() == 1);
}

TEST_CASE("A pick falls with a cut that was undone, though somebody had lost it before") {
    ApartCrew crew = crew_with_edge();
    const EventId ada = crew.write(1, cut(feet(6))), ben = crew.write(2, cut(feet(5)));
    crew.meet({1, 2, 3});
    crew.pick(3, ada);
    crew.write(3, PieceSpoiled{"A", TrimRole::main, 1, feet(6), new_stick}, "Cy", {ada});
    CHECK(crew.job().edges[0].cut.empty());
    crew.meet({1, 3});
    crew.undo(1, ada);
    const Job job = crew.job();
    REQUIRE(job.edges[0].cut.size() == 1);
    CHECK(job.edges[0].cut[0].id == ben);
}

TEST_CASE("A number that stands for two events is not crossed out by a pick: one may be right") {
    TwoReadings two;
    std::vector<Event> events = two.crew.events;
    const auto copied = std::find_if(events.begin(), events.end(),
                                     [&](const Event& event) { return event.id == two.ben; });
    Event copy = *copied;
    copy.fact = reading(feet(9));
    events.push_back(copy);
    Thing about;
    about.subject = Subject::reading;
    about.name = "A";
    events.push_back(
        {{3, 9}, {9'000, 0}, "Cy", {two.ada, two.ben, two.ben}, Picked{two.ada, about}});
    CHECK(standing_of(in_order(events)).struck.count(two.ben) == 0);
}

TEST_CASE("Two equal picks made apart agree, and count as no reading") {
    TwoReadings two;
    two.crew.pick(1, two.ben);
    two.crew.pick(2, two.ben);
    const Job job = two.crew.job();
    CHECK(job.conflicts.empty());
    CHECK(two.read(job, two.ada).struck);
    CHECK(job.edges[0].verdict(job.practice).agreement == Agreement::once);
}

TEST_CASE("A pick undone brings the conflict back") {
    TwoReadings two;
    const EventId picked = two.crew.pick(1, two.ada);
    CHECK(undo_target(two.crew.events, two.crew.job().struck, 1) == picked);
    two.crew.undo(1, picked);
    const Job job = two.crew.job();
    REQUIRE(job.conflicts.size() == 1);
    CHECK(values_of(job.conflicts[0]) == std::vector<EventId>{two.ada, two.ben});
    CHECK(job.struck == std::set<EventId>{picked});
}

TEST_CASE("A pick undone and made again crosses out the same, and keeps what agrees") {
    ApartCrew crew = crew_with_edge();
    const EventId ada = crew.write(1, reading(ada_read));
    crew.write(2, reading(ada_read), "Ben");
    const EventId cleo = crew.write(3, reading(ben_read), "Cleo");
    crew.meet({1, 2, 3});
    const EventId first = crew.pick(3, ada);
    crew.undo(3, first);
    crew.pick(3, ada);
    CHECK(crew.job().struck == std::set<EventId>{first, cleo});
    CHECK(crew.job().edges[0].length({}) == ada_read);
}

TEST_CASE("A pick falls with what it chose, and the other side stands") {
    TwoReadings two;
    two.crew.pick(1, two.ada);
    two.crew.undo(1, two.ada);
    const Job job = two.crew.job();
    CHECK(job.conflicts.empty());
    CHECK(two.read(job, two.ada).struck);
    CHECK_FALSE(two.read(job, two.ben).struck);
}

TEST_CASE("A pick and a reading that saw only the other side, made apart, are a conflict") {
    TwoReadings two;
    const EventId third = two.crew.write(2, reading(inches(125)), "Ben");
    two.crew.pick(1, two.ada);
    const Job job = two.crew.job();
    REQUIRE(job.conflicts.size() == 1);
    CHECK(values_of(job.conflicts[0]) == std::vector<EventId>{third, two.ada});
    two.crew.meet({1, 2, 3});
    two.crew.pick(3, third);
    CHECK(two.crew.job().conflicts.empty());
    CHECK(two.crew.job().edges[0].readings.size() == 3);
}

TEST_CASE("Of readings made apart, all that say what was picked go on counting") {
    ApartCrew crew = crew_with_edge();
    const EventId ada = crew.write(1, reading(ada_read));
    crew.write(2, reading(ada_read), "Ben");
    const EventId cleo = crew.write(3, reading(ben_read), "Cleo");
    crew.meet({1, 2, 3});
    crew.pick(3, ada);
    const Job job = crew.job();
    CHECK(job.struck == std::set<EventId>{cleo});
    CHECK(job.edges[0].length(job.practice) == ada_read);
}

TEST_CASE("What a pick crossed out stays so after the next reading, and after the next pick") {
    TwoReadings two;
    two.crew.pick(1, two.ada);
    const EventId again = two.crew.write(1, reading(ada_read));
    CHECK(two.crew.job().struck == std::set<EventId>{two.ben});
    CHECK(two.crew.job().edges[0].length({}) == ada_read);
    // Ben, who has seen the pick but not that reading, reads another length; it is picked.
    two.crew.holds[2] = two.crew.holds[1];
    two.crew.holds[2].erase(two.crew.events.size() - 1);
    const EventId ben = two.crew.write(2, reading(inches(130)), "Ben");
    REQUIRE(two.crew.job().conflicts.size() == 1);
    two.crew.meet({1, 2, 3});
    two.crew.pick(3, ben);
    CHECK(two.crew.job().struck == std::set<EventId>{two.ben, again});
    CHECK(two.crew.job().conflicts.empty());
}

TEST_CASE("Two different picks of a rule made apart never fall back to the default") {
    ApartCrew crew = crew_with_edge();
    const EventId six = crew.write(1, RuleSet{"lap", "6 in"});
    const EventId eight = crew.write(2, RuleSet{"lap", "8 in"});
    crew.meet({1, 2, 3});
    crew.pick(1, six);
    crew.pick(2, eight);
    const Job job = crew.job();
    REQUIRE(job.conflicts.size() == 1);
    CHECK(values_of(job.conflicts[0]) == std::vector<EventId>{six, eight});
    CHECK((job.practice.lap == inches(6) || job.practice.lap == inches(8)));
    CHECK_FALSE(reading_missing(job.edges[0], job.practice).empty());  // every edge waits
    crew.meet({1, 2, 3});
    crew.pick(3, six);
    CHECK(crew.job().conflicts.empty());
    CHECK(crew.job().practice.lap == inches(6));
}

TEST_CASE("What was picked stands for every thing that can be said apart") {
    Edge left;
    left.id = "A";
    left.left = End::wall;
    Edge right = left;
    right.left = End::gable;
    const Answer eight{AnswerKind::count, {}, 8, ""}, nine{AnswerKind::count, {}, 9, ""};
    const std::pair<Fact, Fact> apart[] = {
        {JobStarted{"House", ""}, JobStarted{"Barn", ""}},
        {EdgeAdded{left}, EdgeAdded{right}},
        {EdgeAdded{left}, EdgeTakenOff{"A"}},
        {PitchTaken{"A", rise_in_12(4)}, PitchTaken{"A", rise_in_12(6)}},
        {StyleChosen{"A", Style::full}, LooksChosen{"A", Looks::free}},
        {LapChosen{"A", inches(5)}, LapChosen{"A", std::nullopt}},
        {RuleSet{"kerf", "1/8 in"}, RuleSet{"kerf", "1/4 in"}},
        {StockChosen{{millimetres(3000)}}, StockChosen{{millimetres(3001)}}},
        {SectionChosen{"ridge_cap", {{inches(5), Hem::open, {}}}}, SectionChosen{"ridge_cap", {}}},
        {PlanChosen{Prefer::laps, "eave_two_part", 0, 0, 2, {{"A", TrimRole::main, {feet(5)}}}},
         PlanChosen{Prefer::looks, "eave_two_part", 0, 0, 3, {{"A", TrimRole::main, {feet(6)}}}}},
        {SupplyChosen{"A", TrimRole::main, Supply::on_hand_only},
         SupplyChosen{"A", TrimRole::main, Supply::as_wanted}},
        {StepDone{"A", "fasten", 1, eight, "", ""}, StepDone{"A", "fasten", 1, nine, "", ""}},
        {EdgeFinished{"A", ""}, EdgeSentBack{"A", "bead missing"}},
        {reading(ada_read), reading(ben_read)},
        {ReadingTaken{"A", ReadingOf::remainder, feet(2)},
         ReadingTaken{"A", ReadingOf::remainder, feet(3)}},
    };
    for (const auto& [here, there] : apart) {
        const std::string said = describe(here).english();
        CAPTURE(said);
        ApartCrew crew = crew_with_edge();
        const EventId one = crew.write(1, here), other = crew.write(2, there);
        REQUIRE(crew.job().conflicts.size() == 1);
        CHECK(values_of(crew.job().conflicts[0]) == std::vector<EventId>{one, other});
        const bool of_job = std::holds_alternative<JobStarted>(here);
        CHECK(crew.job().edges[0].undecided.empty() == of_job);
        crew.meet({1, 2, 3});
        ApartCrew twice = crew;
        crew.pick(3, one);
        CHECK(crew.job().conflicts.empty());
        CHECK(crew.job().struck == std::set<EventId>{other});
        twice.pick(1, one);
        twice.pick(2, other);
        REQUIRE(twice.job().conflicts.size() == 1);
        CHECK(values_of(twice.job().conflicts[0]) == std::vector<EventId>{one, other});
        CHECK(twice.job().struck.empty());
        // The same said twice agrees.
        ApartCrew agree = crew_with_edge();
        agree.write(1, here);
        agree.write(2, here);
        CHECK(agree.job().conflicts.empty());
        CHECK(agree.job().edges[0].undecided.empty());
    }
}

TEST_CASE("Of two cuts of one piece both are metal used, and the one picked is the one fitted") {
    for (const bool first : {true, false}) {
        ApartCrew crew = crew_with_edge();
        const EventId ada = crew.write(1, cut(feet(6)));
        const EventId ben = crew.write(2, cut(feet(6)), "Ben");  // to the same length: two pieces
        REQUIRE(crew.job().conflicts.size() == 1);
        CHECK(crew.job().conflicts[0].what() ==
              "Two tablets cut piece 1 on edge A: pick the one that is fitted.");
        CHECK(crew.job().edges[0].cut.size() == 1);
        crew.meet({1, 2, 3});
        crew.pick(3, first ? ada : ben);
        const Job job = crew.job();
        CHECK(job.conflicts.empty());
        REQUIRE(job.edges[0].cut.size() == 1);
        CHECK(job.edges[0].cut[0].id == (first ? ada : ben));
        CHECK(job.sticks_opened == 2);
        CHECK(job.offcuts.size() == 2);  // what is left of both sticks
        CHECK(job.edges[0].spoiled == 1);
        CHECK(job.spare_cuts == std::set<EventId>{first ? ben : ada});
        CHECK(job.struck.empty());  // a strike would say that it was never cut
        const DaySheet sheet = day_sheet(job, in_order(crew.events), {0, 1'000'000});
        CHECK(sheet.cut.size() == 1);
        CHECK(sheet.spoiled.size() == 1);
        CHECK(sheet.sticks_opened == 2);
    }
}

TEST_CASE("Two different picks of two cuts, made apart, spoil neither and ask for no third stick") {
    ApartCrew crew = crew_with_edge();
    const EventId ada = crew.write(1, cut(feet(6))), ben = crew.write(2, cut(feet(7)), "Ben");
    crew.meet({1, 2, 3});
    crew.pick(1, ada);
    crew.pick(2, ben);
    const Job job = crew.job();
    REQUIRE(job.conflicts.size() == 1);
    CHECK(values_of(job.conflicts[0]) == std::vector<EventId>{ada, ben});
    CHECK(job.edges[0].cut.size() == 1);
    CHECK(job.edges[0].spoiled == 0);
    CHECK(job.sticks_opened == 2);
    crew.meet({1, 2, 3});
    crew.pick(3, ada);
    REQUIRE(crew.job().edges[0].cut.size() == 1);
    CHECK(crew.job().edges[0].cut[0].id == ada);
}

TEST_CASE("The fitted one lost by who knew of the pick, the spare one does not take its place") {
    ApartCrew crew = crew_with_edge();
    const EventId ada = crew.write(1, cut(feet(6))), ben = crew.write(2, cut(feet(6)), "Ben");
    crew.meet({1, 2, 3});
    const PieceSpoiled loss{"A", TrimRole::main, 1, feet(6), new_stick};
    ApartCrew apart = crew;
    crew.pick(1, ada);
    crew.write(1, loss, "Ada", {ada});
    CHECK(crew.job().edges[0].cut.empty());
    CHECK(crew.job().conflicts.empty());
    CHECK(crew.job().edges[0].spoiled == 2);
    CHECK(crew.job().sticks_opened == 2);
    // Lost by someone who did not know: then the other is all there is, and it serves.
    apart.pick(1, ada);
    apart.write(2, loss, "Ben", {ada});
    REQUIRE(apart.job().edges[0].cut.size() == 1);
    CHECK(apart.job().edges[0].cut[0].id == ben);
    CHECK(apart.job().conflicts.empty());
    CHECK(apart.job().sticks_opened == 2);
}

TEST_CASE("A pick of another thing, of itself or of a pick chooses nothing") {
    TwoReadings two;
    const EventId picked = two.crew.pick(1, two.ada);
    Thing length;
    length.subject = Subject::reading;
    length.name = "A";
    const EventId pitch = two.crew.write(3, PitchTaken{"A", rise_in_12(5)});
    two.crew.meet({1, 2, 3});
    ApartCrew alone = two.crew;
    for (const EventId chosen : {pitch, picked, EventId{99, 1}, EventId{1, 4}}) {
        const EventId bad = two.crew.write(1, Picked{chosen, length});
        CHECK(two.crew.job().conflicts.empty());
        CHECK(two.read(two.crew.job(), two.ben).struck);
        two.crew.undo(1, bad);
    }
    Thing none;
    alone.write(1, Picked{two.ben, none});
    CHECK(two.read(alone.job(), two.ben).struck);
}

TEST_CASE("A pick is saved with what it is about, and says so in words") {
    TwoReadings two;
    two.crew.pick(1, two.ada);
    const auto& picked = std::get<Picked>(two.crew.events.back().fact);
    CHECK(picked.chosen == two.ada);
    CHECK(picked.about.subject == Subject::reading);
    CHECK(picked.about.name == "A");
    CHECK(two.crew.events.back().supersedes == std::vector<EventId>{two.ada, two.ben});
    CHECK(describe(picked) == "Picked for the length of edge A: " + print_event_id(two.ada));
    Names names;
    names.event = [&](EventId id) -> const Fact* {
        return id == two.ada ? &two.crew.events[1].fact : nullptr;
    };
    CHECK(describe(picked, names) == "Picked for the length of edge A: \"Edge A read: 10 ft\"");
}

}  // namespace
}  // namespace hemline
