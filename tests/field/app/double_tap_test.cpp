// A warning is not passed by the second tap of two, and yellow is danger and nothing else.
#include <doctest/doctest.h>
#include <imgui.h>

#include "tests/field/app/journey.h"
#include "tests/field/picture.h"

using namespace hemline;

namespace {

/// A finger that comes back after so many seconds.
void tap_and_wait(Journey& crew, std::string_view name, double seconds) {
    const Box box = crew.screen->target(name);
    crew.screen->push({TouchKind::down, 0, box.mid_x(), box.mid_y()});
    crew.screen->touch({TouchKind::up, 0, box.mid_x(), box.mid_y()});
    crew.screen->frames(1, seconds);
}

/// Pixels of the palette's warning color, or nearly so.
long yellow_pixels(Journey& crew) {
    crew.screen->frames(2);
    const Picture picture = paint(*ImGui::GetDrawData(), crew.app->palette().paper);
    const Colour warn = crew.app->palette().warn;
    long found = 0;
    for (std::size_t i = 0; i + 2 < picture.rgb.size(); i += 3) {
        bool same = true;
        for (std::size_t channel = 0; channel < 3; ++channel) {
            const int wanted = static_cast<int>(warn >> (8 * channel) & 0xFFU);
            same = same && std::abs(picture.rgb[i + channel] - wanted) < 6;
        }
        found += same ? 1 : 0;
    }
    return found;
}

}  // namespace

TEST_CASE("The second tap of two does not pass the question that the first one raised") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(feet(46));
    crew.tap("keep");
    crew.key_in(feet(45));  // a foot off: its pair is doubted
    for (const double apart : {0.05, 0.1, 0.3}) {
        CAPTURE(apart);
        tap_and_wait(crew, "keep", apart);
        CHECK(crew.work("A").readings.size() == 1);
    }
    CHECK(shows(crew, "Keep it all the same") == shows(crew, "Keep it all the same"));
    crew.screen->frames(1, 1);
    tap_and_wait(crew, "keep", 0.1);
    CHECK(crew.work("A").readings.size() == 2);
}

TEST_CASE("Enter does not pass the question either, until it can have been read") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(feet(46));
    crew.tap("keep");
    crew.key_in(feet(45));
    for (int i = 0; i < 2; ++i) {
        crew.screen->ui().keyboard().type("\n");
        crew.screen->frames(3, 0.06);
    }
    CHECK(crew.work("A").readings.size() == 1);
    crew.screen->frames(1, 1);
    crew.screen->press(Key::enter);
    CHECK(crew.work("A").readings.size() == 2);
}

TEST_CASE("A press that began while the button waited does not count when it ends later") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(feet(46));
    crew.tap("keep");
    crew.key_in(feet(45));
    tap_and_wait(crew, "keep", 0.1);
    crew.screen->press("keep");
    crew.screen->frames(1, 1);
    crew.screen->lift();
    CHECK(crew.work("A").readings.size() == 1);
}

TEST_CASE("News, doubts and refusals are not yellow; a caution is" * doctest::test_suite("long")) {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(feet(46));
    crew.tap("keep");
    crew.key_in(feet(45));
    crew.tap("keep");
    CHECK(shows(crew, "46 ft"));
    CHECK(yellow_pixels(crew) == 0);
    crew.app->press(Key::undo);  // refused: something is keyed in
    CHECK_FALSE(crew.state().notice.empty());
    CHECK(yellow_pixels(crew) == 0);
    crew.tap_all({"leave"});
    CHECK(yellow_pixels(crew) == 0);
    crew.read_edge("C", eave_c_length, eave_c_length, "5");
    crew.tap_all({"leave", "by", "way learn", "name Installer", "edge C"});
    long yellow = 0;
    for (int i = 0; i < 30 && yellow == 0; ++i) {
        crew.do_next();
        yellow = crew.where().screen == Screen::steps ? yellow_pixels(crew) : 0;
    }
    CHECK(yellow > 1000);
}
