#include "engine/plan/plan.h"
#include "engine/plan/make_plan.h"
#include "engine/record/job.h"
#include "engine/trim/practice.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>
#include <set>

#include "tests/engine/plan/trim_only.h"

using namespace hemline;

namespace {

Catalogue four_trims() {
    const auto read = Catalogue::read(
        "id,name,kind,role,panels,flange,face,kick,hem,least,most,seams,source\n"
        "eave_rolled,rolled,eave,main,under,4 in,3 1/2 in,1/2 in,1/2 in,,6/12,snap_lock,common "
        "practice\n"
        "eave_two_part,two-part,eave,main,under,4 in,4 1/2 in,,1/2 in,,,snap_lock mechanical "
        "nail_strip,"
        "common practice\n"
        "fascia_wrap,wrap,eave,wrap,under,,7 in,1 in,1/2 in,,,snap_lock mechanical "
        "nail_strip,common "
        "practice\n"
        "cleat,cleat,eave,cleat,under,,2 in,1/2 in,,,,snap_lock mechanical nail_strip,common "
        "practice\n");
    REQUIRE(read);
    return *read;
}

EdgeWork read_twice(const std::string& id, Length length) {
    EdgeWork work;
    work.edge.id = id;
    work.edge.left = work.edge.right = End::gable;
    work.edge.pitch = rise_in_12(5);
    for (std::uint32_t i = 0; i < 2; ++i) {
        RecordedReading reading;
        reading.id = {1, i + 1};
        reading.length = length;
        work.readings.push_back(reading);
    }
    return work;
}

void read_remainder(EdgeWork& work, Length length) {
    RecordedReading reading;
    reading.of = ReadingOf::remainder;
    reading.length = length;
    work.readings.push_back(reading);
}

void cut(EdgeWork& work, int piece, Length length, TrimRole role = TrimRole::main) {
    work.cut.push_back({{2, static_cast<std::uint32_t>(work.cut.size()) + 1}, role, piece, length});
}

Job job_of(std::vector<EdgeWork> edges) {
    Job job;
    job.edges = std::move(edges);
    return job;
}

Length covered(const Run& run) {
    Length sum;
    for (const PlannedPiece& piece : run.pieces) {
        sum += piece.covers;
    }
    return sum;
}

const PlanProblem* find_problem(const Plan& plan, std::string_view field) {
    const auto found = std::find_if(plan.problems.begin(), plan.problems.end(),
                                    [&](const PlanProblem& p) { return p.field == field; });
    return found == plan.problems.end() ? nullptr : &*found;
}

/// Empty when no two pieces share metal and every uncut piece lies on a stick of its pool.
std::string wrong_sticks(const Plan& plan, const Job& job, const Catalogue& catalogue) {
    std::set<int> numbers;
    for (const PlannedStick& stick : plan.sticks) {
        if (!numbers.insert(stick.number).second) {
            return "a stick number twice";
        }
        if (stick.used + stick.left != stick.length || stick.left < Length()) {
            return "a stick's used and left are not its length";
        }
        std::vector<std::pair<Length, Length>> laid;
        for (const Run& run : plan.runs) {
            for (const PlannedPiece& piece : run.pieces) {
                if (piece.source && piece.source->stick == stick.number) {
                    laid.emplace_back(piece.source->from, piece.source->from + piece.cut);
                    const Trim* trim = catalogue.find(run.trim);
                    if (pool_of(job.find(run.edge)->edge, *trim) != stick.pool) {
                        return "a piece from another pool's stick";
                    }
                }
            }
        }
        std::sort(laid.begin(), laid.end());
        for (std::size_t i = 0; i < laid.size(); ++i) {
            const Length begins = i == 0 ? Length() : laid[i - 1].second + job.practice.kerf;
            if (laid[i].first < begins || laid[i].second > stick.length) {
                return "pieces overlap, or run past the stick";
            }
        }
    }
    for (const Run& run : plan.runs) {
        for (const PlannedPiece& piece : run.pieces) {
            if (piece.is_cut == piece.source.has_value()) {
                return "a piece with no source, or a cut one with one";
            }
        }
    }
    return "";
}

}  // namespace

TEST_CASE(
    "An edge that is read twice gets its trim and its cleat, and one read once gets nothing") {
    const Catalogue catalogue = four_trims();
    Job job = job_of({read_twice("A", inches(400)), read_twice("B", inches(90))});
    job.edges[1].readings.pop_back();
    const Plan plan = make_plan(job, catalogue);
    REQUIRE(plan.runs.size() == 2);
    CHECK(plan.runs[0].trim == "eave_rolled");
    CHECK(plan.runs[1].trim == "cleat");
    CHECK(plan.runs[1].lap == Length());
    CHECK(covered(plan.runs[0]) == inches(400));
    CHECK(covered(plan.runs[1]) == inches(400));
    CHECK(find_run(plan, "A", TrimRole::wrap) == nullptr);
    CHECK(find_run(plan, "B", TrimRole::main) == nullptr);
    CHECK(plan.problems.empty());
    CHECK(wrong_sticks(plan, job, catalogue) == "");
}

