// The run on the screen: every piece says how much of the edge it covers, however narrow it is.
#include <doctest/doctest.h>

#include <algorithm>

#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

bool shows_exactly(const Journey& crew, const std::string& words) {
    const auto& shown = crew.screen->ui().words();
    return std::any_of(shown.begin(), shown.end(),
                       [&](const Words& one) { return one.words == words; });
}

/// Whole, or its feet over its inches.
bool shows_length(const Journey& crew, const std::string& words) {
    const std::size_t feet = words.find(" ft ");
    return shows_exactly(crew, words) ||
           (feet != std::string::npos && shows_exactly(crew, words.substr(0, feet + 3)) &&
            shows_exactly(crew, words.substr(feet + 4)));
}

}  // namespace

TEST_CASE(
    "Each of five pieces says its length on a 10 in screen, upright and lying, in either "
    "language") {
    for (const bool spanish : {false, true}) {
        for (const bool upright : {false, true}) {
            Journey crew(upright ? 800 : 1280, upright ? 1280 : 800);
            if (spanish) {
                crew.tap("language");
            }
            crew.tap("demo");
            const Length length = feet(46) + sixteenths(4);
            crew.read_edge("A", length, length, "5");
            crew.tap_all({"run", "style equal"});
            const Run* const run = find_run(crew.state().plan, "A", TrimRole::main);
            REQUIRE(run != nullptr);
            CHECK(run->pieces.size() == 5);
            for (const PlannedPiece& piece : run->pieces) {
                const std::string words = print_length(piece.covers);
                CHECK_MESSAGE(shows_length(crew, words), words);
            }
        }
    }
}

TEST_CASE("Where two styles come to the same pieces one of them is lit, and what is cut is said") {
    Journey crew;
    crew.tap("demo");
    crew.read_edge("A", feet(19), feet(19), "5");
    crew.tap("run");
    const auto& targets = crew.screen->ui().targets();
    CHECK(std::count_if(targets.begin(), targets.end(), [](const Target& one) {
              return one.chosen && one.name.rfind("style ", 0) == 0;
          }) == 1);
    const Run* const run = find_run(crew.state().plan, "A", TrimRole::main);
    REQUIRE(run != nullptr);
    REQUIRE(run->pieces.size() == 2);
    CHECK(std::any_of(
        crew.screen->ui().words().begin(), crew.screen->ui().words().end(), [&](const Words& one) {
            return one.words.find(print_length(run->pieces[1].cut)) != std::string::npos;
        }));
}
