// Lengths past any roof, and records that no crew writes, on the screens.
#include <doctest/doctest.h>

#include <fstream>

#include "engine/record/event_bytes.h"
#include "tests/engine/hostile/hostile_record.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

/// A crew's job with that record beside its journal, opened again.
struct BadRecordJob : Journey {
    explicit BadRecordJob(const HostileEvents& events) {
        tap("demo");
        std::ofstream file(job() / "hostile.journal", std::ios::binary);
        for (const Event& event : events) {
            const Bytes frame = frame_of(event);
            file.write(reinterpret_cast<const char*>(frame.data()),
                       static_cast<std::streamsize>(frame.size()));
        }
        file.close();
        start_again();
    }
};

/// Goes over the screens that list what a job holds, up and down.
void look_round(Journey& crew) {
    constexpr double processor_s_most =
        300;  // under a sanitizer; a square of these takes an hour there
    const double before = processor_s();
    for (const char* const place : {"history", "leave"}) {
        for (int i = 0; i < 3; ++i) {
            crew.screen->drag_from(600, 500, 0, -300);
        }
        crew.tap(place);
    }
    CHECK(processor_s() - before < processor_s_most);
    CHECK(crew.screen->ui().faults().empty());
}

}  // namespace

TEST_CASE("An edge above 300 m is questioned before it counts, and kept when it is kept") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    const std::size_t before = crew.state().events.size();
    crew.key_in(feet(985));  // 300.2 m
    crew.tap("keep");
    CHECK(crew.state().events.size() == before);
    CHECK(shows(crew, "longer than the edge of any roof"));
    crew.tap("keep");
    REQUIRE(crew.state().events.size() == before + 1);
    CHECK(crew.last<ReadingTaken>().length == feet(985));
}

TEST_CASE("An edge of 300 m is not questioned") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    const std::size_t before = crew.state().events.size();
    crew.key_in(feet(984));  // 299.9 m
    crew.tap("keep");
    CHECK(crew.state().events.size() == before + 1);
}

TEST_SUITE_BEGIN("large");

TEST_CASE("A record of five thousand edges is shown to the room there is, and the rest is said") {
    BadRecordJob crew(many_edges(5000));
    CHECK(crew.state().job.edges.size() == edges_most);
    CHECK(shows(crew, "more are left out"));
    look_round(crew);
}

TEST_CASE("An edge of a kilometre is planned and shown: its steps, its sticks, other plans") {
    HostileRecord record;
    record.eave_read("K", millimetres(1'000'000));
    BadRecordJob crew(record.events);
    CHECK(crew.state().plan.runs.front().pieces.size() > 300);
    crew.tap("sticks");
    for (const char* const place : {"choices", "leave", "edge K", "leave"}) {
        CAPTURE(place);
        CHECK(crew.screen->ui().faults().empty());
        crew.tap(place);
    }
}

TEST_CASE("Thirty thousand offcuts are shown") {
    HostileRecord record;
    record.eave_read("K", feet(40));
    for (int i = 0; i < 30'000; ++i) {
        record.add(MetalCounted{"K", TrimRole::main, feet(9) + nanometres(i) * 1000, 1});
    }
    BadRecordJob crew(record.events);
    crew.tap_all({"sticks", "on hand"});
    CHECK(crew.screen->ui().faults().empty());
}

TEST_CASE("Numbers that stand for twenty thousand events each are shown and put away") {
    BadRecordJob crew(copies_of_two_readings(20'000));
    look_round(crew);
    crew.tap("apart");
    CHECK(crew.where().screen == Screen::apart);
    for (std::size_t i = 0; i < crew.state().job.conflicts.size(); ++i) {
        CHECK(crew.screen->ui().faults().empty());
        crew.tap("next apart");
    }
}

TEST_SUITE_END();
