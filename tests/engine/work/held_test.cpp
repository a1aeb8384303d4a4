// A no to the safety check holds the edge: OSHA lets the employer decide lower than any limit, and
// a no is not signed away by whoever said it (common practice, no published source).
#include <doctest/doctest.h>

#include <algorithm>

#include "eave_job.h"
#include "engine/work/procedure.h"

using namespace hemline_test;

namespace {

/// A 200 in eave between walls, two pieces.
struct AtTheCheck {
    Planned planned;
    std::vector<StepRule> procedure = *read_procedure(assets_file("procedures/eave.csv"));
    std::int64_t place = 0;

    AtTheCheck() {
        const Edge edge = eave("A", End::wall, End::wall);
        planned.add(edge, inches(200));
        planned.add_cleat(edge, inches(100));
    }
    void say_that(const std::string& step, const Answer& answer, const std::string& by = "Ada",
                  const std::string& signed_by = "") {
        DoneStep done;
        done.place = ++place;
        done.by = by;
        done.step = {"A", step, 0, answer, Text(), signed_by};
        planned.job.edges[0].steps.push_back(done);
    }
    void no(const std::string& by) {
        StepAnswered answered{"A", "ground", 0, AnswerKind::seen};
        answered.finding = Finding::bad;
        say_that("ground", answered.said().answer, by);
    }
    void yes(const std::string& by) {
        say_that("ground", StepAnswered{"A", "ground", 0, AnswerKind::seen}.said().answer, by);
    }
    void lift() {
        say_that("ground", StepLifted{"A", "ground", "wind is down", "Ben"}.said().answer, "Ben",
                 "Ben");
    }
    [[nodiscard]] std::vector<Step> steps() const {
        return steps_of(planned.job.edges[0], planned.plan, planned.job.practice, procedure,
                        planned.catalogue);
    }
    [[nodiscard]] std::string next() const {
        const std::vector<Step> all = steps();
        return all.at(next_step(all).value()).rule->id;
    }
};

}  // namespace

TEST_CASE("Every procedure prompts to tie off, and has the check that a no comes back to") {
    for (const char* kind : {"curb_head", "eave", "gable", "headwall", "high_eave", "hip",
                             "penetration", "ridge", "sidewall", "transition", "valley"}) {
        CAPTURE(kind);
        const auto rules = *read_procedure(assets_file("procedures/" + std::string(kind) + ".csv"));
        CHECK(rules.at(0).id == "tie_off");
        REQUIRE(prompt_of(rules) != nullptr);
        CHECK(prompt_of(rules)->id == "tie_off");
        CHECK(prompt_of(rules)->action.rfind("Tie off before you come near", 0) == 0);
        CHECK(rules.at(1).asks == Asks::safe);
        // OSHA's note of 30 mph is no permission below it: the employer may decide lower.
        CHECK(rules.at(1).caution.find("your employer's limit") != std::string::npos);
    }
}

TEST_CASE("After a sidewall's foot is turned out its slit is closed, at the eave and there alone") {
    const auto rules = *read_procedure(assets_file("procedures/sidewall.csv"));
    const auto kick = std::find_if(rules.begin(), rules.end(),
                                   [](const auto& rule) { return rule.id == "kick"; });
    REQUIRE(rules.end() - kick > 1);
    CHECK((kick + 1)->id == "kick_close");
    CHECK((kick + 1)->when == kick->when);
}

TEST_CASE("After a no all metal is cut on the ground, and then nothing goes on") {
    AtTheCheck crew;
    CHECK(crew.next() == "deck");
    crew.no("Ada");
    const std::vector<Step> all = crew.steps();
    CHECK(all.at(0).refused_by == "Ada");
    CHECK_FALSE(all.at(0).done);
    for (const Step& step : all) {
        CAPTURE(step.rule->id);
        CHECK((step.done || step.rule->asks == Asks::cut ||
               step.waits_for.english().find("Ada said no") == 0));
    }
    int cuts = 0;
    while (crew.next() != "ground" && cuts < 20) {
        const std::vector<Step> now = crew.steps();
        const Step& step = now.at(next_step(now).value());
        REQUIRE(step.rule->asks == Asks::cut);
        crew.planned.cut(step.rule->each == Each::cleat_piece ? TrimRole::cleat : TrimRole::main,
                         step.piece);
        ++cuts;
    }
    CHECK(cuts == 2);  // of cleat and trim: the last piece of trim is measured on the roof first
    CHECK(crew.next() == "ground");
}

TEST_CASE("Another one's yes lifts no no, the foreman does, and a later no holds again") {
    AtTheCheck crew;
    crew.no("Ada");
    crew.yes("Cy");
    CHECK(held_step(crew.steps()) == 0U);
    crew.lift();
    CHECK_FALSE(held_step(crew.steps()));
    CHECK(crew.steps().at(0).done);
    CHECK(crew.next() == "deck");
    crew.no("Cy");
    CHECK(held_step(crew.steps()) == 0U);
    CHECK(crew.steps().at(0).refused_by == "Cy");
    crew.lift();
    CHECK_FALSE(held_step(crew.steps()));
}

TEST_CASE("A no of the day holds the edge by what was seen, until it is lifted") {
    AtTheCheck crew;
    std::optional<SaidNo>& said = crew.planned.job.edges[0].said_no;
    said = SaidNo{"Dee", {GateCheck::wires, GateCheck::wind}};
    CHECK(held_step(crew.steps()) == 0U);
    CHECK(crew.steps().at(0).refused_by == "Dee");
    CHECK(crew.steps().at(0).waits_for ==
          "Dee said no to wires, wind: not today, or not here. The foreman alone lifts it.");
    CHECK(crew.steps().at(1).waits_for == crew.steps().at(0).waits_for);
    said.reset();
    CHECK_FALSE(held_step(crew.steps()));
}
