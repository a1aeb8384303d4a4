// Left-handed: keys and the primary action lie under the left thumb. Our choice: the thumb that
// works a tablet is that of the hand which holds it (everything with one thumb, either hand).
#include <doctest/doctest.h>

#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

/// As a share of the page's width, 0 at the left.
float place_of(const Journey& crew, std::string_view target) {
    return crew.screen->target(target).mid_x() / crew.screen->ui().page().w;
}

}  // namespace

TEST_CASE("One touch beside the name moves keys and actions to the other thumb, and is kept") {
    Journey crew;
    crew.tap_all({"by", "tablet", "hand"});
    CHECK(crew.state().hand == Hand::left);
    REQUIRE(crew.scale_kept);
    CHECK(crew.scale_kept->left_hand);
    crew.tap_all({"leave", "demo", "edge A"});
    crew.key_in(feet(31));
    CHECK(place_of(crew, "keep") < 0.4F);
    CHECK(place_of(crew, "leave") > 0.6F);
    crew.tap("field feet");
    CHECK(place_of(crew, "digit 5") < 0.4F);
    CHECK(crew.screen->target("digit 1").x < crew.screen->target("digit 3").x);
    crew.tap("leave");
    crew.tap_all({"by", "tablet", "hand", "leave", "edge A"});
    crew.key_in(feet(31));
    CHECK(place_of(crew, "keep") > 0.6F);
    crew.tap("field feet");
    CHECK(place_of(crew, "digit 5") > 0.6F);
}

TEST_CASE("A tablet that knows the left hand starts with it, upright too") {
    Journey crew(800, 1280);
    crew.tap_all({"by", "tablet", "hand", "leave", "demo"});
    crew.tap("edge A");
    crew.key_in(feet(31));
    crew.tap("keep");
    CHECK(crew.work("A").readings.size() == 1);
    crew.tap("field feet");
    CHECK(crew.screen->target("digit 1").x < crew.screen->ui().mm(12));
}

TEST_CASE(
    "How the tablet is set lies on one screen, two touches from the roof, and says how it is") {
    Journey crew;
    crew.tap_all({"demo", "by", "tablet"});
    const auto says = [&](const std::string& words) {
        const auto& all = crew.screen->ui().targets();
        return std::any_of(all.begin(), all.end(),
                           [&](const Target& one) { return one.chosen && one.label == words; });
    };
    CHECK((says("Right handed") && says("One unit") && says("Day") && says("English")));
    crew.tap_all({"hand now", "units now", "light now"});  // what is lit stays
    CHECK((says("Right handed") && says("One unit") && says("Day")));
    crew.tap_all({"hand", "units", "light"});
    CHECK((says("Left handed") && says("Both units") && says("Night")));
    CHECK(crew.app->light() == Light::night);
    crew.tap("language");
    CHECK(says("Español"));
    REQUIRE(crew.scale_kept);
    CHECK(crew.scale_kept->left_hand);
    CHECK(crew.scale_kept->both_units);
    CHECK(crew.scale_kept->night == true);
    CHECK(crew.scale_kept->language == "es");
    crew.tap("leave");
    CHECK(crew.where().screen == Screen::roof);
}
