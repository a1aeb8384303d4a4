// The panels of the roof, from the touch that lays them out to the foreman's tick; seams chosen by
// touch, and what is read of a plane.
#include <doctest/doctest.h>

#include "engine/roof/nearest.h"
#include "field/state/plane_view.h"
#include "tests/field/app/layout_walks.h"

using namespace hemline;

TEST_CASE("A touch lays out the panels of every plane, and they are done to the tick" *
          doctest::test_suite("long")) {
    Journey crew;
    crew.tap("demo");
    CHECK(crew.state().plan.panels.empty());
    crew.tap_all({"add edge", "kind panels"});
    std::size_t planes = 0;
    for (const BodyOnJob& body : crew.state().bodies) {
        planes += body.worked ? body.worked->planes.size() : 0;
    }
    CHECK(crew.state().plan.panels.size() == planes);
    crew.tap("add edge");
    CHECK_FALSE(crew.screen->has_target("kind panels"));
    crew.tap("leave");
    const std::string item = panels_on(crew, "A");
    crew.tap("edge " + item);
    CHECK(crew.where().screen == Screen::panels);
    CHECK(crew.screen->ui().faults().empty());
    crew.tap("steps");
    crew.finish_edge(item);
    CHECK(crew.status(item) == EdgeStatus::finished);
    // What was read of the plane went into its panels: 3 in less than the walk gives.
    const PlannedPanels& panels = crew.state().plan.panels.at(item);
    CHECK(absolute(nearest_nm(panels.layout->plane.top) + inches(3) - panels.expected.left) <
          sixteenths(1));
}

TEST_CASE("Seams that are chosen by touch are laid so, and can be taken back") {
    Journey crew;
    crew.tap_all({"demo", "add edge", "kind panels"});
    for (const auto& [item, panels] : Plan(crew.state().plan).panels) {
        crew.tap_all({"edge " + item, "seams"});
        if (crew.screen->has_target("take 2")) {
            crew.tap("take 2");
            CHECK(crew.where().screen == Screen::panels);
            const PanelLayout& now = *crew.state().plan.panels.at(item).layout;
            CHECK((now.shift != panels.layout->shift || now.one_more));
            crew.tap("seams");
            crew.tap("by itself");
            CHECK(crew.state().plan.panels.at(item).layout->shift == panels.layout->shift);
            return;
        }
        crew.tap_all({"leave", "leave"});
    }
    FAIL("no plane of the demo has two layouts to choose from");
}

TEST_CASE("A pipe added on a plane is measured by its steps and then lies on its drawing") {
    Journey crew;
    crew.tap_all({"demo", "add edge", "kind panels"});
    const std::string item = panels_on(crew, "A");
    crew.tap_all({"edge " + item, "pipe"});
    const std::string pipe = crew.last<EdgePlaced>().edge;
    CHECK(crew.work(pipe).edge.kind == EdgeKind::penetration);
    CHECK(crew.work(pipe).place == crew.work(item).place);
}
