// The whole invented demo house by events alone: read, cut, fitted and ticked, edge after edge as
// whats_next() says, to the foreman's last tick.
#include <doctest/doctest.h>

#include <cstdint>
#include <set>

#include "eave_job.h"
#include "engine/handover/readings_file.h"
#include "engine/plan/make_plan.h"
#include "engine/record/event.h"
#include "engine/record/job.h"
#include "engine/words/result.h"
#include "engine/work/card.h"
#include "engine/work/order.h"
#include "good_answer.h"

using namespace hemline_test;

namespace {

struct DemoHouse {
    Catalogue catalogue = Catalogue::read(assets_file("catalogue/trims.csv")).value();
    Procedures procedures;
    std::vector<Event> journal;
    Job job;
    Plan plan;

    DemoHouse() {
        for (const KindOfEdge& one : kinds_of_edge()) {
            const auto read =
                read_procedure(assets_file("procedures/" + std::string(one.word) + ".csv"));
            REQUIRE_MESSAGE(read.ok(), (read.ok() ? Text() : read.problem().what));
            procedures[one.kind] = *read;
        }
    }

    /// Folds an event in; the plan is made when asked for, as after every event.
    void keep(const Fact& fact) {
        Event event;
        event.id = {42, static_cast<std::uint32_t>(journal.size()) + 1};
        event.when = {static_cast<std::int64_t>(journal.size()) * 1000, 0};
        event.by = "invented";
        event.fact = fact;
        journal.push_back(event);
        apply(job, event);
        const bool changes_metal =
            !std::holds_alternative<StepDone>(fact) && !std::holds_alternative<EdgeFinished>(fact);
        if (changes_metal) {
            plan = make_plan(job, catalogue);
        }
    }

    [[nodiscard]] std::vector<Step> steps(const EdgeWork& work) const {
        return steps_of(work, plan, job.practice, procedures.at(work.edge.kind), catalogue);
    }

    void cut(const EdgeWork& work, TrimRole role, int piece) {
        const auto card = make_card(job, plan, catalogue, work.edge.id, role, piece);
        REQUIRE(card.ok());
        CHECK(card->waits_for == "");
        REQUIRE(card->stick > 0);
        keep(PieceCut{work.edge.id, role, piece, card->cut, {card->stick_length, card->offcut}});
    }

    /// What is really left beside the fixed neighbor: what the plan expects of the last piece.
    [[nodiscard]] Length remainder(const EdgeWork& work) const {
        const Run* run = find_run(plan, work.edge.id, TrimRole::main);
        REQUIRE(run != nullptr);
        return run->pieces.back().covers - run->lap;
    }
};

void do_step(DemoHouse& house, const EdgeWork& work, const Step& step) {
    const std::string id = work.edge.id;
    INFO(id, ": ", step.action);
    CHECK(step.waits_for == "");
    CHECK(step.action.english().find('{') == std::string::npos);
    switch (step.rule->asks) {
        case Asks::cut:
            house.cut(work, role_of_step(step), step.piece);
            break;
        case Asks::remainder:
            house.keep(ReadingTaken{id, ReadingOf::remainder, house.remainder(work)});
            break;
        case Asks::tick:
            house.keep(EdgeFinished{id, ""});
            break;
        default: {
            const Answer answer = good_answer(step);
            CHECK(outside_practice(step, answer) == "");
            house.keep(StepDone{id, step.rule->id, step.piece, answer, "", ""});
        }
    }
}

}  // namespace

TEST_CASE("the whole demo house is finished in the order of the trade, edge by edge") {
    DemoHouse house;
    const auto read = read_readings(assets_file("demo/readings.csv"), house.catalogue);
    REQUIRE(std::holds_alternative<std::vector<EdgeReading>>(read));
    const auto& rows = *std::get_if<std::vector<EdgeReading>>(&read);
    house.keep(JobStarted{"Invented house", "common practice"});
    for (const EdgeReading& row : rows) {
        Edge edge = row.edge;
        edge.wrap = edge.id == "A" || edge.kind == EdgeKind::high_eave;
        house.keep(EdgeAdded{edge});
        house.keep(ReadingTaken{edge.id, ReadingOf::edge, row.length});
        house.keep(ReadingTaken{edge.id, ReadingOf::edge, row.length});
    }
    for (const PlanProblem& problem : house.plan.problems) {
        INFO(problem.edge, ": ", problem.what);
        CHECK(problem.severity != Severity::problem);
    }
    std::vector<int> finished;
    std::set<std::string> parts;
    for (int count = 0; count < 5000; ++count) {
        const auto next = whats_next(house.job, house.plan, house.procedures, house.catalogue);
        if (next.empty()) {
            break;
        }
        REQUIRE_MESSAGE(next.front().waits_for.empty(), next.front().waits_for);
        const std::string id = next.front().edge;
        while (!house.job.find(id)->finished) {
            const EdgeWork& work = *house.job.find(id);
            const auto steps = house.steps(work);
            const auto step = next_step(steps);
            REQUIRE(step.has_value());
            parts.insert(steps[*step].rule->part);
            do_step(house, work, steps[*step]);
        }
        finished.push_back(turn_of(house.job.find(id)->edge, house.catalogue));
    }
    CHECK(finished.size() == rows.size());
    for (std::size_t i = 1; i < finished.size(); ++i) {
        CHECK(finished[i - 1] <= finished[i]);
    }
    CHECK(parts.count("Corner") + parts.count("Corner up") + parts.count("End cap") == 3);
    CHECK(!next_cut(house.job, house.plan));
    // Every piece that is on the roof was cut once, and the pieces cover each edge exactly.
    for (const EdgeReading& row : rows) {
        const Run* run = find_run(house.plan, row.edge.id, TrimRole::main);
        REQUIRE(run != nullptr);
        Length covered;
        for (const PlannedPiece& piece : run->pieces) {
            CHECK(piece.is_cut);
            covered += piece.covers;
        }
        CHECK(covered == row.length);
    }
    const Job again = replay(house.journal);
    CHECK(again.sticks_opened == house.job.sticks_opened);
    CHECK(whats_next(again, make_plan(again, house.catalogue), house.procedures, house.catalogue)
              .empty());
}
