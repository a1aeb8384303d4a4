#include "field/store/people.h"

#include <doctest/doctest.h>

using namespace hemline;

TEST_CASE("A person is kept as one line and read again, whatever the name") {
    for (const Person& person : {Person{"Ada", Way::cut}, Person{"Ben 2", Way::tick_off},
                                 Person{"cut learn", Way::learn}, Person{"José", Way::learn}}) {
        CHECK(person_of(print_person(person)) == person);
    }
    for (const char* const line :
         {"", "cut", "cut ", "Ada", "left hand", "5.9 px/mm", "cut A\nb"}) {
        CAPTURE(line);
        CHECK_FALSE(person_of(line));
    }
}

TEST_CASE(
    "Who holds the tablet again is remembered once, as the latest, and so are the last eight") {
    std::vector<Person> people;
    for (const char* const name : {"A", "B", "A", "C", "D", "E", "F", "G", "H", "I"}) {
        hold(people, {name, Way::cut});
    }
    REQUIRE(people.size() == people_most);
    CHECK(people.front().name == "A");
    CHECK(people.back().name == "I");
    hold(people, {"A", Way::learn});
    CHECK(people.back() == Person{"A", Way::learn});
    CHECK(way_of(people, "A") == Way::learn);
}

TEST_CASE("Nobody's way is known: the foreman ticks off, the apprentice learns, others cut") {
    CHECK(way_of({}, "Foreman") == Way::tick_off);
    CHECK(way_of({}, "Apprentice") == Way::learn);
    CHECK(way_of({}, "Zoe") == Way::cut);
}
