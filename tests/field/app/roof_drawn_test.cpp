// The roof drawn from above: it grows with the readings, opens an edge under a finger, and says
// what keeps it from closing.
#include <doctest/doctest.h>

#include <algorithm>

#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

bool says(Journey& crew, std::string_view words) {
    const auto& all = crew.screen->ui().words();
    return std::any_of(all.begin(), all.end(), [&](const Words& one) {
        return one.words.find(words) != std::string::npos;
    });
}

Journey& demo(Journey& crew) {
    crew.tap("demo");
    return crew;
}

}  // namespace

TEST_CASE("An edge touched in the drawing opens, as its row in the list does") {
    Journey crew;
    demo(crew).tap("roof D");
    CHECK(crew.where().screen == Screen::reading);
    CHECK(crew.where().edge == "D");
}

TEST_CASE("In the drawing an edge's touch is as long as it is drawn, and grows with its reading") {
    Journey crew;
    demo(crew);
    const float before = crew.screen->target("roof A").w;
    crew.read_edge("E", feet(24), feet(24), "5");
    crew.tap("leave");
    crew.read_edge("A", feet(46), feet(46), "5");
    crew.tap("leave");
    CHECK(crew.screen->target("roof A").w > before);
    CHECK(crew.screen->target("roof A").w > crew.screen->target("roof A").h);
    CHECK(says(crew, "46 ft"));
    CHECK(says(crew, "ready to cut"));
}

TEST_CASE("A side read a foot too long is said under the drawing, with what would close it") {
    Journey crew;
    demo(crew);
    const std::vector<std::pair<const char*, Length>> lengths = {
        {"A", feet(46) + sixteenths(4)},
        {"B", feet(39) + inches(11)},
        {"C", feet(15) + inches(8) + sixteenths(8)},
        {"D", feet(25) + inches(8) + sixteenths(4)},
        {"E", feet(25) + inches(2) + sixteenths(8)}};
    for (const auto& [edge, length] : lengths) {
        CHECK(says(crew, "What is read agrees"));
        crew.read_edge(edge, length, length, "5");
        crew.tap("leave");
    }
    // The gable end that no row lists runs along A: it cannot take up a foot of E.
    CHECK(says(crew, "fails to close by 1 ft"));
    CHECK(says(crew, "E: 24 ft 2 1/2 in, not 25 ft 2 1/2 in (misread foot)"));
}
