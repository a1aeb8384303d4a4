#include "engine/handover/piece_papers.h"

#include <doctest/doctest.h>

#include <string>

#include "tests/engine/handover/count.h"

using namespace hemline;

namespace {

Card card_of_eave() {
    Card card;
    card.edge = "A<1>";
    card.trim = "eave_rolled";
    card.trim_name = Text("eave trim");
    card.piece = 2;
    card.pieces = 4;
    card.cut = inches(100);
    card.stick_length = feet(10);
    card.marks = {{MarkKind::tab_fold, inches(1), Side::left},
                  {MarkKind::lap_line, inches(94), Side::right},
                  {MarkKind::end_cut, inches(100), Side::right}};
    card.screws = {{LegName::flange, {inches(6), inches(18)}}};
    return card;
}

}  // namespace

TEST_CASE("a printed card has its length, and a row and a flag in its place for each mark") {
    const std::string page = card_page(card_of_eave(), {}, Marks::sixteenth,
                                       {"House", Text("4 May 2026")}, Paper::letter);
    CHECK(count(page, "<h1>Cut <span class=\"whole\">8 ft 4 in</span></h1>") == 1);
    CHECK(count(page, "<tr><td>") == 3);
    // 1, 94 and 100 of 100 in on a line of 180 mm.
    CHECK(count(page, "L1.8,16\"") == 1);
    CHECK(count(page, "L169.2,16\"") == 1);
    CHECK(count(page, "L180,16\"") == 1);
    CHECK(count(page,
                "Screws at <span class=\"whole\">6 in,</span> <span class=\"whole\">1 ft 6 in.") ==
          1);
    CHECK(count(page, "eave_rolled") == 0);
    CHECK(count(page, "4 May 2026 · page 1 of 1") == 1);
    CHECK(count(page, "@page{size:letter") == 1);
    CHECK(count(page, "gloves") == 1);
}

TEST_CASE("words of the job cannot break the printed page") {
    const std::string page =
        card_page(card_of_eave(), {}, Marks::sixteenth, {"<i>", {}}, Paper::a4);
    CHECK(count(page, "A&lt;1&gt;") == 3);  // head, heading and title
    CHECK(count(page, "<i>") == 0);
    CHECK(count(page, "A<1>") == 0);
    CHECK(count(page, "@page{size:A4") == 1);
}

TEST_CASE("a card of more marks is still one sheet, in smaller letters, down to 9 points") {
    const auto printed = [](int marks) {
        Card card = card_of_eave();
        for (int i = 2; i < marks; ++i) {
            card.marks.push_back({MarkKind::lap_line, inches(2 + i), Side::right});
        }
        return card_page(card, {}, Marks::sixteenth, {"House", Text("4 May 2026")}, Paper::letter);
    };
    const auto sheets = [](const std::string& page) { return count(page, "<section"); };
    const auto points = [](const std::string& page) {
        return std::stoi(page.substr(page.find("body{margin:0;font:") + 19));
    };
    CHECK(points(printed(3)) == 11);
    bool smaller = false;
    int marks = 3;
    for (; sheets(printed(marks)) == 1 && marks < 90; ++marks) {
        smaller = smaller || points(printed(marks)) < 11;
    }
    CHECK(smaller);
    CHECK(marks < 90);  // past what letters can take in, a second sheet
    CHECK(points(printed(marks)) == 9);
}

TEST_CASE("a card that waits says so above everything that might be cut") {
    Card card = card_of_eave();
    card.waits_for = Text("Fix piece 1 first.");
    const std::string page = card_page(card, {}, Marks::sixteenth, {}, Paper::letter);
    CHECK(count(page, "<h2>NOT YET TO CUT: Fix piece 1 first.</h2>") == 1);
    CHECK(title_of(card, Marks::sixteenth).find("NOT YET TO CUT: ") == 0);
}

// A cut at a lap or bead line spoils the metal: common practice, no published source.
TEST_CASE("A printed card names a waste side only where metal is cut off") {
    Card card = card_of_eave();
    card.marks = {{MarkKind::tab_end, inches(0), Side::left},
                  {MarkKind::tab_fold, inches(1), Side::left},
                  {MarkKind::hem_notch, inches(93), Side::right},
                  {MarkKind::lap_line, inches(94), Side::right},
                  {MarkKind::bead, inches(96), Side::right},
                  {MarkKind::bead, inches(98), Side::right},
                  {MarkKind::end_cut, inches(100), Side::right}};
    const std::string page = card_page(card, {}, Marks::sixteenth, {}, Paper::letter);
    CHECK(count(page, "<td>none</td>") == 4);
    CHECK(count(page, "<td>to the left</td>") == 1);
    CHECK(count(page, "<td>to the right</td>") == 2);
    CHECK(count(page, "lap line</td><td>mark only: the visible part ends here</td><td>none</td>") ==
          1);
}

TEST_CASE("Marks at one place share one number above the metal, and no two numbers overlap") {
    Card card = card_of_eave();
    card.marks.clear();
    for (int i = 0; i < 12; ++i) {
        card.marks.push_back({MarkKind::bead, inches(98) + sixteenths(i / 2), Side::right});
    }
    const std::string page = card_page(card, {}, Marks::sixteenth, {}, Paper::letter);
    const std::string before = "text-anchor=\"middle\" x=\"";
    std::vector<double> middles;
    for (std::size_t at = page.find(before); at != std::string::npos;
         at = page.find(before, at + 1)) {
        middles.push_back(std::stod(page.substr(at + before.size())));
    }
    REQUIRE(middles.size() == 6);
    for (std::size_t i = 1; i < middles.size(); ++i) {
        CHECK(middles[i] - middles[i - 1] >
              7);  // "11–12" in letters of 4 mm is 7.5 mm wide or more
    }
    CHECK(middles.back() <= 180);
}
