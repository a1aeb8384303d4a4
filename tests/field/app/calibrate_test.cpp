// The screen is measured once, with what every pocket holds.
#include <doctest/doctest.h>

#include "tests/field/app/journey.h"

using namespace hemline;

TEST_CASE("A new tablet asks for its scale once, and goes on without an answer") {
    Journey crew;
    CHECK(crew.screen->has_target("measure screen"));
    CHECK(crew.screen->has_target("demo"));
    crew.tap("scale later");
    CHECK_FALSE(crew.screen->has_target("measure screen"));
    REQUIRE(crew.scale_kept);
    CHECK(crew.scale_kept->put_off);
    CHECK(crew.state().events.empty());
}

// ISO/IEC 7810, ID-1: a card is 85.60 mm long.
TEST_CASE("A card that is longer than its picture makes the scale larger by as much") {
    Journey crew;
    const float before = crew.app->px_per_mm();
    crew.tap_all({"screen size", "much longer", "much longer", "shorter", "keep scale"});
    const float wanted = before * 1.03F * 1.03F * 0.9975F;
    CHECK(crew.app->px_per_mm() == doctest::Approx(wanted));
    REQUIRE(crew.scale_kept);
    CHECK(*crew.scale_kept->px_per_mm == doctest::Approx(wanted));
    CHECK(crew.where().screen == Screen::jobs);
    CHECK_FALSE(crew.screen->has_target("measure screen"));
}

TEST_CASE("The card's picture is measured in two touches from the roof") {
    Journey crew;
    crew.tap("demo");
    crew.tap_all({"jobs", "screen size"});
    CHECK(crew.where().screen == Screen::calibrate);
}
