// What it is made of, by touch, before any job is there.
#include <doctest/doctest.h>

#include <algorithm>
#include <fstream>

#include "engine/words/result.h"
#include "field/store/notices.h"
#include "tests/field/app/layout_walks.h"

using namespace hemline;

TEST_CASE("A text's paragraphs are its lines put together") {
    CHECK(paragraphs_of("one\ntwo\n\nthree\n\n\nfour") ==
          std::vector<std::string>{"one two", "three", "four"});
    CHECK(paragraphs_of("").empty());
}

TEST_CASE("Every part that the programs hold has its license and its notice, two touches away") {
    Journey crew;
    CHECK(assets_read().notices.size() >= 15);
    for (const Notice& notice : assets_read().notices) {
        CAPTURE(notice.part);
        crew.tap("made of");
        REQUIRE(crew.where().screen == Screen::notices);
        const std::string target = "part " + notice.part;
        for (int i = 0; i < 12 && !crew.screen->has_target(target); ++i) {
            crew.screen->drag_from(600, 400, 0, -40);
        }
        crew.tap(target);
        CHECK(shows(crew, notice.license));
        CHECK(shows(crew, notice.version));
        CHECK(shows(crew, paragraphs_of(notice.text).at(0)));
        const bool nowhere = notice.inside.empty() && notice.beside.empty();
        CHECK_FALSE(nowhere);
        crew.tap("parts");
        crew.tap("leave");
        CHECK(crew.where().screen == Screen::jobs);
    }
}

TEST_CASE("A long notice scrolls to its end, and what it is made of is said in Spanish too") {
    Journey crew;
    crew.tap_all({"language", "made of"});
    CHECK(shows(crew, "todavía no ha dado ninguna"));
    crew.screen->drag_from(600, 400, 0, -20);
    crew.tap("part Eigen");
    CHECK(shows(crew, "Adentro: el programa de la tableta"));
    CHECK(shows(crew, "MPL-2.0; BSD-3-Clause"));
    crew.tap("parts");
    for (int i = 0; i < 12 && !crew.screen->has_target("part dlmalloc"); ++i) {
        crew.screen->drag_from(600, 400, 0, -40);
    }
    CHECK(shows(crew, "dominio público"));
    for (int i = 0; i < 40 && !crew.screen->has_target("part Eigen"); ++i) {
        crew.screen->drag_from(600, 400, 0, 40);
    }
    crew.tap("part Eigen");
    const auto notices = assets_read().notices;
    const auto eigen = std::find_if(notices.begin(), notices.end(),
                                    [](const Notice& one) { return one.part == "Eigen"; });
    const std::string last = paragraphs_of(eigen->text).back();
    for (int i = 0; i < 100 && !shows(crew, last); ++i) {
        crew.screen->drag_from(600, 600, 0, -80);
    }
    CHECK(shows(crew, last));
}

TEST_CASE("What it is made of has room for a glove on every tablet, lying and upright") {
    Journey crew;
    Inspection inspection{crew, {{1280, 800}, {800, 1280}, {885, 531}, {531, 885}}, {}};
    crew.tap("made of");
    inspection.look();
    crew.tap("part cereal");
    inspection.look();
    CHECK(inspection.seen.size() == 2);
}

TEST_CASE(
    "A list of parts that is not there, or lacks a column, is a problem that names its file") {
    const TemporaryFolder folder;
    const auto missing = read_notices(folder.path());
    REQUIRE_FALSE(missing.ok());
    CHECK(missing.problem().what.english().find("notices.csv") != std::string::npos);
    std::ofstream(folder.path() / "notices.csv") << "part,version\nx,1\n";
    const auto lacking = read_notices(folder.path());
    REQUIRE_FALSE(lacking.ok());
    CHECK(lacking.problem().what.english().find("license") != std::string::npos);
}
