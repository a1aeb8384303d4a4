// The whole invented demo house, every kind of edge, by touches alone: what the roof's screen says
// is next, until the foreman has ticked the last edge.
#include <doctest/doctest.h>

#include <map>

#include "engine/handover/readings_file.h"
#include "engine/work/order.h"
#include "field/store/folders.h"
#include "field/store/job_folder.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

std::map<std::string, EdgeReading> demo_readings() {
    const auto bytes = read_file(*assets_folder() / "demo" / "readings.csv");
    REQUIRE(bytes.ok());
    const auto read =
        read_readings(std::string(bytes->begin(), bytes->end()), assets_read().catalogue);
    std::map<std::string, EdgeReading> rows;
    for (const EdgeReading& row : *std::get_if<std::vector<EdgeReading>>(&read)) {
        rows[row.edge.id] = row;
    }
    return rows;
}

void key_pitch(Journey& crew, Slope pitch) {
    if (pitch.notation == SlopeNotation::degrees) {
        crew.tap("notation degrees");
    }
    std::string digits = std::to_string(pitch.millionths / 1'000'000);
    if (const auto tenths = pitch.millionths / 100'000 % 10; tenths != 0) {
        digits += "." + std::to_string(tenths);
    }
    for (const char letter : digits) {
        crew.tap(letter == '.' ? std::string("point") : std::string("digit ") + letter);
    }
    crew.tap("keep");
}

}  // namespace

TEST_CASE("The demo house of 27 edges goes to its last tick by what the screen says is next" *
          doctest::test_suite("large")) {
    const auto rows = demo_readings();
    REQUIRE(rows.size() == 27);
    Journey crew;
    crew.tap("demo");
    std::vector<int> ticked;
    crew.on_event = [&] {
        if (const auto* done = std::get_if<EdgeFinished>(&crew.state().events.back().fact)) {
            ticked.push_back(turn_of(rows.at(done->edge).edge, crew.state().catalogue));
        }
    };
    for (int i = 0; i < 20'000; ++i) {
        const std::string edge = crew.where().edge;
        if (crew.where().screen == Screen::roof) {
            if (!crew.screen->has_target("next")) {
                break;
            }
            crew.tap("next");
        } else if (crew.where().screen == Screen::reading &&
                   crew.where().reading_of == ReadingOf::edge) {
            crew.key_in(rows.at(edge).length);
            crew.tap("keep");
        } else if (crew.where().screen == Screen::pitch) {
            key_pitch(crew, *rows.at(edge).edge.pitch);
        } else {
            crew.do_next();
        }
    }
    MESSAGE(crew.touches << " touches, " << crew.state().events.size() << " events");
    CHECK(ticked.size() == 27);
    for (const EdgeWork& work : crew.state().job.edges) {
        CHECK_MESSAGE(crew.status(work.edge.id) == EdgeStatus::finished, work.edge.id);
    }
    // In the order of fitting: no eave after a valley, no valley after a ridge.
    for (std::size_t i = 1; i < ticked.size(); ++i) {
        CHECK(ticked[i - 1] <= ticked[i]);
    }
}
