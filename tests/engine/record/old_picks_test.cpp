// Picks of journals from before there was Picked: strikes and losses. One pick folds as it always
// did; two picks that disagree leave both sides, not nothing.
#include "engine/record/old_picks.h"

#include <doctest/doctest.h>

#include "engine/record/standing.h"
#include "tests/engine/record/apart.h"

namespace hemline {
namespace {

PieceSpoiled loss(Length length) { return {"A", TrimRole::main, 1, length, new_stick}; }

/// Two laps that disagree; tablets 1, 2 and 3 hold both.
struct TwoLaps {
    ApartCrew crew = crew_with_edge();
    EventId six = crew.write(1, RuleSet{"lap", "6 in"});
    EventId eight = crew.write(2, RuleSet{"lap", "8 in"});

    TwoLaps() { crew.meet({1, 2, 3, 4}); }
};

TEST_CASE("One old pick strikes the other side, as it did") {
    TwoLaps two;
    two.crew.strike_as_pick(3, two.eight, two.six);
    const Job job = two.crew.job();
    CHECK(job.conflicts.empty());
    CHECK(job.struck == std::set<EventId>{two.eight});
    CHECK(job.practice.lap == inches(6));
}

TEST_CASE("Old picks one after the other hold one after the other") {
    TwoLaps two;
    two.crew.strike_as_pick(3, two.eight, two.six);
    const EventId seven = two.crew.write(4, RuleSet{"lap", "7 in"});
    two.crew.strike_as_pick(4, two.six, seven);
    const Job job = two.crew.job();
    CHECK(job.struck == std::set<EventId>{two.six, two.eight});
    CHECK(job.practice.lap == inches(7));
}

TEST_CASE("Two old picks made apart strike nothing: both values stand against each other") {
    TwoLaps two;
    two.crew.strike_as_pick(1, two.eight, two.six);
    two.crew.strike_as_pick(2, two.six, two.eight);
    const Job job = two.crew.job();
    REQUIRE(job.conflicts.size() == 1);
    CHECK(values_of(job.conflicts[0]) == std::vector<EventId>{two.six, two.eight});
    CHECK(job.struck.empty());
    CHECK((job.practice.lap == inches(6) || job.practice.lap == inches(8)));
    // A pick of today ends it, and setting it again does.
    two.crew.meet({1, 2, 3});
    ApartCrew anew = two.crew;
    two.crew.pick(3, two.six);
    CHECK(two.crew.job().conflicts.empty());
    CHECK(two.crew.job().practice.lap == inches(6));
    anew.write(3, RuleSet{"lap", "9 in"});
    CHECK(anew.job().conflicts.empty());
    CHECK(anew.job().practice.lap == inches(9));
}

TEST_CASE("Three old picks round in a circle, and one more side that none of them chose") {
    TwoLaps two;
    const EventId seven = two.crew.write(3, RuleSet{"lap", "7 in"}, "Ada", {});
    const EventId none = two.crew.write(4, RuleSet{"lap", "9 in"}, "Ada", {});
    two.crew.strike_as_pick(1, two.eight, two.six);
    two.crew.strike_as_pick(2, seven, two.eight);
    two.crew.strike_as_pick(3, two.six, seven);
    two.crew.strike_as_pick(3, none, seven);
    const Job job = two.crew.job();
    CHECK(job.struck == std::set<EventId>{none});
    REQUIRE(job.conflicts.empty());  // seven had seen the two before it
    CHECK(job.practice.lap == inches(7));
}

TEST_CASE("An old pick falls with what it chose, and nothing falls back to the default") {
    TwoLaps two;
    two.crew.strike_as_pick(3, two.eight, two.six);
    two.crew.undo(1, two.six);
    const Job job = two.crew.job();
    CHECK(job.struck == std::set<EventId>{two.six});
    CHECK(job.practice.lap == inches(8));
}

TEST_CASE("An old pick and one of today, made apart, are a conflict with both values") {
    TwoLaps two;
    two.crew.pick(1, two.six);
    two.crew.strike_as_pick(2, two.six, two.eight);
    const EventId strike = two.crew.events.back().id;
    const Job job = two.crew.job();
    REQUIRE(job.conflicts.size() == 1);
    CHECK(values_of(job.conflicts[0]) == std::vector<EventId>{two.six, two.eight});
    CHECK(job.conflicts[0].sides[1].id == strike);
    CHECK(job.struck.empty());
    for (const EventId chosen : {two.six, two.eight}) {
        ApartCrew crew = two.crew;
        crew.meet({1, 2, 3});
        crew.pick(3, chosen);
        CHECK(crew.job().conflicts.empty());
        CHECK(crew.job().practice.lap == (chosen == two.six ? inches(6) : inches(8)));
    }
}

TEST_CASE("A strike that names another thing, or more, is a strike") {
    TwoLaps two;
    const EventId kerf = two.crew.write(3, RuleSet{"kerf", "1/8 in"});
    const EventId later = {3, 9};
    for (const std::vector<EventId>& named : {std::vector<EventId>{two.eight},
                                              {two.eight, two.eight},
                                              {two.eight, kerf},
                                              {two.eight, later},
                                              {two.eight, two.six, kerf},
                                              {two.six, kerf}}) {
        ApartCrew crew = two.crew;
        crew.write(3, Struck{two.eight, ""}, "Ada", named);
        crew.write(2, Struck{two.six, ""}, "Ada", {two.six, two.eight});
        CHECK(crew.job().struck.count(two.eight) == 1);
    }
}

TEST_CASE("Two old picks of two cuts, made apart, spoil neither: which is fitted is asked again") {
    ApartCrew crew = crew_with_edge();
    const EventId ada = crew.write(1, cut(feet(6))), ben = crew.write(2, cut(feet(7)), "Ben");
    crew.meet({1, 2, 3});
    ApartCrew one = crew;
    one.events.push_back({{1, 8}, {5'000, 0}, "Ada", {ben}, loss(feet(7))});
    CHECK(one.job().conflicts.empty());
    REQUIRE(one.job().edges[0].cut.size() == 1);
    CHECK(one.job().edges[0].cut[0].id == ada);
    CHECK(one.job().edges[0].spoiled == 1);
    one.events.push_back({{2, 8}, {5'001, 0}, "Ben", {ada}, loss(feet(6))});
    const Job job = one.job();
    REQUIRE(job.conflicts.size() == 1);
    CHECK(values_of(job.conflicts[0]) == std::vector<EventId>{ada, ben});
    CHECK(job.edges[0].cut.size() == 1);
    CHECK(job.edges[0].spoiled == 0);
    CHECK(job.sticks_opened == 2);
    // Picked once more; and what is then lost is lost.
    one.holds[3] = {0, 1, 2, 3, 4};
    one.pick(3, ada);
    REQUIRE(one.job().edges[0].cut.size() == 1);
    CHECK(one.job().edges[0].cut[0].id == ada);
    one.write(3, loss(feet(6)), "Cleo", {ada});
    CHECK(one.job().edges[0].cut.empty());
    CHECK(one.job().conflicts.empty());
}

TEST_CASE("Losses of one tablet, or of a piece cut again since, were no picks") {
    ApartCrew crew = crew_with_edge();
    const EventId ada = crew.write(1, cut(feet(6))), ben = crew.write(2, cut(feet(7)), "Ben");
    crew.meet({1, 2, 3});
    ApartCrew again = crew;
    crew.events.push_back({{3, 8}, {5'000, 0}, "Cleo", {ben}, loss(feet(7))});
    crew.events.push_back({{3, 9}, {5'001, 0}, "Cleo", {ada}, loss(feet(6))});
    CHECK(crew.job().conflicts.empty());
    CHECK(crew.job().edges[0].cut.empty());
    again.events.push_back({{1, 8}, {5'000, 0}, "Ada", {ben}, loss(feet(7))});
    again.events.push_back({{2, 8}, {5'001, 0}, "Ben", {ada}, loss(feet(6))});
    const EventId third = again.write(3, cut(feet(6)), "Cleo");
    CHECK(again.job().conflicts.empty());
    REQUIRE(again.job().edges[0].cut.size() == 1);
    CHECK(again.job().edges[0].cut[0].id == third);
    CHECK(again.job().edges[0].spoiled == 2);
}

}  // namespace
}  // namespace hemline
