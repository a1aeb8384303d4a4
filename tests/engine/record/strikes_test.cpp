// Strikes that strike themselves, each other, or the strike before, a hundred thousand times: shown
// one level deep, and folded, paged and put on the day sheet in no time.
#include <doctest/doctest.h>

#include <algorithm>
#include <ctime>

#include "engine/handover/job_pages.h"
#include "engine/record/job.h"
#include "engine/record/pick.h"
#include "engine/work/day_sheet.h"
#include "tests/engine/record/strikes_record.h"

namespace hemline {
namespace {

constexpr double processor_s_most = 100;  // a square of these takes minutes

double processor_s() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

/// As the record screen names what was struck.
Names names_in(const std::vector<Event>& events) {
    Names names;
    names.event = [&events](EventId id) -> const Fact* {
        const auto found = std::find_if(events.begin(), events.end(),
                                        [&](const Event& event) { return event.id == id; });
        return found == events.end() ? nullptr : &found->fact;
    };
    return names;
}

TEST_SUITE_BEGIN("large");

TEST_CASE("A strike is told one level deep, though it strikes itself, another, or a chain") {
    const std::vector<Event> events = strikes_record(100);
    const Names names = names_in(events);
    const auto told = [&](std::size_t place) { return describe(events[place].fact, names); };
    const std::string self = print_event_id(events[2].id), third = print_event_id(events[3].id),
                      fourth = print_event_id(events[4].id);
    CHECK(told(2) == "Crossed out \"Crossed out " + self + ": undone\": undone");
    CHECK(told(3) == "Crossed out \"Crossed out " + third + ": undone\": undone");
    CHECK(told(4) == "Crossed out \"Crossed out " + fourth + ": undone\": undone");
    CHECK(told(events.size() - 1) == "Crossed out \"Crossed out " +
                                         print_event_id(events[events.size() - 3].id) +
                                         ": undone\": undone");
    CHECK(describe(Struck{{9, 9}, ""}, names) == "Crossed out 0000000000000009-9");
}

TEST_CASE("A chain of a hundred thousand strikes opens, folds and goes on paper at once") {
    const double before = processor_s();
    const std::vector<Event> events = in_order(strikes_record(100'000));
    const Job job = replay(events);
    CHECK(job.struck.size() > 50'000);  // each takes back the strike before it: every other counts
    REQUIRE(job.edges.size() == 1);
    CHECK(job.conflicts.empty());
    CHECK(undo_target(events, job.struck, strikes_device) == events[1].id);
    CHECK_FALSE(pick(job, events, events.back().id).ok());
    const auto pages = pages_of(events, {});
    CHECK(pages.at("events.csv").size() > events.size());
    const DaySheet sheet = day_sheet(job, events, {0, wall_ms_most});
    CHECK_FALSE(parts_of(sheet, names_in(events)).empty());
    CHECK(processor_s() - before < processor_s_most);
}

}  // namespace

TEST_SUITE_END();

}  // namespace hemline
