// One eave from the first tape reading to the foreman's tick, through events, replay and the plan.
#include <doctest/doctest.h>

#include <cstdint>

#include "eave_job.h"
#include "engine/plan/make_plan.h"
#include "engine/record/event.h"
#include "engine/record/job.h"
#include "engine/words/result.h"
#include "engine/work/card.h"
#include "engine/work/procedure.h"
#include "good_answer.h"

using namespace hemline_test;

namespace {

/// A tablet: its journal, and the job and plan that follow from it.
struct EaveTablet {
    Catalogue catalogue = own_catalogue();
    std::vector<Event> journal;
    Job job;
    Plan plan;

    void keep(const Fact& fact, const std::vector<EventId>& supersedes = {}) {
        Event event;
        event.id = {42, static_cast<std::uint32_t>(journal.size()) + 1};
        event.when = {static_cast<std::int64_t>(journal.size()) * 1000, 0};
        event.by = "invented";
        event.supersedes = supersedes;
        event.fact = fact;
        journal.push_back(event);
        job = replay(journal);
        plan = make_plan(job, catalogue);
    }

    [[nodiscard]] Card card(TrimRole role, int piece) const {
        const auto card = make_card(job, plan, catalogue, "A", role, piece);
        REQUIRE_MESSAGE(card.ok(), (card.ok() ? Text() : card.problem().what));
        return *card;
    }

    void cut(TrimRole role, int piece) {
        const Card now = card(role, piece);
        CHECK(now.waits_for == "");
        CHECK(now.stick > 0);
        keep(PieceCut{"A", role, piece, now.cut, {now.stick_length, now.offcut}});
    }
};

void do_step(EaveTablet& tablet, const Step& step, Length remainder) {
    switch (step.rule->asks) {
        case Asks::cut:
            tablet.cut(role_of_step(step), step.piece);
            break;
        case Asks::remainder:
            tablet.keep(ReadingTaken{"A", ReadingOf::remainder, remainder});
            break;
        case Asks::tick:
            tablet.keep(EdgeFinished{"A", ""});
            break;
        default: {
            const Answer answer = good_answer(step);
            CHECK(outside_practice(step, answer) == "");
            tablet.keep(StepDone{"A", step.rule->id, step.piece, answer, "", ""});
        }
    }
}

}  // namespace

TEST_CASE("an eave of 46 ft is finished step by step, and the journal opens at the same step") {
    const auto procedure = read_procedure(assets_file("procedures/eave.csv"));
    REQUIRE(procedure.ok());
    EaveTablet tablet;
    tablet.keep(JobStarted{"Invented house", "common practice"});
    Edge edge = eave("A", End::gable, End::corner_out);
    edge.wrap = true;
    edge.seam = Seam::snap_lock;
    tablet.keep(EdgeAdded{edge});
    tablet.keep(ReadingTaken{"A", ReadingOf::edge, feet(46)});
    tablet.keep(ReadingTaken{"A", ReadingOf::edge, feet(46)});
    const auto steps = [&](const Job& job) {
        return steps_of(job.edges[0], tablet.plan, job.practice, *procedure, tablet.catalogue);
    };
    // What is left beside piece 4 turns out 1/2 in longer than the 99 in that the plan expects.
    const Length remainder = sixteenths(99 * 16 + 8);
    std::size_t taken = 0;
    for (; taken < 200; ++taken) {
        const auto now = steps(tablet.job);
        const auto next = next_step(now);
        if (!next) {
            break;
        }
        INFO(now[*next].action);
        CHECK(now[*next].waits_for == "");
        CHECK(next_step(steps(replay(tablet.journal))) == next);
        if (now[*next].rule->asks == Asks::cut) {
            const auto cut = next_cut(tablet.job, tablet.plan);
            REQUIRE(cut.has_value());
            CHECK(cut->role == role_of_step(now[*next]));
            CHECK(cut->piece == now[*next].piece);
        }
        do_step(tablet, now[*next], remainder);
    }
    CHECK(taken == steps(tablet.job).size());
    CHECK(status_of(tablet.job.edges[0], steps(tablet.job), tablet.job.practice) ==
          EdgeStatus::finished);
    // Last cut = remainder + lap + allowance of the corner fitted second, which adds nothing.
    CHECK(tablet.card(TrimRole::main, 5).cut == remainder + inches(6));
    CHECK(!next_cut(tablet.job, tablet.plan));
}

TEST_CASE("a spoiled piece must be cut, hooked and fastened again") {
    const auto procedure = read_procedure(assets_file("procedures/eave.csv"));
    REQUIRE(procedure.ok());
    EaveTablet tablet;
    tablet.keep(JobStarted{"Invented house", "common practice"});
    tablet.keep(EdgeAdded{eave("A", End::gable, End::gable)});
    tablet.keep(ReadingTaken{"A", ReadingOf::edge, feet(9)});
    tablet.keep(ReadingTaken{"A", ReadingOf::edge, feet(9)});
    const auto steps = [&] {
        return steps_of(tablet.job.edges[0], tablet.plan, tablet.job.practice, *procedure,
                        tablet.catalogue);
    };
    const auto next = [&] {
        const auto now = steps();
        const auto index = next_step(now);
        return index ? now[*index].rule->id : std::string("none");
    };
    while (next() != "film") {
        const auto now = steps();
        do_step(tablet, now[*next_step(now)], Length());
    }
    const Card card = tablet.card(TrimRole::main, 1);
    tablet.keep(PieceSpoiled{"A", TrimRole::main, 1, card.cut, {feet(10), {}}},
                {tablet.job.edges[0].cut.back().id});
    CHECK(next() == "cut");
    tablet.cut(TrimRole::main, 1);
    CHECK(next() == "hook");
}
