// A pipe or curb through the roof is an item of the job: nothing is read along it or cut for it
// from sticks, and its steps are done, waited for and ticked like those of an edge.
#include <algorithm>

#include "eave_job.h"
#include "engine/plan/make_plan.h"
#include "engine/record/event_bytes.h"
#include "engine/record/job.h"
#include "engine/roof/edge_shape.h"
#include "engine/work/order.h"
#include "tests/engine/record/eave_record.h"

using namespace hemline_test;

namespace {

Edge penetration() {
    Edge edge;
    edge.id = "P";
    edge.kind = EdgeKind::penetration;
    return edge;
}

/// One penetration, and an eave that is read.
struct PiercedRoof {
    PiercedRoof() {
        EdgeWork work;
        work.edge = penetration();
        job.edges.push_back(work);
        job.edges.push_back(read_twice(eave("A", End::gable, End::gable), feet(9)));
        for (const char* kind : {"eave", "penetration"}) {
            const auto read =
                read_procedure(assets_file("procedures/" + std::string(kind) + ".csv"));
            REQUIRE(read.ok());
            procedures[*edge_kind_of(kind)] = *read;
        }
    }
    [[nodiscard]] Plan plan() const { return make_plan(job, catalogue); }
    [[nodiscard]] std::vector<Step> steps() const {
        return steps_of(job.edges[0], plan(), job.practice, procedures.at(EdgeKind::penetration),
                        catalogue);
    }
    [[nodiscard]] EdgeStatus status() const {
        return status_of(job.edges[0], steps(), job.practice);
    }

    Job job;
    Procedures procedures;
    Catalogue catalogue = Catalogue::read(assets_file("catalogue/trims.csv")).value();
};

}  // namespace

TEST_CASE("a penetration has no run, no pitch to take and no problem in the plan") {
    const PiercedRoof roof;
    const Plan plan = roof.plan();
    CHECK(std::none_of(plan.runs.begin(), plan.runs.end(),
                       [](const Run& run) { return run.edge == "P"; }));
    CHECK(std::none_of(plan.problems.begin(), plan.problems.end(),
                       [](const PlanProblem& problem) { return problem.edge == "P"; }));
    CHECK(reading_missing(roof.job.edges[0], roof.job.practice).empty());
}

TEST_CASE("a penetration's steps begin with fall protection and end with the foreman's tick") {
    PiercedRoof roof;
    REQUIRE(roof.steps().size() >= 8);
    // 29 CFR 1926.501(b)(13).
    REQUIRE(prompt_of(roof.procedures.at(EdgeKind::penetration)) != nullptr);
    CHECK(prompt_of(roof.procedures.at(EdgeKind::penetration))->id == "tie_off");
    CHECK(roof.status() == EdgeStatus::fitting);
    for (const Step& step : roof.steps()) {
        if (step.rule->asks != Asks::tick) {
            roof.job.edges[0].steps.push_back({{}, {}, "", {"P", step.rule->id, 0, {}, {}, ""}});
        }
    }
    CHECK(roof.status() == EdgeStatus::to_tick);
    CHECK(roof.steps().back().action.english().find("check off P") != std::string::npos);
    roof.job.edges[0].finished = EventId{1, 1};
    CHECK(roof.status() == EdgeStatus::finished);
}

TEST_CASE("a penetration waits for the eaves, since it is flashed into the panels") {
    PiercedRoof roof;
    auto next = whats_next(roof.job, roof.plan(), roof.procedures, roof.catalogue);
    REQUIRE(next.size() == 2);
    CHECK(next[0].edge == "A");
    CHECK(next[1].edge == "P");
    CHECK(next[1].what == "Measure across the pipe or the curb.");
    CHECK(next[1].waits_for.english().find("eave A") != std::string::npos);
    roof.job.edges[1].finished = EventId{1, 2};
    next = whats_next(roof.job, roof.plan(), roof.procedures, roof.catalogue);
    REQUIRE(next.size() == 1);
    CHECK(next[0].waits_for.empty());
}

TEST_CASE("a penetration is written and read back, and the kind after the last is refused") {
    Event event{{1, 1}, {}, "", {}, EdgeAdded{penetration()}};
    const Bytes good = journal_of({event});
    const JournalRead read = read_journal(good);
    REQUIRE(read.events.size() == 1);
    CHECK(std::get<EdgeAdded>(read.events[0].fact).edge == penetration());
    auto& edge = std::get<EdgeAdded>(event.fact).edge;
    edge.kind = static_cast<EdgeKind>(static_cast<int>(edge_kind_last) + 1);
    const JournalRead beyond = read_journal(journal_of({event}));
    CHECK(beyond.events.empty());
    CHECK(beyond.set_aside.size() == 1);
}
