// One number for two events, since a tablet was copied or put back from a backup: what the notice
// says, how it is put away, and what such a tablet's sequence no longer tells.
#include <doctest/doctest.h>

#include "engine/record/fact_words.h"
#include "engine/record/pick.h"
#include "engine/record/standing.h"
#include "engine/words/result.h"
#include "tests/engine/record/apart.h"

namespace hemline {
namespace {

/// Event 3 of tablet 1 is a pitch and a rule.
std::vector<Event> copied() {
    Edge edge;
    edge.id = "A";
    return {{{1, 1}, {1'000, 0}, "Ada", {}, EdgeAdded{edge}},
            {{1, 2}, {1'001, 0}, "Ada", {}, ReadingTaken{"A", ReadingOf::edge, feet(9)}},
            {{1, 3}, {1'002, 0}, "Ada", {}, PitchTaken{"A", rise_in_12(5)}},
            {{1, 3}, {1'003, 0}, "Ada", {}, RuleSet{"lap", "8 in"}}};
}

TEST_CASE("The notice of a number written twice names what it is about") {
    const Job job = replay(copied());
    REQUIRE(job.conflicts.size() == 1);
    const Conflict& notice = job.conflicts[0];
    CHECK(notice.apart == Apart::number_twice);
    CHECK(notice.sides.size() == 2);
    CHECK(notice.what() ==
          "A tablet was copied or put back from a backup: under one number of its stand 2 "
          "events, about the pitch of edge A, the rule \"lap\". All of them count; put this away "
          "when you have looked.");
    CHECK(job.edges[0].edge.pitch == rise_in_12(5));
    CHECK(job.practice.lap == inches(8));
    CHECK(job.edges[0].undecided.empty());
}

TEST_CASE("The notice is put away, comes back with a third event, and with the strike of that") {
    std::vector<Event> events = copied();
    const Result<ToWrite> put = put_away(replay(events), EventId{1, 3});
    REQUIRE(put);
    events.push_back({{2, 1}, {2'000, 0}, "Ben", {}, put->fact});
    CHECK(replay(events).conflicts.empty());
    CHECK_FALSE(put_away(replay(events), EventId{1, 3}));
    CHECK(describe(put->fact) ==
          "Looked at what stands under one number, 0000000000000001-3: 2 events");
    std::vector<Event> third = events;
    third.push_back({{1, 3}, {1'004, 0}, "Ada", {}, LapChosen{"A", inches(9)}});
    REQUIRE(replay(in_order(third)).conflicts.size() == 1);
    CHECK(replay(in_order(third)).conflicts[0].sides.size() == 3);
    events.push_back({{2, 2}, {2'001, 0}, "Ben", {{2, 1}}, Struck{{2, 1}, "undone"}});
    CHECK(replay(events).conflicts.size() == 1);
}

TEST_CASE("There is nothing to put away where no number was written twice") {
    CHECK_FALSE(put_away(replay({}), EventId{1, 3}));
}

TEST_CASE("After a tablet was copied, a later number of it has not seen the earlier ones") {
    const auto reading = [](std::uint32_t number, std::int64_t ms, Length length) {
        return Event{{1, number}, {ms, 0}, "Ada", {}, ReadingTaken{"A", ReadingOf::edge, length}};
    };
    std::vector<Event> events = copied();
    // Number 4 was written by the tablet, 5 by its copy: neither had seen the other.
    events.push_back(reading(4, 1'010, feet(10)));
    events.push_back(reading(5, 1'011, feet(11)));
    const Standing standing = standing_of(events);
    REQUIRE(standing.conflicts.size() == 2);
    CHECK(standing.conflicts[0].sides ==
          std::vector<Tip>{{{1, 4}, {1, 4}}, {{1, 5}, {1, 5}}});  // both have seen number 2
    // Without the copy the same numbers belong to a single tablet, one after the other.
    events.erase(events.begin() + 3);
    CHECK(standing_of(events).conflicts.empty());
}

TEST_CASE("A pick of a number that stands for two events is refused") {
    std::vector<Event> events = copied();
    events.push_back({{1, 3}, {1'004, 0}, "Ada", {}, PitchTaken{"A", rise_in_12(6)}});
    events.push_back({{2, 1}, {1'005, 0}, "Ben", {}, PitchTaken{"A", rise_in_12(7)}});
    const Job job = replay(events);
    const Result<ToWrite> picked = pick(job, events, EventId{1, 3});
    REQUIRE_FALSE(picked);
    CHECK(picked.problem().what ==
          "The number of that event stands for two events: it cannot be picked.");
    CHECK(pick(job, events, EventId{2, 1}));
}

}  // namespace
}  // namespace hemline
