// Fewer answers are truer ones: how often an installer has to answer, and that the record holds as
// much as before. 25 and 90 are our own limits.
#include <doctest/doctest.h>

#include <algorithm>

#include "field/store/journal_file.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

/// Every touch of the installer's that writes, but the day's safety questions, which are asked
/// once, and readings of an edge, which come before any answer.
struct Counting : Journey {
    Counting() {
        on_event = [this] {
            const Fact& said = state().events.back().fact;
            const auto* const reading = std::get_if<ReadingTaken>(&said);
            const bool before_work = std::holds_alternative<GateAnswered>(said) ||
                                     std::holds_alternative<PitchTaken>(said) ||
                                     std::holds_alternative<EdgeAdded>(said) ||
                                     std::holds_alternative<EdgePlaced>(said) ||
                                     std::holds_alternative<EdgeFinished>(said) ||
                                     (reading != nullptr && reading->of == ReadingOf::edge);
            answers += before_work ? 0 : 1;
        };
    }
    /// What is cut alike is cut in one go.
    void fit(const std::string& edge) {
        if (where().edge != edge) {
            tap("edge " + edge);
        }
        for (int i = 0; i < 500 && status(edge) != EdgeStatus::finished; ++i) {
            if (screen->has_target("cut alike")) {
                tap("cut alike");
            } else {
                do_next();
            }
        }
        REQUIRE(status(edge) == EdgeStatus::finished);
    }
    int answers = 0;
};

/// What the record holds of each step of the edge, and what it asked.
void check_record(const Journey& crew, const std::string& edge) {
    const EdgeWork& work = crew.work(edge);
    for (const Step& step : steps_on(crew.state(), work)) {
        CAPTURE(step.rule->id);
        CHECK(step.done);
        const auto said = std::find_if(work.steps.begin(), work.steps.end(), [&](const auto& done) {
            return done.step.step == step.rule->id && done.step.piece == step.piece;
        });
        const bool by_other_means = step.rule->asks == Asks::cut || step.rule->asks == Asks::tick ||
                                    step.rule->asks == Asks::remainder;
        REQUIRE((by_other_means || said != work.steps.end()));
        if (step.rule->asks == Asks::count) {
            CHECK(said->step.answer.kind == AnswerKind::count);
            CHECK(said->step.answer.count == step.count_least);
        } else if (step.rule->asks == Asks::length) {
            CHECK(said->step.answer.kind == AnswerKind::length);
        } else if (step.rule->asks == Asks::seen) {
            CHECK(said->step.answer.seen == "as it should be");
        }
    }
}

}  // namespace

TEST_CASE("An eave of 46 ft with its wrap and two corners takes an installer at most 25 answers") {
    Counting crew;
    crew.tap("demo");
    crew.read_edge("A", eave_a_length, eave_a_length, "5");
    crew.fit("A");
    MESSAGE(crew.answers << " answers for " << steps_on(crew.state(), crew.work("A")).size()
                         << " steps");
    CHECK(steps_on(crew.state(), crew.work("A")).size() > 55);
    CHECK(crew.answers <= 25);
    check_record(crew, "A");
}

// A house of 32 by 24 ft at 6/12: eaves 32 ft, gables 12 ft · 13.42/12 = 13 ft 5 in, ridge 32 ft.
TEST_CASE("A simple gable house takes an installer at most 90 answers" *
          doctest::test_suite("long")) {
    Counting crew;
    crew.tap_all({"new job", "letter H", "keep name"});
    const std::filesystem::path job = crew.job();
    crew.screen.reset();
    crew.app.reset();
    {
        const auto journal = JournalFile::open(job, 7);
        REQUIRE(journal.ok());
        const auto add = [&](const std::string& id, EdgeKind kind, End left, End right) {
            Edge edge;
            edge.id = id;
            edge.kind = kind;
            edge.left = left;
            edge.right = right;
            edge.pitch = rise_in_12(6);
            edge.trim = usual_trim(kind, assets_read().catalogue);
            if (kind == EdgeKind::ridge) {
                edge.pitch2 = rise_in_12(6);
            }
            const Length length = kind == EdgeKind::gable ? feet(13) + inches(5) : feet(32);
            for (const Fact& fact :
                 {Fact(EdgeAdded{edge}), Fact(ReadingTaken{id, ReadingOf::edge, length}),
                  Fact(ReadingTaken{id, ReadingOf::edge, length})}) {
                REQUIRE((*journal)->append(fact, "Installer", {}, 1'760'000'000'000));
            }
        };
        add("A", EdgeKind::eave, End::gable, End::gable);
        add("B", EdgeKind::eave, End::gable, End::gable);
        for (const char* gable : {"C", "D", "E", "F"}) {
            add(gable, EdgeKind::gable, End::eave, End::ridge);
        }
        add("R", EdgeKind::ridge, End::gable, End::gable);
    }
    crew.open_job(job);
    std::size_t steps = 0;
    for (const char* edge : {"A", "B", "C", "D", "E", "F", "R"}) {
        if (crew.where().screen != Screen::roof) {
            crew.tap("leave");
        }
        const int before = crew.answers;
        crew.fit(edge);
        steps += steps_on(crew.state(), crew.work(edge)).size();
        MESSAGE(edge << ": " << (crew.answers - before) << " answers");
        check_record(crew, edge);
    }
    MESSAGE(crew.answers << " answers for " << steps << " steps");
    CHECK(crew.answers <= 90);
}

TEST_CASE("What is not as asked is opened and keyed in by itself; the rest is confirmed after") {
    Counting crew;
    crew.tap("demo");
    crew.read_edge("C", eave_c_length, eave_c_length, "5");
    crew.reach_step("C", "fasten", 1);
    CHECK(crew.screen->has_target("answer") == false);  // nothing is keyed in yet
    const std::int64_t asked = crew.step("C").count_least.value_or(0);
    crew.key_in(asked - 1);
    crew.tap_all({"answer", "answer"});
    CHECK(crew.last<StepAnswered>().count == asked - 1);
    CHECK(crew.last<StepAnswered>().accepted_by == "Installer");
    CHECK(crew.step("C").rule->id != "fasten");
    // One touch still writes an answer for each of the others.
    const std::size_t before = crew.state().events.size();
    crew.do_next();
    CHECK(crew.state().events.size() > before);
    CHECK(crew.work("C").steps.back().step.step != "fasten");
}

TEST_CASE("An apprentice answers every step by itself, and cuts every piece by itself" *
          doctest::test_suite("long")) {
    Counting crew;
    crew.tap_all({"demo", "person Apprentice"});
    crew.read_edge("C", eave_c_length, eave_c_length, "5");
    for (int i = 0; i < 300 && crew.step("C").rule->asks != Asks::tick; ++i) {
        CHECK_FALSE(crew.screen->has_target("all so"));
        CHECK_FALSE(crew.screen->has_target("cut alike"));
        const std::size_t before = crew.state().events.size();
        crew.do_next();
        CHECK(crew.state().events.size() <= before + 1);
    }
    CHECK(crew.answers + 1 == static_cast<int>(steps_on(crew.state(), crew.work("C")).size()));
}
