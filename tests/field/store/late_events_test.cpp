// A job that holds events with times, numbers and lists at their most is written on all the same.
#include <doctest/doctest.h>

#include "engine/record/job.h"
#include "engine/record/standing.h"
#include "engine/words/result.h"
#include "field/store/journal_file.h"
#include "tests/engine/record/eave_record.h"
#include "tests/engine/record/same_event.h"
#include "tests/field/store/readings.h"
#include "tests/field/store/temporary_folder.h"

namespace hemline {
namespace {

namespace fs = std::filesystem;

constexpr std::int64_t today_ms = 1'780'000'000'000;
constexpr std::uint32_t number_most = 0xFFFF'FFFFU;

const Fact ten_feet_read = ReadingTaken{"A", ReadingOf::edge, feet(10)};

TEST_CASE("After an event at the end of time a job is written on, and opens with all of it") {
    const TemporaryFolder folder;
    const Event before{{99, number_most}, {wall_ms_most, number_most}, "Hal", {}, ten_feet_read};
    Event last{{98, number_most}, time_last, "Hal", {}, ten_feet_read};
    last.moment = Moment{{wall_ms_most}, {}};
    write(folder.path() / "others.journal", journal_of({before, last}));
    std::vector<Event> written;
    for (int day = 0; day < 3; ++day) {
        const auto opened = JournalFile::open(folder.path(), device + day % 2);
        REQUIRE(opened);
        for (int i = 0; i < 3; ++i) {
            const auto event = (*opened)->append(ten_feet_read, "Ada", {}, today_ms + i);
            REQUIRE(event);
            written.push_back(*event);
        }
        const std::vector<Event>& events = (*opened)->record().events;
        CHECK(same_events(read_job_folder(folder.path())->events, events));
        CHECK(same_events(
            {events.end() - static_cast<std::ptrdiff_t>(written.size()), events.end()}, written));
        CHECK(wall_time(events.back()).ms == today_ms + 2);
    }
    CHECK(standing_of(read_job_folder(folder.path())->events).conflicts.empty());
}

TEST_CASE("A tablet whose numbers somebody has used up gets a new one, and goes on") {
    const TemporaryFolder folder;
    write(folder.path() / "others.journal",
          journal_of({{{device, number_most}, {1000, 0}, "Hal", {}, ten_feet_read}}));
    std::uint64_t drawn = 0;
    {
        const auto opened = JournalFile::open(folder.path(), device);
        REQUIRE(opened);
        drawn = (*opened)->device();
        CHECK(drawn != device);
        const auto event = (*opened)->append(ten_feet_read, "Ada", {}, today_ms);
        REQUIRE(event);
        CHECK(event->id == EventId{drawn, 1});
    }
    const auto again = JournalFile::open(folder.path(), device);
    REQUIRE(again);
    CHECK((*again)->device() == drawn);
    CHECK((*again)->append(ten_feet_read, "Ada", {}, today_ms)->id == EventId{drawn, 2});
    CHECK((*again)->record().events.size() == 3);
}

TEST_CASE("What was made apart more often than one event may name is settled by two") {
    const TemporaryFolder folder;
    std::vector<Event> apart;
    for (std::uint64_t other = 1; other <= supersedes_most + 100; ++other) {
        const Length length = inches(static_cast<std::int64_t>(other % 9));
        apart.push_back(
            {{other, 1}, {today_ms, 0}, "Hal", {}, ReadingTaken{"A", ReadingOf::edge, length}});
    }
    write(folder.path() / "others.journal", journal_of(apart));
    const auto opened = JournalFile::open(folder.path(), device);
    REQUIRE(opened);
    const auto first = (*opened)->append(ten_feet_read, "Ada", {}, today_ms);
    REQUIRE(first);
    CHECK(first->supersedes.size() == supersedes_most);
    CHECK(standing_of((*opened)->record().events).conflicts.size() == 1);
    const auto second = (*opened)->append(ten_feet_read, "Ada", {}, today_ms);
    REQUIRE(second);
    CHECK(standing_of((*opened)->record().events).conflicts.empty());
    CHECK(read_job_folder(folder.path())->set_aside.empty());
}

TEST_CASE("A list longer than its most is refused before it is an event, by its name") {
    const TemporaryFolder folder;
    const auto opened = JournalFile::open(folder.path(), device, Opening::new_job);
    REQUIRE(opened);
    PlanChosen plan;
    plan.runs.resize(1001);
    PlanChosen cuts;
    cuts.runs.push_back({"A", TrimRole::main, std::vector<Length>(1001, inches(1))});
    const std::vector<std::pair<Fact, std::string>> too_long = {
        {StockChosen{std::vector<Length>(65, feet(10))}, "stock: more than 64"},
        {SectionChosen{"eave", std::vector<LegChosen>(65)}, "legs: more than 64"},
        {plan, "runs: more than 1000"},
        {cuts, "cuts: more than 1000"}};
    for (const auto& [fact, why] : too_long) {
        const auto refused = (*opened)->append(fact, "Ada", {}, today_ms);
        REQUIRE_FALSE(refused);
        CHECK(refused.problem().what.english().find("Not saved.") == 0);
        CHECK(refused.problem().what.english().find(why) != std::string::npos);
    }
    CHECK_FALSE(
        (*opened)->append(ten_feet_read, "", std::vector<EventId>(supersedes_most + 1, {1, 1}), 1));
    CHECK_FALSE(fs::exists(folder.path() / (print_device(device) + ".journal")));
    CHECK((*opened)->append(ten_feet_read, "Ada", {}, today_ms)->id.sequence == 1);
}

}  // namespace
}  // namespace hemline
