// The apprentice's way: every cut and reading by way of its step, with pictures of this piece, why
// it matters, what goes wrong, and the value to answer with; at the exact step after a flat
// battery.
#include <doctest/doctest.h>

#include <set>

#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

/// The same, with the words scrolled under the thumb.
bool reads(Journey& crew, std::string_view words) {
    const Box page = crew.screen->ui().page();
    for (const float dy : {0.0F, -30.0F, -30.0F, 90.0F}) {
        if (shows(crew, words)) {
            return true;
        }
        crew.screen->drag_from(page.w * 0.25F, page.h * 0.6F, 0, dy);
    }
    return shows(crew, words);
}

/// Edge C read by the apprentice, before its first step.
struct Learner : Journey {
    explicit Learner(float w = 1280, float h = 800) : Journey(w, h) {
        tap_all({"demo", "person Apprentice"});
        read_edge("C", eave_c_length, eave_c_length, "5");
    }
};

}  // namespace

TEST_CASE(
    "The apprentice comes to the cut by its step, sees it in three pictures, and to the next" *
    doctest::test_suite("long")) {
    Learner crew;
    CHECK(crew.where().screen == Screen::gate);
    crew.reach_step("C", "cut", 1);
    CHECK(crew.where().screen == Screen::steps);
    for (const char* const words :
         {"Before", "During", "Done", "The metal, 10 ft long.", "The tab of 1 in is still flat.",
          "The tab is folded 90°.", "Why: ", "What goes wrong: "}) {
        CHECK_MESSAGE(shows(crew, words), words);
    }
    crew.tap("to card");
    CHECK(crew.where().screen == Screen::card);
    crew.tap("cut");
    CHECK(crew.where().screen == Screen::steps);
    CHECK(crew.step("C").rule->id == "hook");
    CHECK(shows(crew, "tug it: it holds"));
}

TEST_CASE(
    "Every step of an eave says why and what goes wrong, and the same job is fitted in the end" *
    doctest::test_suite("long")) {
    Learner crew;
    std::set<std::string> pictured;
    for (int i = 0; i < 200 && crew.step("C").rule->asks != Asks::tick; ++i) {
        if (crew.where().screen == Screen::steps) {
            const StepRule& rule = *crew.step("C").rule;
            CHECK_MESSAGE(reads(crew, rule.why), rule.id);
            CHECK_MESSAGE(reads(crew, rule.wrong), rule.id);
            if (reads(crew, "During")) {
                pictured.insert(rule.id);
            }
        }
        crew.do_next();
    }
    for (const char* const id : {"cut", "seal", "slide", "ends", "corner_in_bench"}) {
        CHECK_MESSAGE(pictured.count(id) == 1, id);
    }
    CHECK(crew.state().events.back().by == "Apprentice");
    crew.tap_all({"leave", "person Foreman", "edge C", "tick"});
    CHECK(crew.status("C") == EdgeStatus::finished);
}

TEST_CASE("The apprentice sees the whole step, and its keys when he has found the value" *
          doctest::test_suite("long")) {
    for (const bool types : {false, true}) {
        Learner crew;
        crew.reach_step("C", "slide", 2);
        CHECK(shows(crew, "What goes wrong: "));
        CHECK_FALSE(crew.screen->has_target("field inches"));
        if (types) {
            crew.screen->type("6");
        } else {
            crew.tap("key in");
        }
        CHECK((types ? shows(crew, "Enter reads it") : crew.screen->has_target("field inches")));
        crew.start_again();
        crew.tap_all({"edge C", "key in"});
    }
}

TEST_CASE("After a flat battery the apprentice opens at the exact step, still learning" *
          doctest::test_suite("long")) {
    Learner crew;
    crew.reach_step("C", "cut", 1);
    for (int i = 0; i < 6; ++i) {
        const Step before = crew.step("C");
        crew.start_again();
        CHECK(crew.state().way == Way::learn);
        crew.tap("edge C");
        CHECK(crew.where().screen == Screen::steps);
        CHECK(shows(crew, before.action.english()));
        do {
            crew.do_next();
        } while (crew.where().screen != Screen::steps);
    }
}

TEST_CASE("The installer's steps are as short as before: no pictures of folds" *
          doctest::test_suite("long")) {
    Learner crew;
    crew.reach_step("C", "cut", 1);
    crew.tap_all({"leave", "person Installer", "edge C"});
    CHECK(crew.where().screen == Screen::card);
    crew.tap("cut");
    crew.reach_step("C", "slide", 2);
    CHECK_FALSE(shows(crew, "During"));
}
