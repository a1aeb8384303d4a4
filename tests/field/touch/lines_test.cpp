#include "field/touch/lines.h"

#include <doctest/doctest.h>
#include <imgui.h>

#include <string>

#include "tests/field/harness.h"

using namespace hemline;

namespace {

std::vector<std::string> broken_to(std::string_view words, float letters) {
    const Harness screen([](Ui&) {});
    const ImFont* const font = ImGui::GetIO().Fonts->Fonts[0];
    std::vector<std::string> lines;
    for (const std::string_view line : lines_within(font, words, letters * width_of(font, "0"))) {
        lines.emplace_back(line);
    }
    return lines;
}

using Lines = std::vector<std::string>;

}  // namespace

// Dear ImGui's wrapping broke "bend 90.0°" after its point.
TEST_CASE("A number is not broken at its point") {
    CHECK(broken_to("000 67.4", 6) == Lines{"000", "67.4"});
}

// "base 1" at the end of a line and "1/2 in" below it reads as two lengths.
TEST_CASE("A length is not broken between inches and fraction, or before its unit") {
    CHECK(broken_to("0000 1 1/2 in", 8) == Lines{"0000", "1 1/2 in"});
    CHECK(broken_to("000 3 ft 8 in", 8) == Lines{"000", "3 ft 8 in"});
    CHECK(broken_to("000 120 mm.", 8) == Lines{"000", "120 mm."});
    CHECK(broken_to("00 into 00", 7.5F) == Lines{"00 into", "00"});
    CHECK(broken_to("00 inch", 4) == Lines{"00", "inch"});  // a word, no unit
}

TEST_CASE("Lines are broken at the last space that fits, and at each line end") {
    CHECK(broken_to("00 00 00", 5.5F) == Lines{"00 00", "00"});
    CHECK(broken_to("00\n00", 9) == Lines{"00", "00"});
    CHECK(broken_to("", 9) == Lines{""});
}

TEST_CASE("A word that is too wide is cut between letters, and nothing of it is lost") {
    CHECK(broken_to("000000", 4.2F) == Lines{"0000", "00"});
    const Lines wide = broken_to("ñññññ", 2.5F);
    std::string all;
    for (const std::string& line : wide) {
        CHECK(line.size() % 2 == 0);
        all += line;
    }
    CHECK(all == "ñññññ");
    CHECK(broken_to("ññ", 0).size() <= 4);  // it comes to an end in no room at all
}
