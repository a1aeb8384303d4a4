// An edge with a chosen lap: what its runs, its cleat, its card and its steps take from it, and
// that its neighbors in the same pool keep the job's lap. Computed by hand; common practice, no
// published source.
#include <doctest/doctest.h>

#include <algorithm>

#include "engine/plan/make_plan.h"
#include "engine/record/job.h"
#include "engine/words/result.h"
#include "engine/work/card.h"
#include "engine/work/edge_change.h"
#include "tests/engine/work/eave_job.h"

using namespace hemline;
using hemline_test::eave;
using hemline_test::invented_catalogue;
using hemline_test::read_twice;

namespace {

Job job_of(std::vector<Edge> edges, Length length) {
    Job job;
    for (const Edge& edge : edges) {
        job.edges.push_back(read_twice(edge, length));
    }
    return job;
}

Edge lapped(Edge edge, Length lap) {
    edge.lap = lap;
    return edge;
}

std::vector<Length> cuts_on(const Plan& plan, const std::string& edge,
                            TrimRole role = TrimRole::main) {
    std::vector<Length> cuts;
    for (const PlannedPiece& piece : find_run(plan, edge, role)->pieces) {
        cuts.push_back(piece.cut);
    }
    return cuts;
}

/// How near a cleat's joints come to the laps of its trim, by their nearer ends; below 0 inside a
/// lap.
Length clear_of_laps(const Plan& plan, const std::string& edge, Length lap) {
    const Run& trim = *find_run(plan, edge, TrimRole::main);
    const Run& cleat = *find_run(plan, edge, TrimRole::cleat);
    Length nearest = feet(100);
    for (std::size_t i = 1; i < cleat.pieces.size(); ++i) {
        for (std::size_t k = 1; k < trim.pieces.size(); ++k) {
            const Length joint = cleat.pieces[i].begins, from = trim.pieces[k].begins;
            nearest = std::min(nearest, std::max(from - joint, joint - (from + lap)));
        }
    }
    return nearest;
}

const PlanProblem* find_problem(const Plan& plan, std::string_view edge, std::string_view field) {
    const auto found =
        std::find_if(plan.problems.begin(), plan.problems.end(),
                     [&](const PlanProblem& p) { return p.edge == edge && p.field == field; });
    return found == plan.problems.end() ? nullptr : &*found;
}

}  // namespace

// 46 ft = 552 in between gables. Lap 6: full middles show 114, so (552 − 342)/2 = 105 at each end:
// 105 + 1 + 6, 120 × 3, 105 + 1. Lap 8: they show 112, so (552 − 336)/2 = 108: 117, 120 × 3, 109.
TEST_CASE("An edge with a lap of its own is divided by it, its neighbour by the job's rule") {
    const Edge a = eave("A", End::gable, End::gable), b = eave("B", End::gable, End::gable);
    const Job job = job_of({lapped(a, inches(8)), b}, feet(46));
    const Plan plan = make_plan(job, invented_catalogue());
    const std::vector<Length> by_eight = {inches(117), inches(120), inches(120), inches(120),
                                          inches(109)};
    const std::vector<Length> by_six = {inches(112), inches(120), inches(120), inches(120),
                                        inches(106)};
    CHECK(cuts_on(plan, "A") == by_eight);
    CHECK(cuts_on(plan, "B") == by_six);
    CHECK(find_run(plan, "A", TrimRole::main)->lap == inches(8));
    CHECK(find_run(plan, "B", TrimRole::main)->lap == inches(6));
    REQUIRE(!plan.proofs.empty());
    CHECK(plan.proofs[0].trim == "eave_rolled");
    CHECK(plan.proofs[0].sticks == 10);  // each is over half a stick
    CHECK(plan.proofs[0].proved);
}

TEST_CASE("Each style of an edge's own follows its lap too, and so does its fascia wrap") {
    Edge edge = lapped(eave("A", End::open, End::open), inches(8));
    edge.wrap = true;
    Job job = job_of({edge}, feet(38));
    for (const Style style : {Style::balanced, Style::equal, Style::full}) {
        job.edges[0].style = style;
        const Plan plan = make_plan(job, invented_catalogue());
        // 4 × 112 + 8 = 456 in: what four sticks cover, all of them whole.
        CHECK(cuts_on(plan, "A") == std::vector<Length>(4, feet(10)));
        CHECK(cuts_on(plan, "A", TrimRole::wrap) == std::vector<Length>(4, feet(10)));
        CHECK(find_run(plan, "A", TrimRole::wrap)->lap == inches(8));
    }
}

TEST_CASE("Cleat joints stay clear of the laps that their own edge has") {
    const Edge edge = eave("A", End::gable, End::gable);
    int would_be_in_the_lap = 0;
    for (int length = 250; length < 700; length += 7) {
        const Plan by_rule = make_plan(job_of({edge}, inches(length)), invented_catalogue());
        const Plan own =
            make_plan(job_of({lapped(edge, inches(10))}, inches(length)), invented_catalogue());
        CAPTURE(length);
        CHECK(clear_of_laps(by_rule, "A", inches(6)) >= inches(3));
        CHECK(clear_of_laps(own, "A", inches(10)) >= inches(3));
        would_be_in_the_lap += clear_of_laps(by_rule, "A", inches(10)) < inches(3) ? 1 : 0;
    }
    CHECK(would_be_in_the_lap > 0);  // so the check above can fail
}

