// Three roles on a job: who holds the tablet takes a single touch to change, decides what the roof
// offers and where an edge leads, and is on every event.
#include <doctest/doctest.h>

#include <algorithm>

#include "field/screens/roof/roof_people.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

std::vector<std::string> names_of(const std::vector<Person>& people) {
    std::vector<std::string> names;
    for (const Person& person : people) {
        names.push_back(person.name);
    }
    return names;
}

void hold_as(Journey& crew, const std::string& letters, const std::string& way) {
    crew.tap_all({"by", "way " + way});
    for (const char letter : letters) {
        crew.tap(std::string("letter ") + letter);
    }
    crew.tap("keep name");
}

}  // namespace

TEST_CASE(
    "Who holds the tablet is one touch to change from 8 in on, lying and upright, with the roof's "
    "marks") {
    constexpr float w = 172 * px_per_mm_unknown, h = 108 * px_per_mm_unknown;
    for (const bool upright : {false, true}) {
        Journey crew(upright ? h : w, upright ? w : h);
        crew.tap("demo");
        const int before = crew.touches;
        crew.tap("person Foreman");
        CHECK(crew.touches == before + 1);
        CHECK(crew.state().by == "Foreman");
        CHECK(crew.state().way == Way::tick_off);
    }
}

TEST_CASE("One touch on the roof changes who holds the tablet, and what for") {
    Journey crew;
    crew.tap("demo");
    CHECK(crew.state().way == Way::cut);
    crew.tap("person Foreman");
    CHECK(crew.where().screen == Screen::roof);
    CHECK(crew.state().by == "Foreman");
    CHECK(crew.state().way == Way::tick_off);
    crew.tap("person Apprentice");
    CHECK(crew.state().way == Way::learn);
    crew.tap("person Installer");
    CHECK(crew.state().way == Way::cut);
}

TEST_CASE("Whoever holds the tablet stands on the event, and the job is the same for all three") {
    Journey crew;
    crew.tap("demo");
    const std::size_t edges = crew.state().job.edges.size();
    for (const char* const name : {"Apprentice", "Installer"}) {
        crew.tap("person " + std::string(name));
        crew.tap("edge C");
        crew.key_in(eave_c_length);
        crew.tap("keep");
        CHECK(crew.state().events.back().by == name);
        crew.tap("leave");
    }
    crew.tap("person Foreman");
    CHECK(crew.work("C").readings.size() == 2);
    CHECK(crew.state().job.edges.size() == edges);
}

TEST_CASE("A person says a name and a way once, and is one touch away from then on") {
    Journey crew;
    crew.tap("demo");
    hold_as(crew, "BEN", "tick off");
    CHECK(crew.state().by == "Ben");
    CHECK(crew.state().way == Way::tick_off);
    CHECK(crew.where().screen == Screen::roof);
    hold_as(crew, "ADA", "cut");
    hold_as(crew, "ZOE", "learn");
    crew.tap("person Ben");
    CHECK(crew.state().way == Way::tick_off);
    crew.tap("person Zoe");
    CHECK(crew.state().way == Way::learn);
    CHECK(names_of(people_near(crew.state(), 3)) == std::vector<std::string>{"Ada", "Ben", "Zoe"});
}

TEST_CASE("The holder's own button leads to another name or way") {
    Journey crew;
    crew.tap("demo");
    const std::size_t begun = crew.state().events.size();
    crew.tap("person Installer");
    CHECK(crew.where().screen == Screen::person);
    crew.tap_all({"way learn", "keep name"});
    CHECK(crew.state().by == "Installer");
    CHECK(crew.state().way == Way::learn);
    CHECK(crew.state().events.size() == begun);  // nothing is written
}

TEST_CASE("A tablet that was off starts with who held it last, in the same way") {
    Journey crew;
    crew.tap("demo");
    hold_as(crew, "ADA", "learn");
    crew.start_again();
    CHECK(crew.state().by == "Ada");
    CHECK(crew.state().way == Way::learn);
}

TEST_CASE("Each way has somebody near, and two installers are both near where there is room") {
    State state;
    state.by = "Ada";
    state.people = {{"Cy", Way::cut}, {"Ben", Way::tick_off}, {"Ada", Way::cut}};
    CHECK(names_of(people_near(state, 3)) == std::vector<std::string>{"Ada", "Ben", "Apprentice"});
    CHECK(names_of(people_near(state, 5)) ==
          std::vector<std::string>{"Ada", "Cy", "Ben", "Apprentice"});
    // Nobody's button moves when the other installer takes it.
    state.by = "Cy";
    state.people = {{"Ben", Way::tick_off}, {"Ada", Way::cut}, {"Cy", Way::cut}};
    CHECK(names_of(people_near(state, 5)) ==
          std::vector<std::string>{"Ada", "Cy", "Ben", "Apprentice"});
}

TEST_CASE("Who wrote on this job is near on a tablet that never met them") {
    State state;
    state.by = "Installer";
    state.events = {{{1, 1}, {}, "Dee", {}, JobStarted{}}};
    CHECK(names_of(people_near(state, 5)) ==
          std::vector<std::string>{"Dee", "Installer", "Foreman", "Apprentice"});
}

TEST_CASE(
    "The installer is not sent to what waits for the foreman as long as there is other work") {
    Journey crew;
    crew.tap("demo");
    crew.read_edge("C", eave_c_length, eave_c_length, "5");
    crew.reach_step("C", "tick");
    crew.tap("leave");
    const std::optional<NextWork> next = next_work(crew.state());
    REQUIRE(next);
    CHECK(next->where.edge != "C");
    crew.tap("person Foreman");
    CHECK(next_work(crew.state())->where.edge == "C");
    CHECK(next_work(crew.state())->where.screen == Screen::look);
}
