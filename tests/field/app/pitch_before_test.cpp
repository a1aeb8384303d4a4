// What the program knows is a touch away: the pitch before, the next edge, the count asked for.
#include <doctest/doctest.h>

#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

/// To the pitch of edge C of the demo, in that language.
void reach_pitch(Journey& crew, bool spanish) {
    if (spanish) {
        crew.tap("language");
    }
    crew.tap_all({"demo", "edge C"});
    for (int i = 0; i < 2; ++i) {
        crew.key_in(eave_c_length);
        crew.tap("keep");
    }
    REQUIRE(crew.where().screen == Screen::pitch);
}

const Target& target_of(const Journey& crew, std::string_view name) {
    const auto& targets = crew.screen->ui().targets();
    return *std::find_if(targets.begin(), targets.end(),
                         [&](const Target& one) { return one.name == name; });
}

}  // namespace

TEST_CASE("The pitch read last on the job is offered as one touch, and kept as it was read") {
    for (const bool spanish : {false, true}) {
        Journey crew;
        crew.tap_all({"demo"});
        crew.read_edge("C", eave_c_length, eave_c_length, "5.5");
        crew.tap_all({"leave", "edge A"});
        if (spanish) {
            crew.tap_all({"leave", "language", "edge A"});
        }
        for (int i = 0; i < 2; ++i) {
            crew.key_in(eave_a_length);
            crew.tap("keep");
        }
        REQUIRE(crew.where().screen == Screen::pitch);
        CHECK(target_of(crew, "as before").label ==
              (spanish ? "Como antes: 5.5/12" : "As before: 5.5/12"));
        crew.tap_all({"as before", "keep"});
        CHECK(crew.last<PitchTaken>() == PitchTaken{"A", {SlopeNotation::rise_in_12, 5'500'000}});
    }
}

TEST_CASE("A pitch in degrees is offered in degrees, and one that was crossed out is not offered") {
    Journey crew;
    reach_pitch(crew, false);
    crew.tap_all({"notation degrees", "digit 3", "digit 1", "keep", "leave"});
    crew.read_edge("A", eave_a_length, eave_a_length, "7");
    crew.tap_all({"leave", "history", "undo", "leave", "edge B"});
    for (int i = 0; i < 2; ++i) {
        crew.key_in(feet(39));
        crew.tap("keep");
    }
    REQUIRE(crew.where().screen == Screen::pitch);
    CHECK(target_of(crew, "as before").label == "As before: 31 deg");
    crew.tap("as before");
    CHECK(shows(crew, "31 degrees"));
    crew.tap("keep");
    CHECK(crew.last<PitchTaken>() == PitchTaken{"B", {SlopeNotation::degrees, 31'000'000}});
}

TEST_CASE("After a pitch the black button goes to the next edge that nobody has read") {
    for (const bool spanish : {false, true}) {
        Journey crew;
        reach_pitch(crew, spanish);
        crew.tap("digit 5");
        const std::string next = target_of(crew, "keep next").label;
        CHECK(next.rfind(spanish ? "Guardar · sigue: " : "Keep · next edge: ", 0) == 0);
        const Box black = target_of(crew, "keep next").box, other = target_of(crew, "keep").box;
        CHECK(black.bottom() >= other.bottom());
        CHECK(black.right() > other.x);
        crew.tap("keep next");
        CHECK(crew.last<PitchTaken>().edge == "C");
        CHECK(crew.where().screen == Screen::reading);
        CHECK(crew.where().edge == "D");  // the next unread one on the way round
        CHECK(crew.status(crew.where().edge) == EdgeStatus::no_reading);
    }
}

TEST_CASE("The last edge to be read has no next one: its pitch is kept, and its work goes on") {
    Journey crew;
    crew.tap_all({"new job", "letter A", "keep name"});
    crew.tap_all({"kind eave", "left end open end", "right end open end", "keep edge"});
    for (int i = 0; i < 2; ++i) {
        crew.key_in(feet(12));
        crew.tap("keep");
    }
    REQUIRE(crew.where().screen == Screen::pitch);
    CHECK_FALSE(crew.screen->has_target("keep next"));
    CHECK_FALSE(crew.screen->has_target("as before"));
    crew.tap_all({"digit 4", "keep"});
    CHECK(crew.last<PitchTaken>() == PitchTaken{"A", rise_in_12(4)});
    CHECK(crew.where().edge == "A");
}

TEST_CASE("Who has counted answers the count that is asked for with a touch, and may key another") {
    for (const bool spanish : {false, true}) {
        Journey crew;
        if (spanish) {
            crew.tap("language");
        }
        crew.tap_all({"demo", "person Apprentice"});
        crew.read_edge("A", eave_a_length, eave_a_length, "5");
        crew.reach_step("A", "wrap_fasten", 1);
        crew.tap("key in");
        const std::int64_t asked = *crew.step("A").count_least;
        CHECK(target_of(crew, "as asked").label ==
              (spanish ? "Lo pedido: " : "As asked: ") + std::to_string(asked));
        crew.tap_all({"as asked", "answer"});
        CHECK(crew.last<StepAnswered>().count == asked);
    }
}
