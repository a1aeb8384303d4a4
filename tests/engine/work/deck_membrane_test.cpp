// Deck and membrane have their steps where hands do them: the deck is looked at before the first
// metal, the membrane lies over the eave's flange and under the gable's, before the panels' strip,
// and the foreman is asked for it. Common practice, no published source.
#include <algorithm>

#include "eave_job.h"

using namespace hemline_test;

namespace {

std::vector<StepRule> rules_of(const char* kind) {
    return read_procedure(assets_file("procedures/" + std::string(kind) + ".csv")).value();
}

std::ptrdiff_t place(const std::vector<StepRule>& rules, const std::string& id) {
    const auto found = std::find_if(rules.begin(), rules.end(),
                                    [&](const StepRule& rule) { return rule.id == id; });
    REQUIRE_MESSAGE(found != rules.end(), id);
    return found - rules.begin();
}

std::string action(const std::vector<StepRule>& rules, const std::string& id) {
    return rules[static_cast<std::size_t>(place(rules, id))].action;
}

bool says(const std::string& action, const std::string& words) {
    return action.find(words) != std::string::npos;
}

}  // namespace

TEST_CASE("the deck is looked at before the eave's first metal lies on it") {
    const std::vector<StepRule> eave = rules_of("eave");
    for (const char* metal : {"cleat_set", "hook", "fasten", "membrane"}) {
        CHECK(place(eave, "deck") < place(eave, metal));
    }
    CHECK(says(action(eave, "deck"), "nails are down"));
}

TEST_CASE("the membrane comes after the eave's flange is fastened and before the panels' strip") {
    const std::vector<StepRule> eave = rules_of("eave");
    CHECK(place(eave, "fasten") < place(eave, "membrane"));
    CHECK(place(eave, "membrane") < place(eave, "strip_set"));
    CHECK(says(action(eave, "membrane"), "over the flange"));
    CHECK(says(action(eave, "tick"), "membrane over its flange"));
}

TEST_CASE("the membrane lies under a gable's flange, up the wall and in the valley") {
    CHECK(says(action(rules_of("gable"), "eave_on"), "membrane lies under this flange"));
    CHECK(says(action(rules_of("sidewall"), "foot_on"), "membrane runs up the wall"));
    CHECK(says(action(rules_of("valley"), "eave_on"), "membrane 36 in wide"));
    const std::vector<StepRule> gable = rules_of("gable");
    CHECK(place(gable, "eave_on") < place(gable, "hook"));
}
