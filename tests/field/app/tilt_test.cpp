// The pitch by the tablet's sensor, from the pitch screen and back, windowless.
#include <doctest/doctest.h>

#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

void lie(App& app, double beta) {
    for (std::size_t i = 0; i < tilt_samples; ++i) {
        app.tilt({beta, 0});
    }
}

void reach_pitch(Journey& crew) {
    crew.tap_all({"demo", "edge A"});
    crew.key_in(feet(46));
    crew.tap("keep");
    crew.key_in(feet(46));
    crew.tap("keep");
    REQUIRE(crew.where().screen == Screen::pitch);
}

}  // namespace

TEST_CASE("Without a sensor nothing offers to lay the tablet down") {
    Journey crew;
    reach_pitch(crew);
    CHECK_FALSE(crew.screen->has_target("lay down"));
}

TEST_CASE("Laid down and turned, the tablet gives the pitch, and it is kept as degrees") {
    Journey crew;
    reach_pitch(crew);
    crew.app->tilt({0, 0});
    crew.screen->frames();
    crew.tap_all({"lay down", "take"});
    lie(*crew.app, 27.1);
    crew.screen->frames();
    CHECK_FALSE(crew.app->reads_tilt());
    crew.tap("take");
    lie(*crew.app, -25.1);
    crew.screen->frames();
    crew.tap("keep");
    REQUIRE(crew.work("A").edge.pitch.has_value());
    CHECK(*crew.work("A").edge.pitch == Slope{SlopeNotation::degrees, 26'100'000});
}

TEST_CASE("A tablet that was not turned is told so, and may start over or key it in") {
    Journey crew;
    reach_pitch(crew);
    crew.app->tilt({0, 0});
    crew.screen->frames();
    crew.tap_all({"lay down", "take"});
    lie(*crew.app, 27.1);
    crew.screen->frames();
    crew.tap("take");
    lie(*crew.app, 27.1);
    crew.screen->frames();
    CHECK_FALSE(crew.screen->has_target("keep"));
    crew.tap("start over");
    CHECK(crew.screen->has_target("take"));
    crew.tap("leave");
    CHECK(crew.where().screen == Screen::pitch);
}
