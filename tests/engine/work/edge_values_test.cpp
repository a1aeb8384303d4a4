// The foreman's table of an invented eave. Limits: common practice, no published source.
#include "engine/work/edge_values.h"
#include "engine/plan/make_plan.h"
#include "engine/record/job.h"

#include <doctest/doctest.h>

#include <algorithm>

#include "eave_job.h"
#include "engine/record/event.h"

using namespace hemline_test;

namespace {

struct Tablet {
    Catalogue catalogue = invented_catalogue();
    std::vector<StepRule> procedure;
    std::vector<Event> events;
    Job job;
    Plan plan;

    Tablet() {
        const auto read = read_procedure(assets_file("procedures/eave.csv"));
        REQUIRE(read.ok());
        procedure = *read;
        keep("Ada", EdgeAdded{eave("A", End::gable, End::gable)});
    }
    EventId keep(const std::string& by, const Fact& fact) {
        const EventId id{1, static_cast<std::uint32_t>(events.size()) + 1};
        events.push_back({id, {static_cast<std::int64_t>(events.size()), 0}, by, {}, fact});
        job = replay(events);
        plan = make_plan(job, catalogue);
        return id;
    }
    [[nodiscard]] std::vector<EdgeValue> values() const {
        const EdgeWork& work = job.edges.front();
        return edge_values({job, plan, catalogue, events}, work,
                           steps_of(work, plan, job.practice, procedure, catalogue));
    }
    [[nodiscard]] EdgeValue value_of(const std::string& what) const {
        const auto all = values();
        const auto found = std::find_if(all.begin(), all.end(), [&](const EdgeValue& value) {
            return value.what.english().rfind(what, 0) == 0;
        });
        REQUIRE_MESSAGE(found != all.end(), what);
        return *found;
    }
    void read_twice() {
        keep("Ada", ReadingTaken{"A", ReadingOf::edge, feet(15)});
        keep("Ben", ReadingTaken{"A", ReadingOf::edge, feet(15) + sixteenths(1)});
    }
};

StepDone off_the_string(Length off, const std::string& exception, const std::string& by) {
    return {"A", "string", 0, {AnswerKind::length, off, 0, ""}, exception, by};
}

}  // namespace

TEST_CASE("A length read once, or by readings that disagree, is outside practice") {
    Tablet tablet;
    CHECK(tablet.value_of("Length to work with").outside == "Nobody has read it.");
    tablet.keep("Ada", ReadingTaken{"A", ReadingOf::edge, feet(15)});
    CHECK(tablet.value_of("Length to work with").outside == "It was read only once.");
    tablet.keep("Ada", ReadingTaken{"A", ReadingOf::edge, feet(16)});
    CHECK(tablet.value_of("Length to work with").value == "none agreed");
    CHECK(tablet.value_of("Length to work with").outside.english().find("1 ft") !=
          std::string::npos);
    tablet.keep("Ada", ReadingTaken{"A", ReadingOf::edge, feet(15)});
    CHECK(tablet.value_of("Length to work with").outside.empty());
}

TEST_CASE("Every reading, the pitch and every cut stand with who made them") {
    Tablet tablet;
    tablet.read_twice();
    tablet.keep("Cy", PitchTaken{"A", rise_in_12(5)});
    tablet.keep("Dee", PieceCut{"A", TrimRole::main, 1, feet(8), {feet(10), {}}});
    const auto values = tablet.values();
    CHECK(values[0].by == "Ada");
    CHECK(values[1].by == "Ben");
    CHECK(values[1].value == "15 ft 0 1/16 in");
    const EdgeValue pitch = tablet.value_of("Pitch");
    CHECK(pitch.value == "5/12");
    CHECK(pitch.wanted == "at most 6/12");
    CHECK(pitch.by == "Cy");
    CHECK(pitch.outside.empty());
    CHECK(tablet.value_of("Trim, pieces cut").value == "1 of 2");
    CHECK(tablet.value_of("Trim, pieces cut").wanted.empty());  // no check mark yet
    CHECK(tablet.value_of("Trim, piece 1 cut").by == "Dee");
}

TEST_CASE("A pitch that the trim does not serve is outside practice") {
    Tablet tablet;
    tablet.read_twice();
    tablet.keep("Cy", PitchTaken{"A", rise_in_12(9)});
    CHECK_FALSE(tablet.value_of("Pitch").outside.empty());
}

TEST_CASE("An answer stands beside its limit; an exception names who noted it") {
    Tablet tablet;
    tablet.read_twice();
    tablet.keep("Dee", PieceCut{"A", TrimRole::main, 1, feet(8), {feet(10), {}}});
    tablet.keep("Ada", off_the_string(sixteenths(4), "", ""));
    CHECK(tablet.value_of("Stretch a string").wanted == "at most 1/4 in");
    CHECK(tablet.value_of("Stretch a string").outside.empty());
    tablet.keep("Ada", off_the_string(sixteenths(6), "Too wide.", "Ben"));
    CHECK(tablet.value_of("Stretch a string").outside == "Too wide.");
    CHECK(tablet.value_of("Stretch a string").noted_by == "Ben");
    CHECK(exceptions_on(tablet.job.edges.front()).size() == 1);
}

