// Names as people here write them: digits in a row, Ñ and accents, each letter taken back whole.
#include <doctest/doctest.h>

#include "tests/field/app/journey.h"

using namespace hemline;

namespace {

std::string keyed(const std::vector<std::string>& keys) {
    Journey crew;
    crew.tap_all({"demo", "by"});
    for (const std::string& key : keys) {
        crew.tap("letter " + key);
    }
    crew.tap("keep name");
    return crew.state().by;
}

}  // namespace

TEST_CASE("Names with Ñ and accents are keyed by touch, capitals where a word starts") {
    CHECK(keyed({"Ñ", "A", "Ñ", "O"}) == "Ñaño");
    CHECK(keyed({"J", "O", "S", "E", "´"}) == "José");
    CHECK(keyed({"A", "´", "N", "G", "E", "L", "space", "I", "´"}) == "Ángel Í");
    CHECK(keyed({"G", "U", "´", "´", "E", "M", "E", "S"}) == "Güemes");
}

TEST_CASE("The accent goes as it came, stays off other letters, and a letter is erased whole") {
    CHECK(keyed({"E", "´", "´", "V", "A"}) == "Eva");
    CHECK(keyed({"B", "´"}) == "B");
    CHECK(keyed({"´", "B"}) == "B");
    CHECK(keyed({"A", "Ñ", "back", "D", "A"}) == "Ada");
}

TEST_CASE("On 10 in the digits lie in one row, from 1 to 0, before all letters") {
    for (const bool spanish : {false, true}) {
        Journey crew;
        if (spanish) {
            crew.tap("language");
        }
        crew.tap_all({"demo", "by"});
        const Box one = crew.screen->target("letter 1");
        float right = one.x - 1;
        for (const char digit : std::string("1234567890")) {
            const Box key = crew.screen->target(std::string("letter ") + digit);
            CHECK(key.y == doctest::Approx(one.y));
            CHECK(key.x > right);
            right = key.right();
        }
        for (const char* letter : {"letter A", "letter Ñ"}) {
            const Box key = crew.screen->target(letter);
            CHECK((key.y > one.y || key.x > right));
        }
    }
}
