// The pages of a packed job, and the day sheet, in the unit that the job was read in. 1 in is
// 25.4 mm exactly (international yard and pound agreement of 1959; NIST SP 811, appendix B.8).
#include "engine/handover/job_pages.h"

#include <doctest/doctest.h>

#include "engine/handover/day_page.h"
#include "engine/work/procedure_words.h"

using namespace hemline;

namespace {

/// One after another, from one tablet.
std::vector<Event> written(const std::vector<Fact>& facts) {
    std::vector<Event> events;
    for (const Fact& fact : facts) {
        const auto sequence = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{1, sequence}, {1000 * sequence, 0}, "Ada", {}, fact});
    }
    return events;
}

std::vector<Fact> two_readings(const std::vector<Fact>& begun, Length first, Length second) {
    Edge edge;
    edge.id = "A";
    std::vector<Fact> facts = begun;
    facts.emplace_back(EdgeAdded{edge});
    facts.emplace_back(ReadingTaken{"A", ReadingOf::edge, first});
    facts.emplace_back(ReadingTaken{"A", ReadingOf::edge, second});
    return facts;
}

bool has(const std::string& page, const std::string& words) {
    return page.find(words) != std::string::npos;
}

}  // namespace

TEST_CASE("Readings of 9650 mm and 9651 mm are told in mm, and apart, on all pages of a job") {
    const std::vector<Fact> plain = {JobStarted{"Shed", ""}};
    const std::vector<Fact> metric = {JobStarted{"Shed", ""}, RuleSet{"cut_grid", "1 mm"}};
    for (const std::vector<Fact>& begun : {plain, metric}) {
        const auto pages =
            pages_of(written(two_readings(begun, millimetres(9650), millimetres(9651))), {});
        for (const auto& named : pages) {
            const std::string &name = named.first, &page = named.second;
            CAPTURE(name);
            CHECK(has(page, "9650 mm"));
            CHECK(has(page, "9651 mm"));
            CHECK(has(page, "31 ft") == (begun == plain && name == "job.html"));  // their mean
        }
    }
}

TEST_CASE("On a job in mm its pages say every length in mm, inches too") {
    const std::vector<Fact> metric = {JobStarted{"Shed", ""}, RuleSet{"cut_grid", "1 mm"}};
    const auto pages = pages_of(written(two_readings(metric, inches(10), inches(10))), {});
    for (const auto& named : pages) {
        const std::string &name = named.first, &page = named.second;
        CAPTURE(name);
        CHECK(has(page, "254 mm"));
        CHECK_FALSE(has(page, "10 in"));
    }
}

TEST_CASE("A cut of 6 ft 0 1/32 in is told as that: record, day sheet and packed page") {
    const PieceCut cut{"A", TrimRole::main, 1, feet(6) + thirty_seconds(1), {feet(10), {}}};
    CHECK(describe(cut) == "Edge A, piece 1 cut at 6 ft 0 1/32 in from a new stick of 10 ft");
    CHECK(describe(cut).english(Marks::sixteenth) == describe(cut).english());
    for (const std::string grid : {"1/32 in", "1/16 in"}) {
        std::vector<Fact> facts =
            two_readings({JobStarted{"Shed", ""}, RuleSet{"cut_grid", grid}}, feet(6), feet(6));
        facts.emplace_back(cut);
        const std::vector<Event> events = written(facts);
        const auto pages = pages_of(events, {});
        CHECK(has(pages.at("job.html"), "6 ft 0 1/32 in"));
        CHECK(has(pages.at("events.csv"), "6 ft 0 1/32 in"));
        const Job job = replay(events, {});
        const std::string sheet = day_page(
            day_sheet(job, events, {0, 86'400'000}), Text("today"), Paper::letter,
            [](WallTime) { return std::string(); }, {}, english_on(marks_of(job.practice)));
        CHECK(has(sheet, "6 ft 0 1/32 in"));
    }
}

TEST_CASE("The day sheet of a job in mm says its cuts in mm") {
    std::vector<Fact> facts = two_readings({JobStarted{"Shed", ""}, RuleSet{"cut_grid", "1 mm"}},
                                           millimetres(2000), millimetres(2000));
    facts.emplace_back(PieceCut{"A", TrimRole::main, 1, millimetres(2001), {feet(10), {}}});
    const std::vector<Event> events = written(facts);
    const std::string sheet = day_page(
        day_sheet(replay(events, {}), events, {0, 86'400'000}), Text("today"), Paper::letter,
        [](WallTime) { return std::string(); }, {}, english_on(Marks::millimetre));
    CHECK(has(sheet, "2001 mm"));
    CHECK(has(sheet, "3048 mm"));  // the stick of 10 ft
}
