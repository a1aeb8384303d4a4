// Every trim of the catalogue on every edge that can have it, 1 to 18 in 12: its pieces cover the
// edge exactly, its marks lie on the metal, and the left hand is the mirror image of the right.
#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <algorithm>

#include "eave_job.h"
#include "engine/plan/make_plan.h"
#include "engine/record/job.h"
#include "engine/roof/edge_shape.h"
#include "engine/trim/end_metal.h"
#include "engine/work/card.h"
#include "mark_rows.h"

using namespace hemline_test;

namespace {

Slope random_pitch() {
    return {SlopeNotation::rise_in_12, *rc::gen::inRange<std::int64_t>(1'000'000, 18'000'001)};
}

End random_end(EdgeKind kind, Side side) {
    const auto ends = ends_of(kind, side);
    return ends[static_cast<std::size_t>(*rc::gen::inRange(0, static_cast<int>(ends.size())))];
}

/// Any plan angle that turns the end's way, between sharp and nearly straight.
std::optional<Angle> random_corner(const Edge& edge, Side side) {
    const End end = end_at(edge, side);
    const bool out = edge.kind == EdgeKind::hip || end == End::corner_out;
    const bool in = edge.kind == EdgeKind::valley || end == End::corner_in;
    if ((!out && !in) || *rc::gen::arbitrary<bool>()) {
        return {};
    }
    const auto turn = microdegrees(*rc::gen::inRange<std::int64_t>(60'000'000, 170'000'001));
    return out ? turn : degrees(360) - turn;
}

Edge random_edge(const Trim& trim) {
    Edge edge;
    edge.id = "A";
    std::vector<EdgeKind> kinds = trim.also;
    kinds.push_back(trim.kind);
    edge.kind =
        kinds[static_cast<std::size_t>(*rc::gen::inRange(0, static_cast<int>(kinds.size())))];
    edge.trim = trim.role == TrimRole::main ? trim.id : "";
    edge.left = random_end(edge.kind, Side::left);
    edge.right = random_end(edge.kind, Side::right);
    edge.pitch = random_pitch();
    // Two roofs of very unlike pitch send a valley's legs yards past its corner.
    edge.pitch2 =
        *rc::gen::element(edge.pitch, std::optional(rise_in_12(6)), std::optional<Slope>());
    edge.pitch2 = rise_in_12_of(*edge.pitch) < 3 ? std::nullopt : edge.pitch2;
    edge.first = *rc::gen::element(Side::left, Side::right);
    edge.fascia = *rc::gen::element(Fascia::plumb, Fascia::square_cut);
    edge.wrap = trim.role == TrimRole::wrap;
    edge.corner_left = random_corner(edge, Side::left);
    edge.corner_right = random_corner(edge, Side::right);
    return edge;
}

Job job_of(const Edge& edge, Length length, Style style = Style::balanced) {
    Job job;
    job.edges.push_back(read_twice(edge, length));
    job.edges[0].style = style;
    return job;
}

std::vector<Row> sorted_rows(const Card& card, bool mirrored) {
    std::vector<Row> rows;
    for (const Mark& mark : card.marks) {
        if (mark.kind != MarkKind::end_cut) {  // always the right one: the tape hooks left
            rows.emplace_back(mark.kind, mirrored ? card.cut - mark.at : mark.at,
                              mirrored ? other(mark.toward) : mark.toward);
        }
    }
    std::sort(rows.begin(), rows.end());
    return rows;
}

Card card_of(const Job& job, const Plan& plan, const Catalogue& catalogue, TrimRole role,
             int piece) {
    const auto card = make_card(job, plan, catalogue, "A", role, piece);
    RC_ASSERT(card.ok());
    return *card;
}

}  // namespace