TEST_CASE("A wrap is planned where the edge asks for it, and options leave wrap and cleat out") {
    const Catalogue catalogue = four_trims();
    Job job = job_of({read_twice("A", inches(400))});
    job.edges[0].edge.wrap = true;
    const Plan all = make_plan(job, catalogue);
    REQUIRE(all.runs.size() == 3);
    CHECK(all.runs[1].role == TrimRole::wrap);
    CHECK(all.runs[1].lap == job.practice.lap);
    CHECK(all.proofs.size() == 3);
    CHECK(make_plan(job, catalogue, trim_only).runs.size() == 1);
}

TEST_CASE("The tab of an outside corner goes on the end of the side fitted first") {
    // Common practice, no published source.
    Edge edge;
    edge.left = edge.right = End::corner_out;
    Trim trim;
    Trim cleat;
    cleat.role = TrimRole::cleat;
    RunRule rule = run_rule(edge, trim, inches(100), {});
    CHECK(rule.allowance_first == inches(1));
    CHECK(rule.allowance_last == Length());
    edge.left = End::wall;
    edge.first = Side::right;
    rule = run_rule(edge, trim, inches(100), {});
    CHECK(rule.allowance_first == inches(1));
    CHECK(run_rule(edge, cleat, inches(100), {}).allowance_first == Length());
    CHECK(run_rule(edge, cleat, inches(100), {}).lap == Length());
}

TEST_CASE("A slope is divided from its foot, though somebody said from its top") {
    // Common practice, no published source: a lap that faces uphill takes in water.
    Edge edge;
    edge.kind = EdgeKind::gable;
    edge.left = End::eave;
    edge.right = End::wall;
    edge.first = Side::right;
    Practice practice;
    practice.tab_eave = inches(2);
    practice.turn_up = inches(3);
    const RunRule rule = run_rule(edge, Trim(), inches(100), practice);
    CHECK(rule.allowance_first == inches(2));
    CHECK(rule.allowance_last == inches(3));
}

TEST_CASE("Pieces cut already keep their length and take no stick") {
    const Catalogue catalogue = four_trims();
    Job job = job_of({read_twice("A", inches(400))});
    cut(job.edges[0], 1, inches(83));
    const Plan plan = make_plan(job, catalogue, trim_only);
    const Run& run = plan.runs.at(0);
    CHECK(run.pieces[0].is_cut);
    CHECK(run.pieces[0].cut == inches(83));
    CHECK(!run.pieces[0].source);
    CHECK(run.pieces[3].cut == inches(97));
    CHECK(plan.sticks.size() == 3);
    CHECK(wrong_sticks(plan, job, catalogue) == "");
}

TEST_CASE("Edges share sticks only of one trim, face, flange, metal, thickness and colour") {
    const Catalogue catalogue = four_trims();
    const Trim& trim = *catalogue.find("eave_rolled");
    Edge edge;
    std::set<std::string> pools = {pool_of(edge, trim)};
    edge.metal = "steel";
    pools.insert(pool_of(edge, trim));
    edge.thickness = sixteenths(1);
    pools.insert(pool_of(edge, trim));
    edge.thickness = sixteenths(1) + nanometres(1);
    pools.insert(pool_of(edge, trim));
    edge.colour = "red";
    pools.insert(pool_of(edge, trim));
    edge.face = inches(5);
    pools.insert(pool_of(edge, trim));
    edge.flange = inches(5);
    pools.insert(pool_of(edge, trim));
    pools.insert(pool_of(edge, *catalogue.find("eave_two_part")));
    CHECK(pools.size() == 8);
    edge.id = "another";
    CHECK(pools.count(pool_of(edge, trim)) == 1);
}

TEST_CASE("Only what slopes is doubted when it is fitted from the right") {
    Job job = job_of({read_twice("A", inches(400))});
    job.edges[0].edge.first = Side::right;
    CHECK(find_problem(make_plan(job, four_trims()), "first") == nullptr);
}

