#include "field/store/file_name.h"

#include <doctest/doctest.h>

#include "engine/words/shown_text.h"

using namespace hemline;

TEST_CASE("A file's name has no character that steers, hides or turns round") {
    CHECK(file_name_of("House\x1B]0;\a\u202Egpj") == "House-]0;--gpj");
    CHECK(file_name_of("a\nb\u200Bc\u0085\xFF"
                       "d") == "a-b-c--d");
    CHECK(file_name_of("9/12: \"A\" <b>|?*\\") == "9-12- -A- -b-----");
    CHECK(file_name_of("Café Ñuñoa 東屋") == "Café Ñuñoa 東屋");
}

TEST_CASE("A file's name is never empty, hidden or too long, and is cut between characters") {
    CHECK(file_name_of("") == "job");
    CHECK(file_name_of(" .. ") == "job");
    CHECK(file_name_of(".hidden ") == "hidden");
    std::string name;
    for (int i = 0; i < 60; ++i) {
        name += "½";
    }
    CHECK(file_name_of(name).size() == 80);
    CHECK(file_name_of("x" + name).size() == 79);
    CHECK(is_plain(file_name_of("x" + name)));
}