TEST_CASE("the pieces of any trim on any edge cover it exactly, within the stick and the sliver") {
    const Catalogue catalogue = own_catalogue();
    for (const Trim& trim : catalogue.trims()) {
        CAPTURE(trim.id);
        CHECK(rc::check([&] {
            const Edge edge = random_edge(trim);
            const Length length = sixteenths(*rc::gen::inRange(36 * 16, 900 * 16));
            const Job job =
                job_of(edge, length, *rc::gen::element(Style::balanced, Style::equal, Style::full));
            const Plan plan = make_plan(job, catalogue);
            const Run* run = find_run(plan, "A", trim.role);
            RC_ASSERT(run != nullptr);
            const RunRule rule = run_rule(edge, trim, length, job.practice);
            Length covered;
            Length metal;
            for (const PlannedPiece& piece : run->pieces) {
                RC_ASSERT(piece.cut <= job.practice.stock);
                RC_ASSERT(piece.covers > Length());
                RC_ASSERT(piece.source.has_value());
                covered += piece.covers;
                metal += piece.cut;
            }
            const auto laps = static_cast<std::int64_t>(run->pieces.size()) - 1;
            RC_ASSERT(covered == length);
            // Cut = covers + its end allowances + lap (all but the last).
            RC_ASSERT(metal ==
                      length + rule.allowance_first + rule.allowance_last + run->lap * laps);
        }));
    }
}

TEST_CASE("every mark of any piece lies on its metal, in tape order, the end cut last") {
    const Catalogue catalogue = own_catalogue();
    for (const Trim& trim : catalogue.trims()) {
        CAPTURE(trim.id);
        CHECK(rc::check([&] {
            const Job job = job_of(random_edge(trim), sixteenths(*rc::gen::inRange(576, 9600)));
            const Plan plan = make_plan(job, catalogue);
            const Run* run = find_run(plan, "A", trim.role);
            RC_ASSERT(run != nullptr);
            for (const PlannedPiece& piece : run->pieces) {
                const Card card = card_of(job, plan, catalogue, trim.role, piece.number);
                for (std::size_t i = 0; i < card.marks.size(); ++i) {
                    RC_ASSERT(card.marks[i].at >= Length());
                    RC_ASSERT(card.marks[i].at <= card.cut);
                    RC_ASSERT((i == 0 || card.marks[i - 1].at <= card.marks[i].at));
                    RC_ASSERT(
                        (card.marks[i].kind != MarkKind::end_cut || i + 1 == card.marks.size()));
                }
                for (const ScrewLine& line : card.screws) {
                    RC_ASSERT(std::is_sorted(line.at.begin(), line.at.end()));
                }
                // A wrap's laps lie dry.
                RC_ASSERT((trim.role == TrimRole::main ||
                           std::none_of(card.marks.begin(), card.marks.end(),
                                        [](const Mark& m) { return m.kind == MarkKind::bead; })));
            }
        }));
    }
}

TEST_CASE("left and right hand of every level trim are exact mirrors, whatever pitch and corners") {
    const Catalogue catalogue = own_catalogue();
    for (const Trim& trim : catalogue.trims()) {
        if (is_sloped(trim.kind)) {
            continue;  // its left is its foot, never its top
        }
        CAPTURE(trim.id);
        CHECK(rc::check([&] {
            Edge edge = random_edge(trim);
            if (is_sloped(edge.kind)) {
                edge.kind = trim.kind;  // a cleat serves gables too
                edge.left = edge.right = End::gable;
            }
            Edge mirror = edge;
            std::swap(mirror.left, mirror.right);
            std::swap(mirror.corner_left, mirror.corner_right);
            mirror.first = other(edge.first);
            const Length length = sixteenths(*rc::gen::inRange(576, 9600));
            const Job one = job_of(edge, length);
            const Job two = job_of(mirror, length);
            const Plan plan = make_plan(one, catalogue);
            const Plan plan_two = make_plan(two, catalogue);
            const Run* run = find_run(plan, "A", trim.role);
            RC_ASSERT(run != nullptr);
            for (const PlannedPiece& piece : run->pieces) {
                const Card a = card_of(one, plan, catalogue, trim.role, piece.number);
                const Card b = card_of(two, plan_two, catalogue, trim.role, piece.number);
                RC_ASSERT(a.cut == b.cut);
                RC_ASSERT(a.left == b.right);
                RC_ASSERT(a.right == b.left);
                RC_ASSERT(sorted_rows(a, false) == sorted_rows(b, true));
                RC_ASSERT((!a.hand || *a.hand == other(*b.hand)));
            }
        }));
    }
}