TEST_CASE("The last word on what can be had of a pool holds, on whichever edge it was said") {
    Job job = job_of({read_twice("A", inches(400)), read_twice("B", inches(400))});
    job.supplies = {{"A", TrimRole::main, Supply::as_wanted},
                    {"B", TrimRole::main, Supply::on_hand_only}};
    CHECK(make_plan(job, four_trims(), trim_only).sticks.empty());
    std::swap(job.supplies[0], job.supplies[1]);
    CHECK_FALSE(make_plan(job, four_trims(), trim_only).sticks.empty());
}

TEST_CASE("What is cut of the wrap is not cut of the trim") {
    const Catalogue catalogue = four_trims();
    Job job = job_of({read_twice("A", inches(400))});
    job.edges[0].edge.wrap = true;
    cut(job.edges[0], 1, inches(83), TrimRole::wrap);
    const Plan plan = make_plan(job, catalogue);
    CHECK_FALSE(find_run(plan, "A", TrimRole::main)->pieces[0].is_cut);
    CHECK(find_run(plan, "A", TrimRole::wrap)->pieces[0].cut == inches(83));
}

TEST_CASE("The last piece is cut to what is left beside its fixed neighbour") {
    const Catalogue catalogue = four_trims();
    Job job = job_of({read_twice("A", inches(400))});  // 93, 120, 120, 87
    for (const auto& [piece, length] : {std::pair{1, 93}, {2, 120}, {3, 120}}) {
        cut(job.edges[0], piece, inches(length));
    }
    const Length remainder = inches(80) - sixteenths(5);
    read_remainder(job.edges[0], remainder);
    Plan plan = make_plan(job, catalogue);
    const Run& run = plan.runs.at(0);
    REQUIRE(run.pieces.size() == 4);
    // By the rule: remainder + lap of 6 in + tab of 1 in.
    CHECK(run.pieces[3].cut == remainder + inches(7));
    CHECK(run.pieces[3].covers == remainder + inches(6));
    CHECK(find_problem(plan, "remainder") == nullptr);  // 5/16 in: what the tape allows at 33 ft

    // Cut to it, the run is whole; no fifth piece makes up the 5/16 in.
    cut(job.edges[0], 4, remainder + inches(7));
    plan = make_plan(job, catalogue, trim_only);
    CHECK(plan.runs.at(0).pieces.size() == 4);
    CHECK(plan.sticks.empty());
}

TEST_CASE("A remainder inches off the edge is used and doubted, and one feet off is not used") {
    const Catalogue catalogue = four_trims();
    Job job = job_of({read_twice("A", inches(200))});  // two pieces of 107 and 101
    cut(job.edges[0], 1, inches(107));
    read_remainder(job.edges[0], inches(92));
    Plan plan = make_plan(job, catalogue);
    CHECK(plan.runs.at(0).pieces.back().cut == inches(99));
    REQUIRE(find_problem(plan, "remainder") != nullptr);
    CHECK(find_problem(plan, "remainder")->severity == Severity::measure_again);
    read_remainder(job.edges[0], inches(40));
    plan = make_plan(job, catalogue);
    CHECK(plan.runs.at(0).pieces.back().cut == inches(101));
    CHECK(find_problem(plan, "remainder") != nullptr);
}

TEST_CASE("An offcut of the same pool is used before a new stick, and one of another pool is not") {
    const Catalogue catalogue = four_trims();
    Job job = job_of({read_twice("A", inches(80)), read_twice("B", inches(60))});
    job.edges[1].edge.colour = "slate";
    job.offcuts = {{{7, 1}, "A", TrimRole::main, inches(90)},
                   {{7, 2}, "A", TrimRole::cleat, inches(90)}};
    const Plan plan = make_plan(job, catalogue, trim_only);
    REQUIRE(plan.sticks.size() == 2);
    CHECK(plan.sticks[0].offcut == EventId{7, 1});
    CHECK(plan.sticks[0].length == inches(90));
    CHECK(plan.sticks[0].left == inches(8));
    CHECK(!plan.sticks[1].offcut);
    REQUIRE(plan.proofs.size() == 2);
    CHECK(plan.proofs[0].sticks == 0);
    CHECK(plan.proofs[1].sticks == 1);
    CHECK(plan.proofs[1].proved);
    CHECK(wrong_sticks(plan, job, catalogue) == "");
}

