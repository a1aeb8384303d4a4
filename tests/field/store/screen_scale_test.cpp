#include "field/store/screen_scale.h"
#include "engine/words/result.h"

#include <doctest/doctest.h>

#include <string>

#include "tests/field/store/home.h"

using namespace hemline;

TEST_CASE("A screen nobody measured has no scale, and that is no problem") {
    const Home home;
    const Result<ScreenScale> scale = read_screen_scale();
    REQUIRE(scale.ok());
    CHECK_FALSE(scale->px_per_mm);
    CHECK_FALSE(scale->put_off);
}

TEST_CASE("A scale that is kept is read again, and so is that it was put off") {
    const Home home;
    Disk disk;
    REQUIRE_FALSE(keep_screen_scale(disk, {6.3125F, false, false}));
    CHECK(*read_screen_scale()->px_per_mm == doctest::Approx(6.3125));
    REQUIRE_FALSE(keep_screen_scale(disk, {std::nullopt, true, false}));
    CHECK(read_screen_scale()->put_off);
    CHECK_FALSE(read_screen_scale()->px_per_mm);
}

TEST_CASE("That lengths are said on both tapes is kept") {
    const Home home;
    Disk disk;
    ScreenScale scale;
    scale.both_units = true;
    REQUIRE_FALSE(keep_screen_scale(disk, scale));
    CHECK(read_screen_scale()->both_units);
    scale.both_units = false;
    REQUIRE_FALSE(keep_screen_scale(disk, scale));
    CHECK_FALSE(read_screen_scale()->both_units);
}

TEST_CASE("The left hand is kept beside the scale, and alone") {
    const Home home;
    Disk disk;
    REQUIRE_FALSE(keep_screen_scale(disk, {6.5F, false, true}));
    CHECK(read_screen_scale()->left_hand);
    CHECK(*read_screen_scale()->px_per_mm == doctest::Approx(6.5));
    REQUIRE_FALSE(keep_screen_scale(disk, {std::nullopt, false, true}));
    CHECK(read_screen_scale()->left_hand);
    CHECK_FALSE(read_screen_scale()->put_off);
    REQUIRE_FALSE(keep_screen_scale(disk, {}));
    REQUIRE(read_screen_scale().ok());
    CHECK_FALSE(read_screen_scale()->left_hand);
}

TEST_CASE("Who held the tablet is kept beside the scale, the latest last") {
    const Home home;
    Disk disk;
    const std::vector<Person> people = {{"Ada", Way::cut}, {"Ben", Way::tick_off}};
    REQUIRE_FALSE(keep_screen_scale(disk, {6.5F, false, false, people}));
    CHECK(read_screen_scale()->people == people);
    CHECK(*read_screen_scale()->px_per_mm == doctest::Approx(6.5));
}

TEST_CASE("A file that says no scale from 2 to 40 is a problem with its mend") {
    const Home home;
    for (const char* const text : {"", "5.9", "5.9 px/mm", "5.9 px/mm\n\n", "1.9 px/mm\n",
                                   "41 px/mm\n", "nan px/mm\n", "-5 px/mm\n", "later"}) {
        CAPTURE(text);
        home.write("screen", text);
        const Result<ScreenScale> scale = read_screen_scale();
        REQUIRE_FALSE(scale.ok());
        CHECK(scale.problem().mend.english().find("Screen size") != std::string::npos);
    }
}

TEST_CASE("The words that a crew chose are kept in the file, by language and thing") {
    const Home home;
    Disk disk;
    ScreenScale scale;
    scale.crew_words = {{"en gable", "rake"}, {"es valley", "valle"}};
    REQUIRE_FALSE(keep_screen_scale(disk, scale));
    CHECK(read_screen_scale()->crew_words == scale.crew_words);
    REQUIRE_FALSE(keep_screen_scale(disk, {}));
    CHECK(read_screen_scale()->crew_words.empty());
}

TEST_CASE("Night is kept, and that nobody chose is another thing than day") {
    const Home home;
    Disk disk;
    CHECK_FALSE(read_screen_scale()->night.has_value());
    for (const bool night : {true, false}) {
        ScreenScale scale;
        scale.night = night;
        REQUIRE_FALSE(keep_screen_scale(disk, scale));
        CHECK(read_screen_scale()->night == night);
    }
}

TEST_CASE("The language is kept by its tag, and \"spanish\" of older programs is es") {
    const Home home;
    Disk disk;
    CHECK(read_screen_scale()->language == "en");
    ScreenScale scale;
    scale.language = "x-long";
    REQUIRE_FALSE(keep_screen_scale(disk, scale));
    CHECK(read_screen_scale()->language == "x-long");
    home.write("screen", "5.9 px/mm\nleft hand\nspanish\nboth units\n");
    CHECK(read_screen_scale()->language == "es");
    CHECK(read_screen_scale()->both_units);
    home.write("screen", "5.9 px/mm\nlanguage \n");
    CHECK_FALSE(read_screen_scale().ok());
}