TEST_CASE("a gable and a sidewall whose foot is at the right have the mirror of the metal") {
    const Catalogue catalogue = own_catalogue();
    for (const char* id : {"gable", "sidewall"}) {
        CAPTURE(id);
        CHECK(rc::check([&] {
            const Edge edge = random_edge(*catalogue.find(id));
            const Job left = job_of(edge, sixteenths(*rc::gen::inRange(576, 9600)));
            Job right = left;
            const Answer said{AnswerKind::seen, {}, 0, "right"};
            right.edges[0].steps.push_back(
                {{}, {}, "", {"A", std::string(hand_step), 0, said, {}, ""}});
            const Plan plan = make_plan(left, catalogue);
            const Run* run = find_run(plan, "A", TrimRole::main);
            RC_ASSERT(run != nullptr);
            for (const PlannedPiece& piece : run->pieces) {
                const Card a = card_of(left, plan, catalogue, TrimRole::main, piece.number);
                const Card b = card_of(right, plan, catalogue, TrimRole::main, piece.number);
                RC_ASSERT(a.cut == b.cut);
                RC_ASSERT(a.left == b.right);
                RC_ASSERT(a.right == b.left);
                RC_ASSERT(sorted_rows(a, false) == sorted_rows(b, true));
                RC_ASSERT((!a.hand || *a.hand == other(*b.hand)));
            }
        }));
    }
}

TEST_CASE("a hip and a valley swap their legs' marks when their two roofs are exchanged") {
    const Catalogue catalogue = own_catalogue();
    for (const char* id : {"hip_cap", "valley"}) {
        CAPTURE(id);
        CHECK(rc::check([&] {
            Edge edge = random_edge(*catalogue.find(id));
            edge.pitch = rise_in_12(*rc::gen::inRange(3, 19));
            edge.pitch2 = rise_in_12(*rc::gen::inRange(3, 19));
            Edge turned = edge;
            std::swap(turned.pitch, turned.pitch2);
            for (const Side side : {Side::left, Side::right}) {
                const EndMetal one = end_metal(edge, side, *catalogue.find(id), {});
                const EndMetal two = end_metal(turned, side, *catalogue.find(id), {});
                RC_ASSERT(one.near_back == two.far_back);
                RC_ASSERT(one.far_back == two.near_back);
                RC_ASSERT(one.added() == two.added());
            }
        }));
    }
}

TEST_CASE("a sloped edge is planned from its foot, and a stated top is a problem") {
    const Catalogue catalogue = own_catalogue();
    for (const EdgeKind kind :
         {EdgeKind::gable, EdgeKind::hip, EdgeKind::valley, EdgeKind::sidewall}) {
        Edge edge = eave("A", End::eave, End::ridge);
        edge.kind = kind;
        const Plan up = make_plan(job_of(edge, feet(25)), catalogue);
        CHECK(std::none_of(up.problems.begin(), up.problems.end(),
                           [](const PlanProblem& p) { return p.severity == Severity::problem; }));
        edge.first = Side::right;
        const Job job = job_of(edge, feet(25));
        const Plan down = make_plan(job, catalogue);
        REQUIRE(!down.problems.empty());
        CHECK(down.problems[0].field == "first");
        CHECK(down.problems[0].severity == Severity::problem);
        // The first piece lies lowest: it is the underlap at its upper end.
        const auto card = make_card(job, down, catalogue, "A", TrimRole::main, 1);
        REQUIRE(card.ok());
        CHECK(card->right == EndWork::underlap);
        CHECK(card->hand == Side::left);
    }
}

TEST_CASE("a transition without its upper roof's pitch is a problem, a ridge without is a note") {
    const Catalogue catalogue = own_catalogue();
    Edge edge = eave("A", End::gable, End::gable);
    for (const auto& [kind, severity] :
         {std::pair{EdgeKind::transition, Severity::problem},
          std::pair{EdgeKind::ridge, Severity::note}, std::pair{EdgeKind::hip, Severity::note}}) {
        edge.kind = kind;
        edge.left = kind == EdgeKind::hip ? End::eave : End::gable;
        edge.right = kind == EdgeKind::hip ? End::ridge : End::gable;
        const Plan plan = make_plan(job_of(edge, feet(25)), catalogue);
        REQUIRE(plan.problems.size() == 1);
        CHECK(plan.problems[0].field == "pitch2");
        CHECK(plan.problems[0].severity == severity);
    }
}

