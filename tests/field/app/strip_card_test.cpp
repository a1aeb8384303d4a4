// The card of a hook strip: from its step and back.
#include <doctest/doctest.h>

#include <set>

#include "tests/field/app/layout_walks.h"

using namespace hemline;

TEST_CASE("the card of a hook strip is a touch from its step, and a touch leads back") {
    Journey crew;
    crew.tap_all({"demo", "person Apprentice"});
    crew.read_edge("C", feet(15), feet(15), "5");
    crew.reach_step("C", "strip_cut");
    if (crew.where().screen == Screen::roof) {
        crew.tap("edge C");
    }
    crew.tap("strip");
    CHECK(crew.where().screen == Screen::strip_card);
    CHECK(crew.screen->crowded() == "");
    CHECK(crew.screen->ui().faults().empty());
    crew.tap("leave");
    CHECK(crew.where().screen == Screen::steps);
    CHECK(crew.step("C").rule->id == "strip_cut");
}

TEST_CASE("each leg of a strip has its dimension, on 10 and on 7 in, whatever the language" *
          doctest::test_suite("long")) {
    for (const bool spanish : {false, true}) {
        Journey crew;
        if (spanish) {
            crew.tap("language");
        }
        std::set<std::string> edges;
        crew.on_screen = [&] {
            if (crew.where().screen != Screen::strip_card) {
                return;
            }
            edges.insert(crew.where().edge);
            for (const Size2 size : {Size2{885, 531}, {531, 885}, {800, 1280}, {1280, 800}}) {
                crew.screen->resize(size.w, size.h);
                crew.screen->frames(2);
                for (const std::string leg : {"leg 0", "leg 1", "leg 2"}) {
                    CHECK_MESSAGE(crew.screen->has_target(leg),
                                  leg << " of " << crew.where().edge << " at " << size.w);
                }
            }
        };
        walk_meets(crew);
        CHECK(edges.size() >= 4);  // hook strip, zee, channel
    }
}
