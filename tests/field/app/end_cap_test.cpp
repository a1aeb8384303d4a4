// The card of an end cap: from its steps and back, lying and upright.
#include <doctest/doctest.h>

#include "tests/field/app/journey.h"

using namespace hemline;

TEST_CASE("the card of an end cap is a touch from each step that cuts or folds it, and back" *
          doctest::test_suite("long")) {
    for (const bool upright : {false, true}) {
        Journey crew(upright ? 800.0F : 1280.0F, upright ? 1280.0F : 800.0F);
        crew.tap_all({"demo", "person Apprentice"});
        crew.tap("edge H2");  // its pitch is said with the roof's
        for (int i = 0; i < 2; ++i) {
            crew.key_in(feet(16));
            crew.tap("keep");
        }
        for (const char* step : {"cap_cut", "cap_clip", "cap_fold"}) {
            CAPTURE(step);
            crew.reach_step("H2", step);
            if (crew.where().screen == Screen::roof) {
                crew.tap("edge H2");
            }
            crew.tap("cap");
            CHECK(crew.where().screen == Screen::end_cap);
            CHECK(crew.screen->crowded() == "");
            CHECK(crew.screen->ui().faults().empty());
            crew.tap("leave");
            CHECK(crew.where().screen == Screen::steps);
            CHECK(crew.step("H2").rule->id == step);
        }
        crew.reach_step("H2", "cap_look");
        if (crew.where().screen == Screen::roof) {
            crew.tap("edge H2");
        }
        CHECK_FALSE(crew.screen->has_target("cap"));
    }
}