TEST_CASE("The card marks an edge's own lap, its notch and its two beads") {
    const Edge edge = lapped(eave("A", End::gable, End::gable), inches(8));
    const Job job = job_of({edge}, feet(46));
    const Plan plan = make_plan(job, invented_catalogue());
    const Result<Card> card = make_card(job, plan, invented_catalogue(), "A", TrimRole::main, 1);
    REQUIRE(card);
    CHECK(card->lap == inches(8));
    const auto in_from_the_right = [&](MarkKind kind) {
        std::vector<Length> in;
        for (const Mark& mark : card->marks) {
            if (mark.kind == kind) {
                in.push_back(card->cut - mark.at);
            }
        }
        return in;
    };
    CHECK(in_from_the_right(MarkKind::lap_line) == std::vector<Length>{inches(8)});
    CHECK(in_from_the_right(MarkKind::hem_notch) ==
          std::vector<Length>{inches(8) + sixteenths(2)});  // lap and 1/8 in
    CHECK(in_from_the_right(MarkKind::bead) ==
          std::vector<Length>{inches(5), inches(3)});  // 2 in apart about the middle
}

TEST_CASE("A step asks for the edge's own lap, and less is outside practice") {
    const Edge a = lapped(eave("A", End::gable, End::gable), inches(8));
    const Job job = job_of({a, eave("B", End::gable, End::gable)}, feet(46));
    const Plan plan = make_plan(job, invented_catalogue());
    const auto procedure = read_procedure(hemline_test::assets_file("procedures/eave.csv")).value();
    for (const EdgeWork& work : job.edges) {
        const auto steps = steps_of(work, plan, job.practice, procedure, invented_catalogue());
        const auto slide = std::find_if(steps.begin(), steps.end(),
                                        [](const Step& s) { return s.rule->id == "slide"; });
        REQUIRE(slide != steps.end());
        CHECK(slide->length_least == (work.edge.id == "A" ? inches(8) : inches(6)));
        const Answer seven{AnswerKind::length, inches(7), 0, ""};
        CHECK(outside_practice(*slide, seven).empty() == (work.edge.id == "B"));
    }
}

TEST_CASE("A valley's own lap serves in place of the valley's rule") {
    Edge valley;
    valley.kind = EdgeKind::valley;
    CHECK(lap_on(valley, {}) == inches(8));
    valley.lap = inches(12);
    CHECK(lap_on(valley, {}) == inches(12));
    CHECK(lap_rule(EdgeKind::valley) == "lap_valley");
    CHECK(with_lap({}, EdgeKind::valley, inches(12))->lap_valley == inches(12));
    CHECK(with_lap({}, EdgeKind::valley, inches(12))->lap == inches(6));
}

TEST_CASE(
    "A lap that leaves nothing of a stick, or no room for the beads, is a problem of its edge") {
    const Edge edge = eave("A", End::gable, End::gable);
    // 112 in and two tabs of up to 4 in (a kick-out's) are no less than the stick of 120 in.
    for (const Length lap : {feet(10), inches(112), inches(2), Length()}) {
        const Job job = job_of({lapped(edge, lap), eave("B", End::gable, End::gable)}, feet(46));
        const Plan plan = make_plan(job, invented_catalogue());
        CAPTURE(print_length(lap));
        CHECK_FALSE(with_lap(job.practice, EdgeKind::eave, lap));
        REQUIRE(find_problem(plan, "A", "lap") != nullptr);
        CHECK(find_problem(plan, "A", "lap")->severity == Severity::problem);
        CHECK_FALSE(find_problem(plan, "A", "lap")->mend.empty());
        CHECK(find_run(plan, "A", TrimRole::main) == nullptr);
        CHECK(find_run(plan, "B", TrimRole::main) != nullptr);  // the others are planned
    }
    CHECK(with_lap({}, EdgeKind::eave, inches(111)));
}

TEST_CASE("What is cut to lap a neighbour holds the lap; a cleat and a lone piece do not") {
    const auto held = [](TrimRole role, int piece, Length length) {
        Edge edge = eave("A", End::gable, End::gable);
        edge.wrap = true;
        Job job = job_of({edge}, length);
        const Plan before = make_plan(job, invented_catalogue());
        job.edges[0].cut.push_back(
            {{1, 9},
             role,
             piece,
             find_run(before, "A", role)->pieces[static_cast<std::size_t>(piece) - 1].cut});
        return lap_held_by_metal(job.edges[0], make_plan(job, invented_catalogue())).english();
    };
    CHECK(held(TrimRole::main, 1, feet(46)) ==
          "Piece 1 is cut for it as it is. If that is wrong, mark the piece spoiled first.");
    CHECK(held(TrimRole::main, 5, feet(46)).rfind("Piece 5", 0) == 0);
    CHECK(held(TrimRole::wrap, 2, feet(46)).rfind("Fascia wrap piece 2", 0) == 0);
    CHECK(held(TrimRole::cleat, 1, feet(46)).empty());
    CHECK(held(TrimRole::main, 1, feet(9)).empty());
}
