// What is asked once of a roof, by touch: what is said is not asked again.
#include <doctest/doctest.h>

#include <algorithm>

#include "engine/trim/practice.h"
#include "field/state/gate_view.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

constexpr std::int64_t day_ms = 86'400'000;

/// Through the day's questions, up to the page that follows them.
void answer_gate(Journey& crew) {
    for (int i = 0; i < 50 && crew.where().screen != Screen::gate; ++i) {
        crew.do_next();
    }
    REQUIRE(crew.where().screen == Screen::gate);
    crew.tap_all({"yes anchors", "yes ladder", "yes wires", "yes wind", "yes wet", "yes heat"});
    crew.tap_all({"watcher", "letter B", "send"});
    if (crew.screen->has_target("hospital") && hospital_known(crew.state()).empty()) {
        crew.tap_all({"hospital", "letter E", "send"});
    }
    crew.tap("go up");
}

}  // namespace

TEST_CASE("after the first morning's questions the roof's pinned line and wind are asked, once") {
    Journey crew;
    crew.tap("demo");
    crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
    answer_gate(crew);
    REQUIRE(crew.where().screen == Screen::asked_once);
    crew.tap("fixed_line ridge");
    CHECK(crew.last<RuleSet>() == RuleSet{"fixed_line", "ridge"});
    CHECK_FALSE(crew.screen->has_target("bearing.A N"));  // no wind, no bearing
    crew.tap("wind_from W");
    REQUIRE(crew.screen->has_target("bearing.A E"));
    crew.tap("bearing.A E");
    CHECK_FALSE(asks_of_roof(crew.state()));
    // The rain comes from the left: the lee end, where the first piece lies, is the right one.
    CHECK(crew.work("A").edge.first == Side::right);
    crew.tap("go on");
    CHECK(crew.where().screen == Screen::steps);
    crew.wall_ms += day_ms;
    crew.start_again();
    crew.tap("edge C");
    answer_gate(crew);
    CHECK(crew.where().screen != Screen::asked_once);
}

TEST_CASE("what nobody can say on the first morning is asked on the next") {
    Journey crew;
    crew.tap("demo");
    crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
    answer_gate(crew);
    REQUIRE(crew.where().screen == Screen::asked_once);
    crew.tap("go on");
    CHECK(crew.where().screen == Screen::steps);
    crew.wall_ms += day_ms;
    crew.start_again();
    crew.tap("edge C");
    answer_gate(crew);
    CHECK(crew.where().screen == Screen::asked_once);
}

TEST_CASE("a roof is asked as long as its pinned line, its wind or a bearing is not said") {
    Journey crew;
    crew.tap("demo");
    const auto asks = [&](const char* without) {
        State state = crew.state();
        for (const auto& [key, value] :
             {std::pair("fixed_line", "eave"), {"wind_from", "W"}, {"bearing.A", "E"}}) {
            if (std::string_view(key) != without) {
                state.job.practice = with_rule(state.job.practice, key, value).value();
            }
        }
        return asks_of_roof(state);
    };
    CHECK_FALSE(asks("nothing"));
    for (const char* key : {"fixed_line", "wind_from", "bearing.A"}) {
        CAPTURE(std::string(key));
        CHECK(asks(key));
    }
}

TEST_CASE("what is said on the first morning stands, and only the rest is asked for again") {
    Journey crew;
    crew.tap("demo");
    crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
    answer_gate(crew);
    const auto is_chosen = [&](const std::string& name) {
        const auto& targets = crew.screen->ui().targets();
        return std::any_of(targets.begin(), targets.end(), [&](const Target& target) {
            return target.name == name && target.chosen;
        });
    };
    CHECK_FALSE(is_chosen("fixed_line eave"));
    crew.tap_all({"fixed_line eave", "wind_from SSW"});
    CHECK(is_chosen("fixed_line eave"));
    CHECK(is_chosen("wind_from SSW"));
    const auto goes_on_with = [&](const std::string& words) {
        const auto& targets = crew.screen->ui().targets();
        return std::any_of(targets.begin(), targets.end(), [&](const Target& target) {
            return target.name == "go on" && target.label == words;
        });
    };
    CHECK(goes_on_with("Ask the rest tomorrow"));
    crew.tap("bearing.A N");
    CHECK(goes_on_with("Go on"));
}
