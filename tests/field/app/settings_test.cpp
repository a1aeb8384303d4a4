// What a person sets lies on one screen, a touch from the roof, and is kept on the device.
#include <doctest/doctest.h>

#include "tests/field/app/layout_walks.h"

using namespace hemline;

TEST_CASE("From the roof one touch leads to all that a person sets, in either language") {
    for (const bool spanish : {false, true}) {
        Journey crew;
        if (spanish) {
            crew.tap("language");
        }
        crew.tap("demo");
        crew.tap("tablet");
        CHECK(crew.where().screen == Screen::tablet);
        CHECK(shows(crew, spanish ? "Mis ajustes" : "My settings"));
        for (const char* name : {"hand", "units", "light", "language", "screen size"}) {
            CHECK_MESSAGE(crew.screen->has_target(name), std::string(name));
        }
        CHECK(crew.screen->has_target(spanish ? "word valle" : "word endwall"));
        crew.tap("leave");
        CHECK(crew.where().screen == Screen::roof);
    }
}

TEST_CASE(
    "The crew's word is said on every screen, on paper and aloud, and is kept on the device") {
    Journey crew;
    crew.tap_all({"demo", "tablet", "word rake", "leave"});
    CHECK(crew.scale_kept->crew_words == CrewWords{{"en gable", "rake"}});
    crew.tap("add edge");
    const auto& targets = crew.screen->ui().targets();
    CHECK(std::any_of(targets.begin(), targets.end(), [](const Target& one) {
        return one.name == "kind gable" && one.label == "rake";
    }));
    crew.tap("leave");
    CHECK(crew.app->in_words(say("Gable {1}", "G")) == "Rake G");
    crew.kill();
    CHECK(crew.app->in_words(say("Gable {1}", "G")) == "Rake G");
    crew.tap_all({"tablet", "word gable", "leave"});
    CHECK(crew.app->in_words(say("Gable {1}", "G")) == "Gable G");
}

TEST_CASE("A Spanish crew's words leave the English ones as they are") {
    Journey crew;
    crew.tap_all({"language", "demo", "tablet", "word valle", "word hip", "leave"});
    CHECK(crew.app->in_words(say("Valley {1}", "V")) == "Valle V");
    CHECK(crew.app->in_words(say("Tie off before you come near the hip.")) ==
          "Amárrese con su arnés antes de acercarse al hip.");
    crew.tap("language");
    CHECK(crew.app->in_words(say("Valley {1}", "V")) == "Valley V");
}

TEST_CASE("My settings and a roof in other words have room for a glove, from 7 to 10 in" *
          doctest::test_suite("long")) {
    for (const bool spanish : {false, true}) {
        Journey crew;
        if (spanish) {
            crew.tap("language");
        }
        crew.tap("demo");
        Inspection inspection{crew, {{1280, 800}, {800, 1280}, {885, 531}, {531, 885}}, {}};
        crew.on_screen = [&] { inspection.look(); };
        crew.tap("tablet");
        if (spanish) {
            crew.tap_all({"word rake", "word hip", "word valle", "word caballete"});
        } else {
            crew.tap_all({"word rake", "word endwall", "word peak"});
        }
        crew.tap_all({"leave", "edge C", "leave", "rules", "leave", "add edge"});
        CHECK(inspection.seen.size() >= 5);
    }
}

TEST_CASE("All that a person sets is in sight without scrolling, on 7 in and in a low window too") {
    for (const bool spanish : {false, true}) {
        Journey crew;
        if (spanish) {
            crew.tap("language");
        }
        crew.tap_all({"demo", "tablet"});
        for (const Size2 size : {Size2{885, 531}, Size2{531, 885}, Size2{1024, 600}}) {
            crew.screen->resize(size.w, size.h);
            crew.screen->frames(2);
            CAPTURE(size.w);
            const float y = crew.screen->target("hand").y;
            crew.screen->drag_from(size.w / 2, size.h / 2, 0, -20);
            CHECK(crew.screen->target("hand").y == y);  // there is nothing to scroll to
            for (const CrewThing& thing : crew_things) {
                if (thing.language == crew.state().language) {
                    CHECK(crew.screen->has_target("word " + std::string(thing.words[1])));
                }
            }
            CHECK(faults_of(crew.screen->ui()) == "");
        }
    }
}
