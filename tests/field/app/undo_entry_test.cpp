// Any entry of the record is crossed out by a touch on it, and put back; a check has its own way
// back.
#include <doctest/doctest.h>

#include <algorithm>

#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

template <class Fact>
std::string last_entry_of(const Journey& crew) {
    const auto& events = crew.state().events;
    const auto found = std::find_if(events.rbegin(), events.rend(), [](const Event& event) {
        return std::holds_alternative<Fact>(event.fact);
    });
    REQUIRE(found != events.rend());
    return "entry " + print_event_id(found->id);
}

}  // namespace

TEST_CASE("An entry that is not the last is crossed out by a touch on it, put back, and so again") {
    Journey crew;
    crew.tap_all({"demo", "edge A"});
    crew.key_in(feet(46));
    crew.tap("keep");
    const std::string reading = last_entry_of<ReadingTaken>(crew);
    crew.key_in(feet(46) + sixteenths(1));
    crew.tap_all({"keep", "leave", "history", reading});
    CHECK(shows(crew, "Edge A read: 46 ft"));
    for (int i = 0; i < 2; ++i) {
        crew.tap("undo");
        CHECK(crew.where().screen == Screen::history);
        CHECK(crew.work("A").readings[0].struck);
        CHECK_FALSE(crew.work("A").readings[1].struck);
        crew.tap("undo");  // it is still the one in hand: this puts it back
        CHECK_FALSE(crew.work("A").readings[0].struck);
    }
    crew.tap("let go");
    crew.tap("undo");  // the last
    CHECK(crew.work("A").readings[1].struck);
    crew.tap(last_entry_of<StruckFor>(crew));  // crossing out what crossed out puts back
    crew.tap("undo");
    CHECK_FALSE(crew.work("A").readings[1].struck);
}

TEST_CASE("The entry that began the job is not crossed out") {
    Journey crew;
    crew.tap("demo");
    crew.tap("history");
    const EventId first = crew.state().events.front().id;
    for (int i = 0; i < 60 && !crew.screen->has_target("entry " + print_event_id(first)); ++i) {
        crew.screen->drag_from(600, 500, 0, -60);
    }
    REQUIRE(std::holds_alternative<JobStarted>(crew.state().events.front().fact));
    crew.tap("entry " + print_event_id(first));
    CHECK_FALSE(crew.screen->has_target("undo"));
    CHECK(shows(crew, "The job begins here"));
}

TEST_CASE(
    "A check by mistake is taken back on the edge's own page, by who holds the tablet for it") {
    Journey crew;
    crew.tap("demo");
    crew.read_edge("C", eave_c_length, eave_c_length, "5");
    crew.tap_all({"run", "style balanced", "next"});
    crew.finish_edge("C");
    const std::size_t events = crew.state().events.size();
    crew.tap_all({"by", "way tick off", "name Foreman", "edge C", "untick"});
    CHECK(crew.state().events.size() == events + 1);
    CHECK(crew.status("C") == EdgeStatus::to_tick);
    CHECK(crew.where().screen == Screen::look);
    crew.tap("tick");
    CHECK(crew.status("C") == EdgeStatus::finished);
    crew.tap_all({"by", "way cut", "name Installer"});
    crew.tap("edge C");
    if (crew.screen->has_target("untick")) {
        crew.tap("untick");  // asks for the foreman
        CHECK(crew.status("C") == EdgeStatus::finished);
        CHECK(crew.where().screen == Screen::person);
    }
}
