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
    CHECK(crew.where().place == Place::reading);
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
    CHECK(crew.where().place == Place::jobs);
}

TEST_CASE("Ctrl+Z strikes the newest event, and never what is being keyed in") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(feet(46));
    const std::size_t before = crew.state().events.size();
    crew.app->press(Key::undo);
    CHECK(crew.state().events.size() == before);
    CHECK_FALSE(crew.state().notice.empty());
    crew.tap("keep");
    CHECK(crew.work("A").readings.size() == 1);
    crew.app->press(Key::undo);
    CHECK(crew.work("A").readings[0].struck);
}
