#include "engine/handover/paper_words.h"

#include <doctest/doctest.h>

using namespace hemline;

TEST_CASE("a length on paper is one word, whatever it is made of and stands in") {
    const auto whole = [](const char* length) {
        return std::string("<span class=\"whole\">") + length + "</span>";
    };
    for (const char* length : {"17 ft 5 1/2 in", "46 ft", "5 1/2 in", "1/2 in", "9 650 mm",
                               "2400 mm", "31 ft 7 5/8 in", "12.5 mm", "3 ft 1/16 in"}) {
        CHECK(paper_text(length) == whole(length));
        CHECK(paper_text("Cut " + std::string(length) + ", then stop.") ==
              "Cut " + whole((std::string(length) + ",").c_str()) + " then stop.");
    }
    CHECK(paper_text("at 6 in, 1 ft 6 in.") == "at " + whole("6 in,") + " " + whole("1 ft 6 in."));
    CHECK(paper_text("piece 2 of 5") == "piece 2 of 5");
    CHECK(paper_text("Edge B 2 readings") == "Edge B 2 readings");
    CHECK(paper_text("page 1 of 12") == "page 1 of 12");
    CHECK(paper_text("3 <b> & \"x\"") == "3 &lt;b&gt; &amp; &quot;x&quot;");
    CHECK(paper_text("") == "");
}

TEST_CASE("words are wrapped between words, and inside one that is longer than a line") {
    CHECK(wrapped("one two three", 7) == std::vector<std::string>{"one two", "three"});
    CHECK(wrapped("ñandú ñandú", 5) == std::vector<std::string>{"ñandú", "ñandú"});
    CHECK(wrapped("abcdefgh ij", 3) == std::vector<std::string>{"abc", "def", "gh", "ij"});
    CHECK(wrapped("", 5) == std::vector<std::string>{""});
    CHECK(shortened("señal", 5) == "señal");
    CHECK(shortened("señales", 5) == "seña…");
    CHECK(letters_in("caña") == 4);
}
