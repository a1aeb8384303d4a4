// "Corner closed" is asked once of a corner, when both of its sides are up.
#include "engine/plan/make_plan.h"
#include "engine/record/job.h"
#include "engine/work/corner_words.h"
#include "engine/work/procedure.h"
#include "engine/work/readiness.h"

#include <algorithm>

#include "eave_job.h"

using namespace hemline_test;

namespace {

/// Four eaves around a square house: A and B meet at A's right corner. Each is fitted from the
/// left, so that at that corner B carries the tab and A lies over it.
struct House {
    House() {
        for (const char* id : {"A", "B", "C", "D"}) {
            job.edges.push_back(read_twice(eave(id, End::corner_out, End::corner_out), feet(9)));
        }
        plan = make_plan(job, catalogue);
    }
    EdgeWork& work(std::string_view id) {
        return *std::find_if(job.edges.begin(), job.edges.end(),
                             [&](const EdgeWork& work) { return work.edge.id == id; });
    }
    void fasten(std::string_view id) {
        const Run& run = *find_run(plan, id, TrimRole::main);
        for (const PlannedPiece& piece : run.pieces) {
            StepDone done;
            done.edge = id;
            done.step = std::string(fasten_step);
            done.piece = piece.number;
            work(id).cut.push_back({{}, TrimRole::main, piece.number, piece.cut});
            work(id).steps.push_back({{}, 0, "", done.said(), {}});
        }
    }
    void finish(std::string_view id) {
        fasten(id);
        work(id).finished.emplace();
    }
    bool asks(std::string_view id) {
        const EdgeWork& edge = work(id);
        const auto steps =
            steps_of(edge, plan, job.practice, procedure, catalogue, corner_mates(edge, plan, job));
        return std::any_of(steps.begin(), steps.end(), [](const Step& step) {
            return step.rule->id == "corner_out_look" && !step.done;
        });
    }

    Catalogue catalogue = own_catalogue();
    std::vector<StepRule> procedure = read_procedure(assets_file("procedures/eave.csv")).value();
    Job job;
    Plan plan;
};

}  // namespace

TEST_CASE("nobody is asked whether a corner is closed before both of its sides are up") {
    House house;
    CHECK_FALSE(house.asks("A"));
    house.fasten("A");
    CHECK_FALSE(house.asks("A"));
    CHECK_FALSE(house.asks("B"));
    house.fasten("B");
    CHECK(house.asks("A"));        // lies over
    CHECK_FALSE(house.asks("B"));  // its own left corner; D at its right is not up
}

TEST_CASE("a side that was finished before its neighbor was up leaves the corner to the neighbor") {
    House house;
    house.finish("A");
    CHECK_FALSE(house.asks("A"));
    CHECK_FALSE(house.asks("C"));
    CHECK(house.asks("B"));  // at A's corner; it lies under there
    house.fasten("B");
    CHECK(house.asks("B"));
    CHECK_FALSE(house.asks("A"));  // what is finished is not opened again
}

// A gauge on both faces shows the plan angle outside, and 360° less it inside: by geometry.
TEST_CASE("the angle to look for at a corner is the one a gauge on both faces shows") {
    const Practice practice;
    const Run run;
    Edge edge = eave("A", End::corner_out, End::gable);
    edge.corner_left = degrees(135);
    CHECK(corner_angles({edge, run, nullptr, practice}, 0).english() == "135°");
    edge.left = End::corner_in;
    edge.corner_left = degrees(225);
    CHECK(corner_angles({edge, run, nullptr, practice}, 0).english() == "135°");
    edge.corner_left.reset();
    CHECK(corner_angles({edge, run, nullptr, practice}, 0).english() == "90°");
}
