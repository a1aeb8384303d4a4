// Hostile records: everything the program makes of a record is made of these too. A part that grows
// with a square is detected by its growth, not by a clock.
#include <doctest/doctest.h>

#include <algorithm>
#include <ctime>

#include "engine/handover/day_page.h"
#include "engine/handover/job_pages.h"
#include "engine/plan/make_plan.h"
#include "engine/record/clock_doubt.h"
#include "engine/record/seen.h"
#include "engine/roof/readings.h"
#include "engine/words/result.h"
#include "engine/work/card.h"
#include "engine/work/edge_values.h"
#include "engine/work/hook_doubt.h"
#include "engine/work/job_sections.h"
#include "engine/work/order.h"
#include "engine/work/roof_outline.h"
#include "tests/engine/hostile/hostile_record.h"
#include "tests/engine/work/eave_job.h"

namespace hemline {
namespace {

using hemline_test::assets_file;

constexpr DaySpan every_day{0, 10'000'000'000'000};

/// All that a program shows of a record, on any screen or paper.
struct Shown {
    Job job;
    Plan plan;
    std::vector<EdgeNext> next;
    bool has_card = false;  ///< of the first edge's first piece
};

double processor_s() { return static_cast<double>(std::clock()) / CLOCKS_PER_SEC; }

Shown made_of(const HostileEvents& events) {
    const Catalogue all = Catalogue::read(assets_file("catalogue/trims.csv")).value();
    const Sections sections;
    Shown shown;
    shown.job = replay(events);
    const Job& job = shown.job;
    const Catalogue catalogue = catalogue_on(all, sections, job);
    shown.plan = make_plan(job, catalogue);
    find_choices(job, catalogue, {200'000, {}});
    const Procedures procedures{
        {EdgeKind::eave, read_procedure(assets_file("procedures/eave.csv")).value()}};
    shown.next = whats_next(job, shown.plan, procedures, catalogue);
    if (!job.edges.empty()) {
        const EdgeWork& work = job.edges.front();
        const std::vector<Step> steps =
            steps_of(work, shown.plan, job.practice, procedures.at(EdgeKind::eave), catalogue);
        edge_values({job, shown.plan, catalogue, events}, work, steps);
        shown.has_card =
            make_card(job, shown.plan, catalogue, work.edge.id, TrimRole::main, 1).ok();
    }
    hook_doubt(job);
    outline_of(job);
    day_page(day_sheet(job, events, every_day), Text("a day"), Paper::letter,
             [](auto) { return std::string("9:41"); });
    pages_of(events, {});
    clock_doubts(events);
    CHECK(Seen(events).of(events.back()).size() <= supersedes_most);
    return shown;
}

/// Whatever is done in this time need not be checked for quadratic growth.
constexpr double processor_s_unasked = 2;
/// A record four times as long takes 4 times as long, or a little more; a square 16 times.
constexpr double growth_most = 9;

double processor_s_for(const HostileEvents& events) {
    const double before = processor_s();
    made_of(events);
    return processor_s() - before;
}

template <class Make>
Shown shown(Make make, int many) {
    const HostileEvents events = make(many);
    const double before = processor_s();
    Shown shown = made_of(events);
    const double whole = processor_s() - before;
    if (whole > processor_s_unasked) {
        const HostileEvents fewer = make(many / 4);
        double growth = whole / processor_s_for(fewer);
        // A machine that does more beside this may be slow just once; a square is found each time.
        for (int more = 0; more < 3 && growth >= growth_most; ++more) {
            growth = std::min(growth, processor_s_for(events) / processor_s_for(fewer));
        }
        CHECK(growth < growth_most);
    }
    return shown;
}

bool says(const std::vector<Problem>& problems, const std::string& words) {
    return std::any_of(problems.begin(), problems.end(), [&](const Problem& problem) {
        return problem.what.english().find(words) != std::string::npos && !problem.mend.empty();
    });
}

}  // namespace

TEST_SUITE_BEGIN("large");

TEST_CASE("A hundred thousand readings of one edge are shown, and two that agree are found") {
    const auto last_again = [](int many) {
        HostileEvents events = readings_of_one_edge(many);
        Event again = events.back();
        again.id.sequence += 1;
        again.when.wall_ms += 1;
        events.push_back(again);
        return events;
    };
    const Shown all = shown(last_again, 100'000);
    const auto& readings = all.job.edges.front().readings;
    CHECK(readings.size() == 100'001);
    CHECK(all.job.edges.front().length({}) == readings.back().length);
}

TEST_CASE("One reading written down a hundred thousand times is that length") {
    const Shown all = shown(same_reading_again, 100'000);
    CHECK(all.job.edges.front().length({}) == feet(30));
    CHECK(all.plan.runs.size() == 2);  // the trim and its cleat
}

TEST_CASE("A hundred thousand readings that each settle two others leave the last that agree") {
    const Shown all = shown(readings_that_settle, 100'000);
    CHECK(all.job.edges.front().length({}).has_value());
}

TEST_CASE("Of sixty thousand lengths of new sticks the sixteen longest are used, and it is said") {
    const Shown all = shown(stock_lengths, 60'000);
    CHECK(all.job.practice.stock == feet(10));
    CHECK(all.job.stock_shorter.size() == stock_lengths_most - 1);
    CHECK(all.job.stock_shorter.front() == feet(10) - nanometres(1000));
    CHECK(says(all.job.left_out.all(), "60000 lengths: only the 16 longest are used"));
    HostileEvents mended = stock_lengths(60'000);
    Event choice = mended.back();
    choice.id.sequence += 1;
    choice.when.wall_ms += 1;
    choice.fact = StockChosen{{feet(12), feet(8)}};
    mended.push_back(choice);
    CHECK(replay(mended).left_out.empty());
}

TEST_CASE("A section of eighty thousand legs is left as the catalogue has it, and it is said") {
    const Shown all = shown(legs_of_one_section, 80'000);
    CHECK(all.job.sections.empty());
    CHECK(says(all.job.left_out.all(), "80000 legs"));
}

TEST_CASE("Fifty thousand sections of trims nobody has are kept apart") {
    CHECK(shown(many_sections, 50'000).job.sections.size() == 50'000);
}

TEST_CASE("Of twenty thousand edges two thousand are on the job, and the others are named") {
    const Shown all = shown(many_edges, 20'000);
    CHECK(all.job.edges.size() == edges_most);
    CHECK(all.next.size() == edges_most);
    CHECK(says(all.job.left_out.all(), "18000 more are left out, from E2000 on"));
}

TEST_CASE("Edges that are taken off in the end take no other edge's place") {
    const Shown all = shown(edges_taken_off, 30'000);
    CHECK(all.job.edges.size() == 4);
    CHECK(all.job.left_out.empty());
}

TEST_CASE(
    "Five thousand edges whose pools have names of a thousand letters are planned each alone") {
    const Shown all = shown(many_pools, 5000);
    CHECK(all.plan.runs.size() == 2 * edges_most);
}

TEST_CASE("An edge described a hundred thousand times is one edge") {
    CHECK(shown(one_edge_again, 100'000).job.edges.size() == 4);
}

TEST_CASE("Thirty thousand offcuts of different lengths are planned from") {
    const Shown all = shown([](int many) { return offcuts_counted(many, 1); }, 30'000);
    CHECK(all.job.offcuts.size() == 30'000);
    CHECK(std::any_of(all.plan.sticks.begin(), all.plan.sticks.end(),
                      [](const PlannedStick& stick) { return stick.offcut.has_value(); }));
}

TEST_CASE("A million offcuts each of two thousand lengths are planned from") {
    const Shown all = shown([](int many) { return offcuts_counted(many, 1'000'000); }, 2000);
    CHECK(!all.plan.sticks.empty());
}

TEST_CASE("Fifty thousand offcuts used up one by one leave what was left of each") {
    const Shown all = shown(offcuts_used_up, 50'000);
    REQUIRE(all.job.offcuts.size() == 50'000);
    CHECK(all.job.offcuts.front().length == feet(8));
    CHECK(all.job.sticks_opened == 50'000);
}

TEST_CASE("A cut of piece fifty thousand is past any run, and the plan says so") {
    const Shown all = shown(pieces_cut, 50'000);
    CHECK(all.job.edges.front().cut.size() == 1001);
    CHECK(std::any_of(all.plan.problems.begin(), all.plan.problems.end(), [](const auto& problem) {
        return problem.what.english().find("past any run") != std::string::npos;
    }));
}

TEST_CASE("Fifty thousand pieces cut and spoiled are all metal gone") {
    const Shown all = shown(pieces_spoiled, 50'000);
    CHECK(all.job.edges.front().cut.empty());
    CHECK(all.job.edges.front().spoiled == 50'000);
}

TEST_CASE(
    "Fifty thousand steps that no procedure has are kept, and the day sheet names a thousand") {
    const Shown all = shown(steps_ticked, 50'000);
    CHECK(all.job.edges.front().steps.size() == 50'000);
    const auto parts = parts_of(day_sheet(all.job, steps_ticked(50'000), every_day));
    CHECK(std::all_of(parts.begin(), parts.end(),
                      [](const DayPart& part) { return part.lines.size() <= 1001; }));
    CHECK(std::any_of(parts.begin(), parts.end(), [](const DayPart& part) {
        return part.lines.back().words == "and 49000 more, which the record holds";
    }));
}

TEST_CASE("One step of fifty thousand pieces is ticked for each") {
    CHECK(shown(one_step_of_many_pieces, 50'000).job.edges.front().steps.size() == 50'000);
}

TEST_CASE("A rule set a hundred thousand times on a thousand edges is the last one") {
    CHECK(shown(rules_set, 100'000).job.practice.lap == inches(7));
}

TEST_CASE("Of a hundred thousand rules that there are not a few are named, and how many more") {
    const std::vector<Problem> said = shown(rules_unknown, 100'000).job.left_out.all();
    CHECK(says(said, "The rule stays as it was."));
    CHECK(says(said, "99992 things more"));
    CHECK(said.size() == 9);
}

TEST_CASE("A job named a hundred thousand times has its last name") {
    CHECK(shown(job_started_again, 100'000).job.name == "house 99999");
}

TEST_CASE("Forty plans picked of twenty thousand runs each leave each edge its last one") {
    const Shown all = shown([](int runs) { return plans_picked(40, runs); }, 20'000);
    CHECK(all.job.find("E7")->chosen.size() == 1);
}

TEST_CASE("A plan that cuts one edge into a hundred thousand pieces is left out, and it is said") {
    const Shown all = shown(cuts_of_one_run, 100'000);
    CHECK(all.job.find("A")->chosen.empty());
    CHECK(says(all.job.left_out.all(), "100000 pieces"));
}

TEST_CASE("What can be had, said fifty thousand times on a roof of 500 pools, is the last word") {
    const Shown all = shown(supplies_said, 50'000);
    REQUIRE(all.job.supplies.size() == 1);
    CHECK(all.job.supplies.front().supply == Supply::on_hand_only);
}

TEST_CASE("Three thousand rules set apart hold up two thousand edges, a few named on each") {
    const Shown all = shown([](int rules) { return in_order(made_apart(rules, 2000)); }, 3000);
    CHECK(all.job.conflicts.size() >= 3000);
    REQUIRE(all.job.edges.size() == 2000);
    CHECK(!all.job.edges.back().undecided.empty());
    CHECK(all.job.edges.back().undecided.size() < 10);
}

TEST_CASE("Sixty thousand cuts of one number, lost by as many tablets, are metal gone") {
    const Shown all = shown([](int many) { return in_order(copies_of_one_cut(many)); }, 60'000);
    CHECK(all.job.sticks_opened == 60'000);
    REQUIRE(all.job.conflicts.size() == 2);  // the cuts, and their number
    CHECK(all.job.conflicts[1].apart == Apart::number_twice);
    CHECK(all.job.conflicts[1].about.size() == 1);
}

TEST_CASE("Two numbers that stand for fifty thousand readings each are three notices") {
    const Shown all =
        shown([](int many) { return in_order(copies_of_two_readings(many)); }, 50'000);
    CHECK(all.job.edges.front().readings.size() == 100'002);
    CHECK(all.job.conflicts.size() == 3);
}

TEST_CASE(
    "A hundred thousand events of one number and one time are all kept, whatever came first") {
    const auto made = [](int many) { return in_order(one_moment_again(many)); };
    HostileEvents turned = one_moment_again(100'000);
    std::reverse(turned.begin(), turned.end());
    CHECK(in_order(turned) == made(100'000));
    const Shown all = shown(made, 100'000);
    REQUIRE(all.job.conflicts.size() == 1);
    CHECK(all.job.conflicts[0].sides.size() == 100'000);
    CHECK(all.job.conflicts[0].about.size() == 4);
}

TEST_CASE("Of thirty thousand edges that come back two thousand are on the job, and it is said") {
    const Shown all = shown([](int many) { return in_order(edges_back(many)); }, 30'000);
    CHECK(all.job.edges.size() == edges_most);
    CHECK(says(all.job.left_out.all(), "28004 more are left out"));
    CHECK(all.job.conflicts.size() == edges_most - 4);
}

TEST_CASE("Fifty thousand readings, each picked apart, are one conflict") {
    const Shown all = shown([](int many) { return in_order(readings_picked_apart(many)); }, 50'000);
    REQUIRE(all.job.conflicts.size() == 1);
    CHECK(all.job.conflicts[0].sides.size() > 40'000);
    CHECK(all.job.edges.front().undecided.size() == 1);
}

TEST_CASE("Plans of three hundred trims picked apart, each of a thousand edges, hold those edges") {
    const Shown all = shown([](int plans) { return in_order(plans_apart(plans, 1000)); }, 300);
    CHECK(all.job.conflicts.size() == 300);
    CHECK(all.job.edges.front().undecided.size() == 300);
}

TEST_CASE("Screws a nanometre apart and sticks of a kilometre are refused, and it is said") {
    const Shown all = made_of(spacing_of_nothing());
    CHECK(all.job.practice == Practice());
    const std::vector<Problem> said = all.job.left_out.all();
    CHECK(says(said, "screw to screw"));
    CHECK(says(said, "seam to seam"));
    CHECK(says(said, "marks that cuts lie on"));
    CHECK(says(said, "longer than any that is carried to a roof"));
}

TEST_CASE("Edges past fifty thousand pieces are not planned, and each says so") {
    const Shown all = shown(pieces_planned, 200);
    CHECK(all.plan.pieces <= plan_pieces_most);
    CHECK(std::any_of(all.plan.problems.begin(), all.plan.problems.end(), [](const auto& problem) {
        return problem.what.english().find("more than one job has") != std::string::npos;
    }));
}

TEST_SUITE_END();

}  // namespace hemline