TEST_CASE("What was seen not as it should be is outside practice in those words") {
    Tablet tablet;
    tablet.read_twice();
    tablet.keep("Ada", StepDone{"A",
                                "tug",
                                0,
                                {AnswerKind::seen, Length(), 0, "not as it should be"},
                                "Fix it and look again. If it must stay so, note it.",
                                "Ben"});
    CHECK(tablet.value_of("Tug the face").outside == "It is not as it should be.");
    CHECK(tablet.value_of("Tug the face").noted_by == "Ben");
}

TEST_CASE("A value that practice accepts no longer is outside it though nobody noted it") {
    Tablet tablet;
    tablet.read_twice();
    tablet.keep("Dee", PieceCut{"A", TrimRole::main, 1, feet(8), {feet(10), {}}});
    tablet.keep("Ada", off_the_string(sixteenths(6), "", ""));
    const EdgeValue value = tablet.value_of("Stretch a string");
    CHECK(value.outside.english().find("3/8 in is over the most, 1/4 in") != std::string::npos);
    CHECK(value.noted_by.empty());
}

TEST_CASE(
    "A reading that was struck is no value, and the pitch is by whoever took the one that counts") {
    Tablet tablet;
    tablet.read_twice();
    tablet.keep("Cy", PitchTaken{"A", rise_in_12(5)});
    const EventId wrong = tablet.keep("Dee", ReadingTaken{"A", ReadingOf::edge, feet(51)});
    tablet.keep("Dee", Struck{wrong, "slip of the finger"});
    tablet.keep("Dee", Struck{tablet.keep("Dee", PitchTaken{"A", rise_in_12(9)}), "not this one"});
    const auto values = tablet.values();
    CHECK(std::count_if(values.begin(), values.end(), [](const EdgeValue& value) {
              return value.what == "Reading of the length";
          }) == 2);
    CHECK(std::none_of(values.begin(), values.end(),
                       [](const EdgeValue& value) { return value.by == "Dee"; }));
    CHECK(tablet.value_of("Pitch").by == "Cy");
}

TEST_CASE("What keeps the plan of the edge from working out is a value, and no other edge's") {
    Tablet tablet;
    tablet.read_twice();
    const auto plan_values = [&] {
        std::vector<Text> outside;
        for (const EdgeValue& value : tablet.values()) {
            if (value.what == "The plan") {
                outside.push_back(value.outside);
            }
        }
        return outside;
    };
    const auto problem = [](const std::string& edge, const std::string& field, Severity severity) {
        return PlanProblem{edge, field, severity, Text("It is so."), Text("Fix it.")};
    };
    tablet.plan.problems = {
        problem("B", "lap", Severity::problem), problem("A", "pitch", Severity::problem),
        problem("A", "lap", Severity::measure_again), problem("A", "pitch2", Severity::note)};
    CHECK(plan_values().empty());
    CHECK(tablet.value_of("Pitch").outside == "It is so.");
    tablet.plan.problems.push_back(problem("A", "lap", Severity::problem));
    CHECK(plan_values() == std::vector<Text>{Text("It is so.")});
}

TEST_CASE("A pitch that nobody took is not shown as within practice") {
    Catalogue catalogue = invented_catalogue();
    Edge edge = eave("B", End::gable, End::gable);
    edge.pitch.reset();
    Job job;
    job.edges.push_back(read_twice(edge, feet(15)));
    const Plan plan = make_plan(job, catalogue);
    int pitches = 0;
    for (const EdgeValue& value : edge_values({job, plan, catalogue, {}}, job.edges.front(), {})) {
        if (value.what == "Pitch") {
            ++pitches;
            CHECK(value.wanted.empty());
        }
    }
    CHECK(pitches == 1);
}

TEST_CASE("The foreman lets a value stand as it is: another value is outside practice again") {
    Tablet tablet;
    tablet.read_twice();
    tablet.keep("Ada", off_the_string(sixteenths(6), "Too far.", "Ada"));
    const std::size_t left = not_accepted(tablet.values()).size();
    CHECK(tablet.value_of("Stretch a string").accepted_by.empty());
    tablet.keep("Ben", ValueAccepted{"A", tablet.value_of("Stretch a string").key});
    CHECK(not_accepted(tablet.values()).size() == left - 1);
    CHECK(tablet.value_of("Stretch a string").accepted_by == "Ben");
    tablet.keep("Ada", off_the_string(sixteenths(8), "Farther.", "Ada"));
    CHECK(not_accepted(tablet.values()).size() == left);
}

TEST_CASE("An edge that is finished with fewer pieces cut than planned does not pass unseen") {
    Tablet tablet;
    tablet.read_twice();
    CHECK(tablet.value_of("Trim, pieces cut").outside.empty());  // under way
    tablet.keep("Ben", EdgeFinished{"A", ""});
    CHECK(tablet.value_of("Trim, pieces cut").outside == "0 pieces are cut, 2 are planned.");
    // 2 screws where the piece asks for more.
    tablet.keep("Dee", PieceCut{"A", TrimRole::main, 1, feet(8), {feet(10), {}}});
    tablet.keep("Ada", StepDone{"A", "fasten", 1, {AnswerKind::count, Length(), 2, ""}, "", ""});
    CHECK(tablet.value_of("Screw piece 1").outside.english().rfind("2 is under the least", 0) == 0);
    const std::vector<EdgeValue> left = not_accepted(tablet.values());
    for (const char* key : {"pieces cut main: 1", "fasten 1: 2"}) {
        CHECK(std::any_of(left.begin(), left.end(),
                          [&](const EdgeValue& value) { return value.key == key; }));
    }
}
