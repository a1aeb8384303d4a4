// The panels of a job's planes: an item each, laid out from the walk, with steps that tell where
// seams lie. Figures by hand: a plane of 40 ft between gables, 15 ft run at 6 in 12, module 16 in,
// has 28 whole pans and two of 15 3/4 in (what is left of 479 1/2 in, halved), seams at 16, 32, …
// from the deck's edge; on each 9 clips.
#include "engine/work/plane_panels.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "engine/panels/pan_cut.h"
#include "engine/plan/make_plan.h"
#include "engine/work/closures.h"
#include "engine/work/order.h"
#include "tests/engine/assets.h"

namespace hemline {
namespace {

Catalogue trims_read() { return Catalogue::read(asset("catalogue/trims.csv")).value(); }

SideWalked walked_side(const char* id, SideKind kind, Length length) {
    SideWalked side;
    side.id = id;
    side.kind = kind;
    side.length = length;
    return side;
}

struct PanelsTold {
    std::vector<Event> events;
    Job job;
    Procedures procedures = {
        {EdgeKind::panels, read_procedure(asset("procedures/panels.csv")).value()}};

    explicit PanelsTold(SideKind ends) {
        const WalkedBody walk{
            "1",
            {},
            {walked_side("A", SideKind::eave, feet(40)), walked_side("B", ends, feet(30)),
             walked_side("C", SideKind::eave, feet(40)), walked_side("D", ends, feet(30))},
            true,
            {}};
        tell(facts_of_walk(Job(), walk, rise_in_12(6), trims_read()));
        tell(lacking_panels(job, roof_bodies(job)));
    }
    void tell(const Fact& fact) {
        const auto number = static_cast<std::uint32_t>(events.size() + 1);
        events.push_back({{1, number}, {1'000, number}, "Ada", {}, fact});
        job = replay(events);
    }
    void tell(const std::vector<Fact>& facts) {
        for (const Fact& fact : facts) {
            tell(fact);
        }
    }
    [[nodiscard]] Plan plan() const {
        Plan plan = make_plan(job, trims_read());
        plan_panels(plan, job, roof_bodies(job));
        return plan;
    }
    [[nodiscard]] std::string on(const char* eave) const {
        for (const auto& [item, panels] : plan().panels) {
            if (panels.eave == eave) {
                return item;
            }
        }
        return "";
    }
    [[nodiscard]] std::vector<Step> steps(const std::string& item) const {
        return steps_of(*job.find(item), plan(), job.practice, procedures.at(EdgeKind::panels),
                        trims_read());
    }
    [[nodiscard]] Step step(const std::string& item, const char* id, int piece = 0) const {
        const std::vector<Step> all = steps(item);
        const auto found = std::find_if(all.begin(), all.end(), [&](const Step& one) {
            return one.rule->id == id && one.piece == piece;
        });
        REQUIRE(found != all.end());
        return *found;
    }
};

TEST_CASE("Each plane gets one item of panels, and none a second time") {
    const PanelsTold gable(SideKind::gable);
    const auto items =
        std::count_if(gable.job.edges.begin(), gable.job.edges.end(),
                      [](const EdgeWork& work) { return work.edge.kind == EdgeKind::panels; });
    CHECK(items == 2);
    CHECK(lacking_panels(gable.job, roof_bodies(gable.job)).empty());
    for (const BodyOnJob& body : roof_bodies(gable.job)) {
        CHECK(body.without_place.empty());
    }
    const PanelsTold hip(SideKind::eave);
    CHECK(hip.plan().panels.size() == 4);
}

TEST_CASE("The steps of a plane's panels tell its pans, seams and clips") {
    const PanelsTold told(SideKind::gable);
    const std::string item = told.on("A");
    const Plan plan = told.plan();
    const PanelLayout& layout = *plan.panels.at(item).layout;
    CHECK(layout.pans.size() == 30);
    CHECK(layout.pans.front().width == sixteenths(252));  // 15 3/4 in
    const Step fifth = told.step(item, "fifth_seam", 5);
    CHECK(fifth.length_least == inches(80) - sixteenths(2));
    CHECK(fifth.length_most == inches(80) + sixteenths(2));
    CHECK(fifth.action == "Lay pans 1 to 5; measure from the eave's left end to their seam.");
    CHECK(told.step(item, "clips").count_least == 29 * 9);
    CHECK(told.step(item, "rest").action ==
          "Lay pans 26 to 30 and turn the last one up at its side.");
    // 15 ft of run at 6 in 12: 201.25 in up the slope; the diagonal of that and 480 in.
    CHECK(told.step(item, "left_slope").length_least ==
          told.step(item, "right_slope").length_least);
    const Length slope = *told.step(item, "left_slope").length_least + inches(3);
    CHECK(absolute(slope - (inches(201) + sixteenths(4))) < sixteenths(1));
    const Length diagonal = *told.step(item, "rising").length_most - inches(3);
    CHECK(absolute(diagonal - (inches(520) + sixteenths(8))) < sixteenths(1));
}

TEST_CASE("Laid from the right, pans come in the other order and seams are read from that end") {
    PanelsTold told(SideKind::gable);
    told.tell(RuleSet{"first.A", "right"});
    const std::string item = told.on("A");
    const Step fifth = told.step(item, "fifth_seam", 5);
    CHECK(fifth.action == "Lay pans 30 to 26; measure from the eave's right end to their seam.");
    CHECK(fifth.length_least == inches(80) - sixteenths(2));
}

TEST_CASE("A hip plane has a step for each pan that is cut, and reads one slope") {
    const PanelsTold told(SideKind::eave);
    const std::vector<Step> steps = told.steps(told.on("A"));
    const auto count = [&](const char* id) {
        return std::count_if(steps.begin(), steps.end(),
                             [&](const Step& step) { return step.rule->id == id; });
    };
    // Hips at 45° in plan run in 15 ft: over 180 in of eave, so over 12 pans of 16 in at each end.
    CHECK(count("cut_pan") == 24);
    CHECK(count("left_slope") == 1);  // square to the eave
    CHECK(count("right_slope") == 0);
}

TEST_CASE("A cut pan's two sides are those of its neighbors' lengths") {
    // By hand, hips at 45° in plan on 6 in 12: 17.8885 in up for each 16 in, 2 in below the deck's
    // edge, 3/4 in past the hip: sides of 20.6385 in and 38.5271 in (framing square: 17.89).
    const PanelsTold told(SideKind::eave);
    const Plan plan = told.plan();
    const PanelLayout& layout = *plan.panels.at(told.on("A")).layout;
    const PanCut cut = pan_cut(layout.plane, layout.pans[1], layout.ends);
    CHECK(cut.is_square(cut.foot));
    CHECK_FALSE(cut.is_square(cut.top));
    CHECK(cut.foot.front().y == Length());
    const auto inches_of = [](Length length) { return static_cast<double>(length.nm()) / 25.4e6; };
    CHECK(inches_of(cut.top.front().y) == doctest::Approx(20.6385).epsilon(1e-5));
    CHECK(inches_of(cut.top.back().y) == doctest::Approx(38.5271).epsilon(1e-5));
    CHECK(cut.top.back().x - cut.top.front().x == inches(16));
}

TEST_CASE("How warm the metal is, as answered on a plane, sets the gap of that plane alone") {
    // Steel, 201 1/4 in pinned at the ridge: at 60 F it shrinks by 0.108 in to -20 F and the gap is
    // 3/16 in; at 100 F by 0.162 in, 1/4 in.
    PanelsTold told(SideKind::gable);
    told.tell(RuleSet{"fixed_line", "ridge"});
    const std::string item = told.on("A");
    CHECK(told.plan().panels.at(item).layout == nullptr);
    CHECK(told.step(item, "hook").waits_for.english().find("not laid out") != std::string::npos);
    CHECK(told.step(item, "warmth").waits_for.empty());
    told.tell(RuleSet{"metal_now", "60 F"});
    CHECK(told.plan().panels.at(item).layout->ends.gap == sixteenths(3));
    StepAnswered warm{item, "warmth"};
    warm.kind = AnswerKind::count;
    warm.count = 100;
    told.tell(warm);
    CHECK(told.plan().panels.at(item).layout->ends.gap == sixteenths(4));
    CHECK(told.step(item, "hook").length_most == sixteenths(5));
    CHECK(told.plan().panels.at(told.on("C")).layout->ends.gap == sixteenths(3));
    // A record of another program, or a hostile one, names any warmth: above the hottest it is
    // that.
    warm.count = 1'000'000'000;
    told.tell(warm);
    CHECK(told.plan().panels.at(item).layout != nullptr);
}

TEST_CASE("A ridge counts its closures from the pans of both planes, and waits for them") {
    const PanelsTold told(SideKind::gable);
    const auto ridge =
        std::find_if(told.job.edges.begin(), told.job.edges.end(),
                     [](const EdgeWork& work) { return work.edge.kind == EdgeKind::ridge; });
    REQUIRE(ridge != told.job.edges.end());
    // By the module along the line it would be 2 · 30; of seams 3 in off balance as many pans.
    const Closures closures = closures_on(ridge->edge, feet(40), told.job.practice, told.plan());
    CHECK(closures.count == 60);
    REQUIRE(closures.sides.size() == 2);
    CHECK(closures.sides[0].blank == inches(17));
    CHECK(fitting_waits_for(*ridge, told.job, trims_read()).english().find("eave A") !=
          std::string::npos);
    Job done = told.job;
    for (EdgeWork& work : done.edges) {
        if (turn_of(work.edge, trims_read()) < 100) {
            work.finished = EventId{1, 1};
        }
    }
    const std::string item = told.on("A");
    const Text waits = fitting_waits_for(*done.find(ridge->edge.id), done, trims_read());
    CHECK(waits ==
          "Finish panels " + item + " first: ridge " + ridge->edge.id + " goes over them.");
    CHECK(fitting_waits_for(*done.find(item), done, trims_read()).empty());
    CHECK(fitting_waits_for(*told.job.find(item), told.job, trims_read()) ==
          "Finish eave A first: the panels lie on it.");
}

TEST_CASE("What is read of a plane puts its panels right") {
    // 2 in less at the right: over 40 ft the top falls, and pans are cut on the slant there.
    PanelsTold told(SideKind::gable);
    const std::string item = told.on("A");
    const auto read = [&](std::string_view step, Length length) {
        StepAnswered said{item, std::string(step)};
        said.kind = AnswerKind::length;
        said.length = length;
        told.tell(said);
    };
    const Length before = told.plan().panels.at(item).layout->pans.back().length;
    read(left_slope_step, inches(201) + sixteenths(4));
    read(right_slope_step, inches(199) + sixteenths(4));
    const Plan plan = told.plan();
    const PanelLayout& layout = *plan.panels.at(item).layout;
    CHECK(layout.pans.front().kind == PanKind::cut);
    CHECK(before - layout.pans.back().exact > inches(1));
    CHECK(std::any_of(plan.problems.begin(), plan.problems.end(),
                      [&](const PlanProblem& problem) { return problem.edge == item; }));
}

TEST_CASE("Seams lie as the crew chose") {
    PanelsTold told(SideKind::gable);
    const std::string item = told.on("A");
    told.tell(RuleSet{"seams." + item, "left 1/4 in"});
    CHECK(told.plan().panels.at(item).layout->shift == -sixteenths(4));
    told.tell(RuleSet{"seams." + item, "right 1/8 in, one more"});
    const Plan plan = told.plan();
    CHECK(plan.panels.at(item).layout->one_more);
    CHECK(plan.panels.at(item).layout->pans.size() == 31);
    told.tell(RuleSet{"seams." + item, ""});
    CHECK(told.plan().panels.at(item).layout->shift == Length());
    CHECK_FALSE(with_rule({}, "seams." + item, "up 1 in").ok());
    CHECK_FALSE(with_rule({}, "seams." + item, "left 1 in, two more").ok());
}

TEST_CASE("A pipe that is measured on a plane keeps seams off") {
    PanelsTold told(SideKind::gable);
    const std::string item = told.on("A");
    Edge pipe;
    pipe.id = "P1";
    pipe.kind = EdgeKind::penetration;
    told.tell(EdgeAdded{pipe});
    told.tell(EdgePlaced{"P1", *told.job.find(item)->place});
    const auto answer = [&](std::string_view step, Length length) {
        StepAnswered said{"P1", std::string(step)};
        said.kind = AnswerKind::length;
        said.length = length;
        told.tell(said);
    };
    answer("base", inches(9));
    CHECK(told.plan().panels.at(item).layout->shift == Length());
    // Base 9 in: half of it, 1 in and half a seam's foot are 5 3/4 in; the fifth seam at 80 in is
    // 5 1/2 in away.
    answer(along_step, inches(80) + sixteenths(88));
    CHECK(told.plan().panels.at(item).layout->shift == -sixteenths(4));
}

}  // namespace
}  // namespace hemline
