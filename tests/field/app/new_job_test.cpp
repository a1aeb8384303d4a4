// A new roof: its name by letters, an eave with its ends, and on to the first card.
#include <doctest/doctest.h>

#include "tests/field/app/journey.h"

using namespace hemline;

TEST_CASE("A new job is named by letters, gets an eave, and reaches its first card") {
    Journey crew;
    crew.tap("new job");
    CHECK_FALSE(crew.screen->has_target("keep name"));
    crew.tap_all({"letter B", "letter A", "letter R", "letter N", "letter space", "letter 2"});
    crew.tap("keep name");
    CHECK(crew.state().job.name == "Barn 2");
    REQUIRE(crew.where().screen == Screen::add_edge);
    const int to_name = crew.touches;

    crew.tap_all({"kind eave", "left end gable", "right end outside corner"});
    crew.tap_all({"ask Fitted first", "fitted first from the right", "keep edge"});
    const Edge& edge = crew.work("A").edge;
    CHECK(edge.left == End::gable);
    CHECK(edge.right == End::corner_out);
    CHECK(edge.first == Side::right);
    CHECK_FALSE(edge.wrap);
    REQUIRE(crew.where().screen == Screen::reading);
    const int to_edge = crew.touches;

    const Length length = feet(31) + inches(7) + sixteenths(10);
    crew.key_in(length);
    CHECK(crew.touches - to_edge <= 8);  // 31 ft 7 5/8 in by at most eight touches
    crew.tap("keep");
    crew.key_in(length);
    crew.tap_all({"keep", "digit 6", "keep"});
    const int to_steps = crew.touches;
    CHECK(crew.where().screen == Screen::card);  // the cleat is cut before it is set
    while (crew.where().screen != Screen::card) {
        crew.do_next();
    }
    CHECK(crew.where().role == TrimRole::cleat);
    CHECK(crew.screen->has_target("cut"));
    MESSAGE("a new job to its first card: "
            << crew.touches << " touches (" << to_name << " to its name, " << to_edge - to_name
            << " to its eave, " << to_steps - to_edge << " to read it)");

    crew.reach_card("A", TrimRole::main, 1);
    // By hand, T = 31 ft 7 5/8 in + 1 in + 1 in: ⌈(381 5/8 − 6)/114⌉ = 4 pieces, the ends of
    // (379 5/8 − 2 · 114)/2 = 75 13/16 in, and the first with its lap and its corner's tab.
    const auto card = card_in_hand(crew.state(), crew.where());
    REQUIRE(card.ok());
    CHECK(card->pieces == 4);
    CHECK(card->covers == inches(75) + sixteenths(13));
    CHECK(card->cut == inches(82) + sixteenths(13));
    CHECK(card->hand == Side::right);
}

TEST_CASE("A second eave is given the next letter, and the list shows both") {
    Journey crew;
    crew.tap_all({"new job", "letter X", "keep name"});
    crew.tap_all(
        {"kind eave", "left end open end", "right end open end", "keep edge", "leave", "add edge"});
    crew.tap_all({"kind eave", "left end open end", "right end open end", "ask Fascia wrap",
                  "fascia wrap with a wrap"});
    crew.tap_all({"keep edge", "leave"});
    CHECK(crew.state().job.edges.size() == 2);
    CHECK(crew.work("B").edge.wrap);
    CHECK_FALSE(crew.work("A").edge.wrap);
    CHECK(crew.screen->has_target("edge A"));
    CHECK(crew.screen->has_target("edge B"));
}

TEST_CASE("A job that is open can be left for the list and opened again") {
    Journey crew;
    crew.tap_all({"demo", "jobs"});
    CHECK(crew.where().screen == Screen::jobs);
    crew.tap("job " + crew.job().filename().string());
    CHECK_MESSAGE(crew.state().notice.empty(), crew.state().notice);
    CHECK(crew.where().screen == Screen::roof);
    crew.tap_all({"edge A", "digit 9", "keep"});
    CHECK(crew.work("A").readings.size() == 1);
}

TEST_CASE("Whoever takes the tablet is named on what is kept from then on") {
    Journey crew;
    crew.tap_all({"demo", "by", "letter A", "letter D", "letter A", "keep name"});
    CHECK(crew.state().by == "Ada");
    CHECK(crew.where().screen == Screen::roof);
    crew.tap_all({"edge A", "digit 9", "keep"});
    CHECK(crew.state().events.back().by == "Ada");
    CHECK(crew.state().events.front().by == "Installer");
    crew.start_again();
    CHECK(crew.state().by == "Ada");
}