TEST_CASE("both roofs of a valley are judged, each in its own column") {
    // Least 1 in 12, from IBC 2012 §1507.4.2 as docs/edges.md says.
    const Catalogue catalogue = own_catalogue();
    Edge edge = eave("A", End::eave, End::ridge);
    edge.kind = EdgeKind::valley;
    edge.pitch = rise_in_12(6);
    edge.pitch2 = Slope{SlopeNotation::rise_in_12, 500'000};
    const Plan plan = make_plan(job_of(edge, feet(25)), catalogue);
    REQUIRE(!plan.problems.empty());
    CHECK(plan.problems[0].field == "pitch2");
    CHECK(plan.problems[0].what.english().find("valley metal serves pitches from 1/12") == 0);
}

namespace {

/// The marks of a piece of an edge that a single stick covers, worked out by hand.
std::vector<Row> marks_of_one(EdgeKind kind, End left, End right, Length length) {
    const Catalogue catalogue = own_catalogue();
    Edge edge = eave("A", left, right);
    edge.kind = kind;
    edge.pitch = edge.pitch2 = rise_in_12(5);
    const Job job = job_of(edge, length);
    const auto card = make_card(job, make_plan(job, catalogue), catalogue, "A", TrimRole::main, 1);
    REQUIRE(card.ok());
    return rows_of(*card);
}

}  // namespace

// Marks: common practice, no published source; places by hand.

TEST_CASE("a gable of 6 ft: return tab, plumb foot, then the peak's plumb cut and fold") {
    // Face 5 in at 5 in 12: 5·5/12 = 2.083 in, 2 1/16 on the mark.
    const Length plumb = sixteenths(33);
    const Length foot = inches(1) + plumb;
    const Length peak = foot + inches(72);
    CHECK(marks_of_one(EdgeKind::gable, End::eave, End::ridge, inches(72)) ==
          std::vector<Row>{{MarkKind::tab_end, Length(), L},
                           {MarkKind::plumb_foot, inches(1), L},
                           {MarkKind::drip_clip_45, inches(1), L},
                           {MarkKind::tab_fold, inches(1), L},
                           {MarkKind::flange_cut, foot, L},
                           {MarkKind::plumb_top, foot, L},
                           {MarkKind::plumb_foot, peak - plumb, R},
                           {MarkKind::plumb_top, peak, R},
                           {MarkKind::face_cut, peak, R},
                           {MarkKind::end_fold, peak, R},
                           {MarkKind::tab_end, peak + inches(1), R},
                           {MarkKind::end_cut, peak + inches(1), R}});
}

TEST_CASE("a valley of 6 ft: its foot along both eaves, its top along the ridge") {
    // Legs 11 in at 5 in 12: 11·12/13 = 10.154 in, 10 1/8 on the mark.
    const Length past = sixteenths(162);
    const Length foot = inches(1) + past;
    const Length top = foot + inches(72);
    CHECK(marks_of_one(EdgeKind::valley, End::eave, End::ridge, inches(72)) ==
          std::vector<Row>{{MarkKind::tab_end, Length(), L},
                           {MarkKind::mitre_near, inches(1), L},
                           {MarkKind::mitre_far, inches(1), L},
                           {MarkKind::corner_point, foot, L},
                           {MarkKind::mitre_near, top - past, R},
                           {MarkKind::mitre_far, top - past, R},
                           {MarkKind::corner_point, top, R},
                           {MarkKind::tab_end, top + inches(1), R},
                           {MarkKind::end_cut, top + inches(1), R}});
}

TEST_CASE("sidewall, headwall and ridge of 6 ft: kick-out, turn-up and folded ends") {
    CHECK(marks_of_one(EdgeKind::sidewall, End::eave, End::wall, inches(72)) ==
          std::vector<Row>{{MarkKind::kick_fold, inches(4), L},
                           {MarkKind::turn_up, inches(76), R},
                           {MarkKind::end_cut, inches(77), R}});
    CHECK(marks_of_one(EdgeKind::headwall, End::wall, End::open, inches(72)) ==
          std::vector<Row>{{MarkKind::turn_up, inches(1), L}, {MarkKind::end_cut, inches(73), R}});
    CHECK(marks_of_one(EdgeKind::ridge, End::gable, End::hip, inches(72)) ==
          std::vector<Row>{{MarkKind::tab_end, Length(), L},
                           {MarkKind::end_fold, inches(2), L},
                           {MarkKind::end_fold, inches(74), R},
                           {MarkKind::tab_end, inches(75), R},
                           {MarkKind::end_cut, inches(75), R}});
}