TEST_CASE("What is wrong with an edge is said by field, with the mend") {
    const Catalogue catalogue = four_trims();
    const auto only = [&](EdgeWork work, std::string_view field, Severity severity) {
        const Plan plan = make_plan(job_of({std::move(work)}), catalogue);
        const PlanProblem* problem = find_problem(plan, field);
        REQUIRE(problem != nullptr);
        CHECK(problem->severity == severity);
        CHECK(problem->edge == "A");
        CHECK(!problem->what.empty());
        CHECK(!problem->mend.empty());
        return plan;
    };
    EdgeWork work = read_twice("A", inches(200));
    work.edge.pitch.reset();
    CHECK(only(work, "pitch", Severity::problem).runs.size() == 2);

    work = read_twice("A", inches(200));
    work.edge.pitch = rise_in_12(9);
    Plan plan = only(work, "pitch", Severity::problem);
    CHECK(find_problem(plan, "pitch")->mend.english().find("eave_two_part") != std::string::npos);
    CHECK(plan.runs.size() == 2);

    work.edge.pitch = rise_in_12(6);
    only(work, "pitch", Severity::measure_again);

    work.edge.pitch = rise_in_12(4);
    work.edge.seam = Seam::nail_strip;
    plan = only(work, "seam", Severity::problem);
    CHECK(find_problem(plan, "seam")->mend.english().find("eave_two_part") != std::string::npos);

    work = read_twice("A", inches(200));
    work.edge.trim = "cleat";
    CHECK(only(work, "trim", Severity::problem).runs.empty());
    work.edge.trim = "no such trim";
    CHECK(only(work, "trim", Severity::problem).runs.empty());
    work.edge.trim.clear();
    work.edge.kind = EdgeKind::valley;
    CHECK(only(work, "kind", Severity::problem).runs.empty());

    work = read_twice("A", inches(200));
    work.readings[1].length = inches(201);
    CHECK(only(work, "length", Severity::measure_again).runs.empty());

    work = read_twice("A", inches(200));
    cut(work, 2'000'000'000, inches(50));
    CHECK(only(work, "length", Severity::problem).runs.empty());
}

TEST_CASE(
    "An edge that leaves a sliver whichever way it is divided is a problem of that edge alone") {
    const Catalogue catalogue = four_trims();
    Job job = job_of({read_twice("A", inches(30)), read_twice("B", inches(10))});
    job.practice.stock = inches(30);  // 32 in and a lap are 38: two pieces of 24 are too many
    const Plan plan = make_plan(job, catalogue, trim_only);
    CHECK(plan.runs.size() == 1);
    CHECK(plan.runs[0].edge == "B");
    CHECK(find_problem(plan, "length") != nullptr);
}

TEST_CASE("Whatever is read and cut, runs cover and sticks hold, twice the same") {
    const Catalogue catalogue = four_trims();
    CHECK(rc::check("sound plans", [&] {
        Job job;
        job.practice.kerf = sixteenths(*rc::gen::inRange(0, 3));
        const int edges = *rc::gen::inRange(1, 7);
        for (int e = 0; e < edges; ++e) {
            EdgeWork work = read_twice(std::string(1, static_cast<char>('A' + e)),
                                       sixteenths(*rc::gen::inRange<std::int64_t>(1, 12'000)));
            work.edge.left = *rc::gen::element(End::gable, End::corner_out, End::wall);
            work.edge.wrap = *rc::gen::arbitrary<bool>();
            work.edge.colour = *rc::gen::element(std::string(), std::string("slate"));
            work.style = *rc::gen::element(Style::balanced, Style::equal, Style::full);
            for (int n = *rc::gen::inRange(0, 3); n > 0; --n) {
                const auto role =
                    *rc::gen::element(TrimRole::main, TrimRole::wrap, TrimRole::cleat);
                cut(work, *rc::gen::inRange(1, 5),
                    sixteenths(*rc::gen::inRange<std::int64_t>(200, 1920)), role);
            }
            if (*rc::gen::arbitrary<bool>()) {
                read_remainder(work, sixteenths(*rc::gen::inRange<std::int64_t>(1, 1900)));
            }
            job.edges.push_back(work);
            job.offcuts.push_back({{9, static_cast<std::uint32_t>(e)},
                                   work.edge.id,
                                   TrimRole::main,
                                   sixteenths(*rc::gen::inRange<std::int64_t>(384, 1900))});
        }
        const Plan plan = make_plan(job, catalogue);
        RC_ASSERT(wrong_sticks(plan, job, catalogue) == "");
        for (const Run& run : plan.runs) {
            const EdgeWork* work = job.find(run.edge);
            const Length read = work->readings.front().length;
            RC_ASSERT(covered(run) == read || work->remainder().has_value());
            RC_ASSERT(absolute(covered(run) - read) <= feet(1));
        }
        const Plan again = make_plan(job, catalogue);
        RC_ASSERT(again.sticks.size() == plan.sticks.size());
        for (std::size_t i = 0; i < plan.sticks.size(); ++i) {
            RC_ASSERT(again.sticks[i].used == plan.sticks[i].used);
            RC_ASSERT(again.sticks[i].offcut == plan.sticks[i].offcut);
        }
    }));
}
