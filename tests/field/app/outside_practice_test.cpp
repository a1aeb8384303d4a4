// A value outside practice: refused with its reason, and then only noted by name.
#include <doctest/doctest.h>

#include <algorithm>

#include "field/state/told.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

const Length edge_length = feet(15) + inches(8) + sixteenths(8);

/// Edge C read, the tablet in the foreman's hand, and that step before the crew.
struct AtStep : Journey {
    explicit AtStep(std::string_view step) {
        tap_all({"demo", "by", "way cut", "name Foreman"});
        read_edge("C", edge_length, edge_length, "5");
        reach_step("C", step);
        before = state().events.size();
    }
    [[nodiscard]] bool kept() const { return state().events.size() == before + 1; }
    std::size_t before = 0;
};

const StepSaid& done_on(const Journey& crew, std::string_view step) {
    const auto& steps = crew.work("C").steps;
    const auto found = std::find_if(steps.begin(), steps.end(),
                                    [&](const DoneStep& done) { return done.step.step == step; });
    REQUIRE(found != steps.end());
    return found->step;
}

}  // namespace

TEST_CASE("A lap under practice is refused first and then noted by the name of the holder") {
    AtStep crew("slide");
    crew.key_in(inches(5));  // practice: at least 6 in
    crew.tap("answer");
    CHECK_FALSE(crew.kept());
    CHECK(crew.where().screen == Screen::steps);
    crew.tap("answer");
    REQUIRE(crew.kept());
    const StepSaid done = crew.last<StepAnswered>().said();
    CHECK(done.answer.length == inches(5));
    CHECK(done.exception == "5 in is under the least, 6 in. The rule: lap.");
    CHECK(done.exception_by == "Foreman");

    crew.finish_edge("C");
    CHECK(done_on(crew, "slide").exception_by == "Foreman");
    crew.start_again();
    CHECK(done_on(crew, "slide").exception_by == "Foreman");
    CHECK(done_on(crew, "slide").exception == done.exception);
}

TEST_CASE("A refused value that is mended is kept as no exception") {
    AtStep crew("string");
    crew.key_in(sixteenths(6));
    crew.tap("answer");
    crew.tap("sixteenths 4");
    crew.tap("answer");
    REQUIRE(crew.kept());
    CHECK(crew.last<StepAnswered>().said().answer.length == sixteenths(4));
    CHECK(crew.last<StepAnswered>().said().exception.empty());
    CHECK(crew.last<StepAnswered>().said().exception_by.empty());
}

TEST_CASE("A refused value that is changed to another one outside practice is refused again") {
    AtStep crew("string");
    crew.key_in(sixteenths(6));
    crew.tap("answer");
    crew.tap("sixteenths 8");
    crew.tap("answer");
    CHECK_FALSE(crew.kept());
    crew.tap("answer");
    REQUIRE(crew.kept());
    CHECK(crew.last<StepAnswered>().said().answer.length == sixteenths(8));
    CHECK(crew.last<StepAnswered>().said().exception.english().find("1/2 in") != std::string::npos);
}

TEST_CASE("Too few screws are refused, and noted only when asked again") {
    AtStep crew("cleat_fasten");
    const std::int64_t least = crew.step("C").count_least.value_or(0);
    REQUIRE(least > 1);
    crew.key_in(least - 1);
    crew.tap("answer");
    CHECK_FALSE(crew.kept());
    crew.tap("answer");
    REQUIRE(crew.kept());
    CHECK(crew.last<StepAnswered>().said().answer.count == least - 1);
    CHECK(crew.last<StepAnswered>().said().exception.english().find("under the least") !=
          std::string::npos);
    CHECK(crew.last<StepAnswered>().said().exception_by == "Foreman");
}

TEST_CASE("What is not as it should be is looked at again or noted by name") {
    AtStep crew("tug");
    crew.tap_all({"answer wrong", "look again"});
    CHECK_FALSE(crew.kept());
    CHECK(crew.screen->has_target("answer"));
    crew.tap_all({"answer wrong", "answer wrong"});
    REQUIRE(crew.kept());
    CHECK(crew.last<StepAnswered>().finding == Finding::bad);
    CHECK_FALSE(crew.last<StepAnswered>().said().exception.empty());
    CHECK(crew.last<StepAnswered>().said().exception_by == "Foreman");
}

TEST_CASE("A gap of nothing is an answer, and nothing keyed in is none") {
    AtStep crew("string");
    CHECK_FALSE(crew.screen->has_target("answer"));
    crew.tap_all({"field inches", "inches 0"});
    crew.tap("answer");
    REQUIRE(crew.kept());
    CHECK(crew.last<StepAnswered>().said().answer.length == Length());
}

TEST_CASE("What was noted is told in the reader's language and on his marks, and so is an undo") {
    AtStep crew("slide");
    crew.key_in(inches(5));
    crew.tap_all({"answer", "answer"});
    REQUIRE(crew.kept());
    const Event& noted = crew.state().events.back();
    const Phrases& spanish = language_of(*crew.state().assets, "es");
    const Text exception = told(crew.state(), noted.fact);
    CHECK(exception.english().find("5 in is under the least, 6 in.") != std::string::npos);
    CHECK(spanish.of(exception, Marks::millimetre)
              .find("127 mm no llega al mínimo, 152 mm. La regla: ") != std::string::npos);
    const Text undo = told(crew.state(), StruckFor{noted.id, StrikeReason::undone});
    CHECK(spanish.of(undo).find("se deshizo") != std::string::npos);
}

TEST_CASE("Of an edge's values those outside practice come first, all within it are one line") {
    Journey crew;
    crew.tap("demo");
    crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
    crew.reach_step("C", "string");
    crew.key_in(inches(1));
    crew.tap_all({"answer", "answer"});  // over practice, noted
    crew.finish_edge("C");
    crew.tap("edge C");
    const auto values = values_on(crew.state(), crew.work("C"));
    const auto within = std::count_if(values.begin(), values.end(),
                                      [](const EdgeValue& one) { return one.outside.empty(); });
    REQUIRE(within > 3);
    REQUIRE(within < static_cast<std::ptrdiff_t>(values.size()));
    CHECK(shows(crew, "Noted by Installer"));
    CHECK(!shows(crew, "Reading of the length"));
    const Box line = crew.screen->target("within practice");
    for (const Words& one : crew.screen->ui().words()) {
        CHECK((one.warning ? one.box.y < line.y : true));
    }
    crew.tap("within practice");
    CHECK(shows(crew, "Reading of the length"));
    crew.tap("within practice");
    CHECK(!shows(crew, "Reading of the length"));
}
