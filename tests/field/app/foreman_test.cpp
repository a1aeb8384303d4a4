// The foreman's way: the roof at a glance, an edge's values against practice, the tick, sending
// back, and the day sheet.
#include <doctest/doctest.h>

#include "field/screens/roof/roof_rows.h"
#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

/// Edge C fitted by the installer, with a face off the string over practice, which he noted.
struct Fitted : Journey {
    Fitted() {
        tap("demo");
        read_edge("C", eave_c_length, eave_c_length, "5");
        reach_step("C", "string");
        key_in(sixteenths(6));
        tap_all({"answer", "answer"});
        reach_step("C", "tick");
        tap_all({"leave", "person Foreman"});
    }
};

constexpr const char* accept = "accept string 0: 3/8 in";

}  // namespace

TEST_CASE(
    "The roof tells the foreman at a glance what is finished, who did it, and what is noted") {
    Fitted crew;
    CHECK(glance_words(crew.state()) == "0 of 27 edges finished, 1 to check off, 1 exception.");
    CHECK(shows(crew, "Eave C waits for you to check it off"));
    CHECK(shows(crew, "! 1 exception, noted by Installer"));
    crew.tap_all({"next", accept, "tick"});
    CHECK(crew.last<EdgeFinished>().edge == "C");
    CHECK(crew.state().events.back().by == "Foreman");
    CHECK(crew.where().screen == Screen::roof);
    CHECK(glance_words(crew.state()) == "1 of 27 edges finished, 0 to check off, 1 exception.");
}

TEST_CASE("An edge is not ticked off before each exception has had a touch of its own") {
    Fitted crew;
    crew.touches = 0;
    crew.tap("edge C");
    CHECK(crew.where().screen == Screen::look);
    CHECK(shows(crew, "It waits for you to check it off"));
    CHECK(shows(crew, "3/8 in is over the most, 1/4 in"));
    CHECK(shows(crew, "Noted by Installer"));
    CHECK(crew.screen->has_target("within practice"));
    CHECK_FALSE(crew.screen->has_target("tick"));
    crew.tap(accept);
    CHECK(crew.last<ValueAccepted>() == ValueAccepted{"C", "string 0: 3/8 in"});
    CHECK(crew.state().events.back().by == "Foreman");
    CHECK(crew.where().screen == Screen::look);
    CHECK(shows(crew, "Foreman let it stand."));
    CHECK_FALSE(crew.screen->has_target(accept));
    crew.tap("tick");
    CHECK(crew.touches == 3);
    CHECK(crew.status("C") == EdgeStatus::finished);
}

TEST_CASE("An edge that is not ready says what it waits for, and cannot be ticked") {
    Fitted crew;
    crew.tap("edge A");
    CHECK(crew.where().screen == Screen::look);
    CHECK(shows(crew, "Not ready to check off. "));
    CHECK(shows(crew, "Nobody has read it."));
    CHECK_FALSE(crew.screen->has_target("tick"));
    CHECK_FALSE(crew.screen->has_target("send back"));
    crew.tap("work");
    CHECK(crew.where().screen == Screen::reading);
}

TEST_CASE("What the foreman sends back is the installer's next step, and his again when mended") {
    Fitted crew;
    crew.tap_all({"edge C", accept, "send back", "leave"});
    CHECK(crew.where().screen == Screen::look);
    crew.tap_all({"send back", "reason bead missing", "person Installer", "edge C"});
    CHECK(crew.step("C").action == "Fix: bead missing");
    crew.tap_all({"answer", "leave", "person Foreman", "edge C"});
    CHECK(shows(crew, "It waits for you to check it off"));
    // What he let stand before he sent it back is looked at anew.
    CHECK_FALSE(crew.screen->has_target("tick"));
    crew.tap_all({accept, "tick"});
    CHECK(crew.status("C") == EdgeStatus::finished);
    crew.tap("edge C");
    CHECK(shows(crew, "Finished, checked off by Foreman"));
}

TEST_CASE("With nothing to tick the foreman's next is the day sheet, of the last day of work") {
    REQUIRE(::setenv("TZ", "UTC", 1) == 0);
    Fitted crew;
    crew.tap_all({"edge C", accept, "tick"});
    crew.wall_ms += 24 * 3'600'000;  // the next morning
    crew.tap_all({"person Installer", "edge A"});
    crew.key_in(feet(31));
    crew.tap_all({"keep", "leave", "person Foreman"});
    CHECK(shows(crew, "No edge waits for you to check it off"));
    crew.tap("next");
    CHECK(crew.where().screen == Screen::day);
    CHECK(shows(crew, "Installer: 1 reading."));
    CHECK_FALSE(crew.screen->has_target("day after"));
    crew.tap("day before");
    CHECK(shows(crew, "Foreman: 1 edge finished."));
    CHECK(shows(crew, "Outside practice, noted by name"));
    CHECK_FALSE(crew.screen->has_target("day before"));
    crew.tap_all({"day after", "leave", "day", "leave"});
    CHECK(crew.where().screen == Screen::roof);
}

TEST_CASE(
    "The record tells what is outside practice whole, on 7 in too, and says what is the latest "
    "first") {
    Fitted crew;
    crew.tap("history");
    crew.screen->resize(531, 885);
    crew.screen->frames(2);
    CHECK(shows(crew, "All else, the latest first"));
    CHECK_FALSE(shows(crew, "Record · the latest first"));
    std::string said;
    for (const Words& words : crew.screen->ui().words()) {
        said += words.words + " ";
    }
    const std::size_t from = said.find("Outside practice, noted by name");
    const std::size_t to = said.find("All else, the latest first");
    REQUIRE(from < to);
    CHECK(said.substr(from, to - from).find("accepted by") != std::string::npos);
    CHECK(said.substr(from, to - from).find("…") == std::string::npos);
}
