// What an installer confirms in one go (common practice, no published source): nothing that only a
// measurement tells, nothing that somebody else is asked, nothing before its metal is cut.
#include "engine/work/confirm.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "eave_job.h"
#include "engine/work/card.h"

using namespace hemline_test;

namespace {

struct Installer {
    Planned planned;
    std::vector<StepRule> procedure = *read_procedure(assets_file("procedures/eave.csv"));

    Installer() {
        const Edge edge = eave("A", End::wall, End::wall);
        planned.add(edge, inches(200));
        planned.add_cleat(edge, inches(200));
    }
    [[nodiscard]] std::vector<Step> steps() const {
        return steps_of(planned.job.edges[0], planned.plan, planned.job.practice, procedure,
                        planned.catalogue);
    }
    [[nodiscard]] std::string next() const {
        const std::vector<Step> all = steps();
        const Step& step = all.at(next_for_installer(all).value());
        return step.rule->id + " " + std::to_string(step.piece);
    }
    [[nodiscard]] std::vector<std::string> together() const {
        const std::vector<Step> all = steps();
        std::vector<std::string> names;
        for (const std::size_t i : confirmed_with(all, next_for_installer(all).value())) {
            names.push_back(all[i].rule->id + " " + std::to_string(all[i].piece));
        }
        return names;
    }
    void confirm() {
        const std::vector<Step> all = steps();
        for (const std::size_t i : confirmed_with(all, next_for_installer(all).value())) {
            planned.record_step(all[i].rule->id, all[i].piece);
        }
    }
};

}  // namespace

TEST_CASE("All pieces of a cleat are cut before it is set, and it is set in one go") {
    Installer crew;
    const auto pieces = static_cast<int>(crew.planned.plan.runs.back().pieces.size());
    CHECK(crew.next() == "cleat_cut 1");
    CHECK(crew.together().empty());
    for (int piece = 1; piece <= pieces; ++piece) {
        crew.planned.cut(TrimRole::cleat, piece);
    }
    CHECK(crew.next() == "deck 0");
    CHECK(crew.together().size() == 2 + 2 * static_cast<std::size_t>(pieces));
    crew.confirm();
    CHECK(crew.next() == "cut 1");
}

TEST_CASE("A piece is confirmed with its own steps alone, and a measurement never") {
    Installer crew;
    crew.planned.cut(TrimRole::cleat, 1);
    crew.planned.cut(TrimRole::cleat, 2);
    crew.confirm();
    crew.planned.cut(TrimRole::main, 1);
    CHECK(crew.together() == std::vector<std::string>{"hook 1", "fasten 1"});
    crew.confirm();
    CHECK(crew.next() == "remainder 2");
    CHECK(crew.together().empty());
    crew.planned.record_remainder(inches(86), 99);
    crew.planned.cut(TrimRole::main, 2);
    CHECK(crew.together() == std::vector<std::string>{"seal 2", "hook 2", "slide 2", "fasten 2"});
    crew.confirm();
    CHECK(crew.together() == std::vector<std::string>{"membrane 0", "film 0", "ends 0", "tug 0"});
    crew.confirm();
    CHECK(crew.next() == "string 0");
    CHECK(crew.together().empty());
    crew.planned.record_step("string", 0);
    CHECK(crew.next() == "tick 0");
    CHECK(crew.together().empty());
}

TEST_CASE("As asked is the value of the plan or of practice, and none where it is to be measured") {
    Installer crew;
    for (const Step& step : crew.steps()) {
        const std::optional<Answer> answer = as_asked(step);
        CAPTURE(step.rule->id);
        if (step.rule->asks == Asks::count) {
            REQUIRE(answer);
            CHECK(answer->count == step.count_least);
        } else if (step.rule->id == "slide") {
            REQUIRE(answer);
            CHECK(answer->length == inches(6));
        } else if (step.rule->id == "string" || step.rule->asks == Asks::cut ||
                   step.rule->asks == Asks::tick || step.rule->asks == Asks::remainder) {
            CHECK_FALSE(answer);
        }
    }
}

TEST_CASE("Pieces are cut in one go where every mark is the same and each has its own stick") {
    Card one;
    one.cut = feet(10);
    one.stick = 1;
    one.stick_length = feet(10);
    one.marks = {{MarkKind::lap_line, inches(6), Side::left}};
    Card other = one;
    other.piece = 3;
    CHECK_FALSE(are_cut_in_one_go(one, other));  // of the same stick
    other.stick = 2;
    CHECK(are_cut_in_one_go(one, other));
    other.marks[0].at = inches(5);
    CHECK_FALSE(are_cut_in_one_go(one, other));
    other = one;
    other.stick = 2;
    other.stick_from = inches(3);
    CHECK_FALSE(are_cut_in_one_go(one, other));
    // Pieces of cleat have no mark but their length, which the button says.
    other = one;
    other.stick = 2;
    other.cut = feet(3);
    CHECK_FALSE(are_cut_in_one_go(one, other));
    one.role = other.role = TrimRole::cleat;
    CHECK_FALSE(are_cut_in_one_go(one, other));
    one.marks = {{MarkKind::end_cut, one.cut, Side::right}};
    other.marks = {{MarkKind::end_cut, other.cut, Side::right}};
    CHECK(are_cut_in_one_go(one, other));
}
