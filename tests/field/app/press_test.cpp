// A desk's keyboard beside the touches: arrows through the edges, Ctrl+Z, and readings typed.
#include <doctest/doctest.h>

#include "tests/field/app/journey.h"

using namespace hemline;

TEST_CASE("Arrow keys show the next work on the next edge, and stay at the last one") {
    Journey crew;
    crew.tap("demo");
    const auto& edges = crew.state().job.edges;
    crew.app->press(Key::next_edge);
    CHECK(crew.where().edge == edges[0].edge.id);
    CHECK(crew.where().screen == Screen::reading);
    crew.app->press(Key::next_edge);
    CHECK(crew.where().edge == edges[1].edge.id);
    crew.app->press(Key::previous_edge);
    crew.app->press(Key::previous_edge);
    CHECK(crew.where().edge == edges[0].edge.id);
    for (std::size_t i = 0; i <= edges.size(); ++i) {
        crew.app->press(Key::next_edge);
    }
    CHECK(crew.where().edge == edges.back().edge.id);
}

TEST_CASE("Without a job keys do nothing") {
    Journey crew;
    crew.app->press(Key::next_edge);
    crew.app->press(Key::undo);
    CHECK(crew.where().screen == Screen::jobs);
}

TEST_CASE("Ctrl+Z strikes the newest event, and never what is being keyed in") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(feet(46));
    const std::size_t before = crew.state().events.size();
    crew.app->press(Key::undo);
    CHECK(crew.state().events.size() == before);
    CHECK_FALSE(crew.state().notice.empty());
    crew.screen->frames(2);  // the refusal shows
    crew.tap("keep");
    CHECK(crew.work("A").readings.size() == 1);
    crew.app->press(Key::undo);
    CHECK(crew.work("A").readings[0].struck);
}

namespace {

/// Neither an arrow nor Ctrl+Z goes away from here, or writes.
void check_keys_lose_nothing(Journey& crew) {
    const Where here = crew.where();
    const std::size_t events = crew.state().events.size();
    for (const Key key : {Key::next_edge, Key::previous_edge, Key::undo}) {
        CAPTURE(static_cast<int>(key));
        crew.app->press(key);
        CHECK(crew.where().screen == here.screen);
        CHECK(crew.where().edge == here.edge);
        CHECK(crew.state().events.size() == events);
        CHECK(crew.state().notice.english() == "Keep what is keyed in, or clear it, first.");
    }
    crew.screen->frames(2);  // the refusal shows, and is read
}

}  // namespace

TEST_CASE("A key loses no bend angle that is keyed in") {
    Journey crew;
    reach_section(crew);
    crew.tap_all({"bend 1", "digit 2", "digit 5"});
    check_keys_lose_nothing(crew);
    crew.tap("keep");
    CHECK(crew.last<SectionChosen>().legs[2].bend == -degrees(25));
}

TEST_CASE("A key loses no hem that is chosen, and only a leg, bend or hem touched holds nobody") {
    Journey crew;
    reach_section(crew);
    crew.tap_all({"hem 3", "closed hem"});
    check_keys_lose_nothing(crew);
    crew.tap_all({"drop", "hem 3"});
    crew.app->press(Key::next_edge);
    CHECK(crew.where().screen != Screen::section);
}

TEST_CASE("A key loses no answer about an edge that is added or changed") {
    Journey crew;
    crew.tap_all({"demo", "add edge"});
    crew.tap("kind gable");
    check_keys_lose_nothing(crew);
    crew.tap_all({"before", "change one", "change A"});
    const Where page = crew.where();
    REQUIRE(page.edge == "A");
    crew.app->press(Key::next_edge);  // nothing has been changed yet
    CHECK(crew.where().edge == "B");
    crew.tap_all({"leave", "add edge", "change one", "change C", "ask Panels' seam",
                  "seam mechanically seamed"});
    check_keys_lose_nothing(crew);
    crew.tap("keep edge");
    CHECK(crew.work("C").edge.seam == Seam::mechanical);
}

TEST_CASE("A key loses no tilt that is taken") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(feet(46));
    crew.tap("keep");
    crew.key_in(feet(46));
    crew.tap("keep");
    crew.app->tilt({0, 0});
    crew.screen->frames();
    crew.tap_all({"lay down", "take"});
    check_keys_lose_nothing(crew);
    for (std::size_t i = 0; i < tilt_samples; ++i) {
        crew.app->tilt({27.1, 0});
    }
    crew.screen->frames();
    check_keys_lose_nothing(crew);
    crew.tap("start over");
    crew.app->press(Key::next_edge);
    CHECK(crew.where().edge == "B");
}

TEST_CASE("A key loses no count of sticks and no way that a person is to work") {
    Journey crew;
    crew.tap("demo");
    crew.read_edge("C", feet(15) + inches(8), feet(15) + inches(8), "5");
    crew.reach_card("C", TrimRole::main, 1);
    crew.tap_all({"leave", "sticks", "on hand", "more"});
    check_keys_lose_nothing(crew);
    crew.tap_all({"leave", "leave", "by", "way learn"});
    check_keys_lose_nothing(crew);
}

TEST_CASE("Where nobody has said who holds the tablet, Ctrl+Z asks, and then a key loses nothing") {
    Journey other;
    other.tap_all({"demo", "edge C"});
    other.key_in(feet(15));
    other.tap("keep");
    AppOptions options;
    options.jobs_folder = other.folder.path();
    options.device = 8;
    options.wall_ms = [] { return std::int64_t{1'770'000'000'000}; };
    options.job = other.job();
    other.app.reset();
    App app(assets_read(), options);
    Harness screen([&](Ui& ui) { app.draw(ui); });
    const std::size_t before = app.state().events.size();
    app.press(Key::undo);
    CHECK(app.state().where.screen == Screen::person);
    CHECK(app.state().events.size() == before);
    app.press(Key::next_edge);
    CHECK(app.state().where.screen == Screen::person);
}
