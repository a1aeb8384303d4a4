// The day sheet of a small invented journal, counted by hand beside each event.
#include "engine/work/day_sheet.h"

#include <doctest/doctest.h>

using namespace hemline;

namespace {

constexpr std::int64_t minute_ms = 60'000, hour_ms = 60 * minute_ms, day_ms = 24 * hour_ms;
constexpr DaySpan first_day{0, day_ms}, second_day{day_ms, 2 * day_ms};

struct Journal {
    std::vector<Event> events;

    EventId write(const std::string& by, std::int64_t ms, const Fact& fact,
                  const std::vector<EventId>& supersedes = {}) {
        const EventId id{7, static_cast<std::uint32_t>(events.size()) + 1};
        events.push_back({id, {ms, 0}, by, supersedes, fact});
        return id;
    }
    [[nodiscard]] DaySheet sheet(DaySpan day) const {
        return day_sheet(replay(events), events, day);
    }
};

PieceCut cut_of(int piece, std::optional<EventId> offcut = {}) {
    return {"A", TrimRole::main, piece, feet(1), {feet(10), offcut}};
}

Journal two_days() {
    Journal journal;
    Edge edge;
    edge.id = "A";
    journal.write("Ada", 0, JobStarted{"Boathouse", ""});
    journal.write("Ada", 0, EdgeAdded{edge});
    const std::int64_t day = day_ms;
    journal.write("Ada", day, ReadingTaken{"A", ReadingOf::edge, feet(2)});  // Ada: reading 1
    const EventId wrong =
        journal.write("Ada", day + 1, ReadingTaken{"A", ReadingOf::edge, feet(3)});  // struck
    journal.write("Ada", day + 2, Struck{wrong, "undone"}, {wrong});
    // The piece is spoiled, its stick is open: Ada: stick 1, spoiled 1.
    const EventId spoiled = journal.write("Ada", day + hour_ms, cut_of(1));
    journal.write("Ada", day + hour_ms + 1,
                  PieceSpoiled{"A", TrimRole::main, 1, feet(1), {feet(10), {}}}, {spoiled});
    const EventId cut = journal.write("Ada", day + 2 * hour_ms, cut_of(1));  // cut 1, stick 2
    journal.write("Ada", day + 3 * hour_ms, cut_of(2, cut));                 // cut 2, no new stick
    // Ben: stick 1, spoiled 1.
    journal.write("Ben", day + 3 * hour_ms, StickSpoiled{"A", TrimRole::main, {feet(10), {}}});
    // Ada: steps 1 and 2, exception 1.
    journal.write(
        "Ada", day + 4 * hour_ms,
        StepDone{"A", "hook", 1, {AnswerKind::length, sixteenths(2), 0, ""}, "Over.", "Ada"});
    journal.write("Ada", day + 4 * hour_ms,
                  StepDone{"A", "fasten", 1, {AnswerKind::count, {}, 2, ""}, "", ""});
    const EventId tick = journal.write("Ben", day + 5 * hour_ms, EdgeFinished{"A", ""});
    // Ben: sent back 1; that tick is none.
    journal.write("Ben", day + 6 * hour_ms, EdgeSentBack{"A", "bead missing"}, {tick});
    journal.write("Ben", day + 7 * hour_ms, EdgeFinished{"A", ""});  // Ben: finished 1
    journal.write("Cy", 2 * day, cut_of(3));                         // the day after
    return journal;
}

const PersonDay& of(const DaySheet& sheet, const std::string& name) {
    for (const PersonDay& person : sheet.people) {
        if (person.name == name) {
            return person;
        }
    }
    FAIL("nobody of that name");
    return sheet.people.front();
}

}  // namespace

TEST_CASE("A day sheet counts what each did on that day, as it stands now") {
    const DaySheet sheet = two_days().sheet(second_day);
    CHECK(sheet.job == "Boathouse");
    REQUIRE(sheet.people.size() == 2);
    const PersonDay& ada = of(sheet, "Ada");
    CHECK(ada.cut == 2);
    CHECK(ada.sticks_opened == 2);
    CHECK(ada.spoiled == 1);
    CHECK(ada.readings == 1);
    CHECK(ada.steps == 2);
    CHECK(ada.exceptions == 1);
    CHECK(ada.finished == 0);
    const PersonDay& ben = of(sheet, "Ben");
    CHECK(ben.finished == 1);
    CHECK(ben.sent_back == 1);
    CHECK(ben.spoiled == 1);
    CHECK(ben.sticks_opened == 1);
    CHECK(ben.cut == 0);
    CHECK(sheet.sticks_opened == 3);
    CHECK(sheet.cut.size() == 2);
    CHECK(sheet.spoiled.size() == 2);
    CHECK(sheet.finished.size() == 1);
}

TEST_CASE("Midnight begins the next day, and a day without work says so") {
    const Journal journal = two_days();
    CHECK(journal.sheet({2 * day_ms, 3 * day_ms}).cut.size() == 1);
    CHECK(journal.sheet(first_day).cut.empty());
    // On the first day the job was begun, and nothing was done that is counted.
    CHECK(parts_of(journal.sheet(first_day)).size() == 1);
    const std::vector<DayPart> empty = parts_of(journal.sheet({5 * day_ms, 6 * day_ms}));
    REQUIRE(empty.size() == 1);
    CHECK(empty.front().lines.front().words == "Nothing was measured, cut or fitted on this day.");
}

TEST_CASE("The parts of a day sheet name the person and the time of every deed") {
    const std::vector<DayPart> parts = parts_of(two_days().sheet(second_day));
    std::vector<std::string> headings;
    for (const DayPart& part : parts) {
        headings.push_back(part.heading.english());
    }
    CHECK(headings == std::vector<std::string>{"Who did what", "Edges finished", "Sent back",
                                               "Outside practice, noted by name", "Spoiled",
                                               "Pieces cut, 3 sticks opened"});
    CHECK(parts[0].lines[0].words ==
          "Ada: 2 pieces cut, 2 sticks opened, 1 spoiled, 1 reading, 2 steps answered, 1 "
          "exception.");
    CHECK(parts[2].lines[0].words == "Edge A sent back: bead missing");
    CHECK(parts[2].lines[0].by == "Ben");
    CHECK(parts[3].lines[0].words == "Edge A, piece 1, step hook: Over. Noted by Ada.");
}

TEST_CASE("What was made apart stands on every day's sheet until somebody decides") {
    Journal journal = two_days();
    // Two tablets took the pitch, neither had seen the other.
    journal.events.push_back(
        {{8, 1}, {day_ms + 9 * hour_ms, 0}, "Dee", {}, PitchTaken{"A", rise_in_12(5)}});
    journal.events.push_back(
        {{9, 1}, {day_ms + 9 * hour_ms, 1}, "Eli", {}, PitchTaken{"A", rise_in_12(6)}});
    const DaySheet sheet = day_sheet(replay(in_order(journal.events)), in_order(journal.events),
                                     {5 * day_ms, 6 * day_ms});
    REQUIRE(sheet.conflicts.size() == 1);
    CHECK(parts_of(sheet)[1].heading == "Two tablets disagree, not decided");
}
