#include "engine/handover/piece_papers.h"

#include <doctest/doctest.h>

#include <string>

using namespace hemline;

namespace {

Card card_of_eave() {
    Card card;
    card.edge = "A<1>";
    card.trim = "eave_rolled";
    card.trim_name = "eave trim";
    card.piece = 2;
    card.pieces = 4;
    card.cut = inches(100);
    card.stick_length = feet(10);
    card.marks = {{MarkKind::tab_fold, inches(1), Side::left},
                  {MarkKind::lap_line, inches(94), Side::right},
                  {MarkKind::end_cut, inches(100), Side::right}};
    card.screws = {inches(6), inches(18)};
    return card;
}

std::size_t count(const std::string& text, const std::string& what) {
    std::size_t n = 0;
    for (std::size_t at = text.find(what); at != std::string::npos; at = text.find(what, at + 1)) {
        ++n;
    }
    return n;
}

}  // namespace

TEST_CASE("a printed card has its length, and a row and a flag in its place for each mark") {
    const std::string page = card_page(card_of_eave(), {}, Marks::sixteenth, Paper::letter);
    CHECK(count(page, "<h1>Cut 8 ft 4 in</h1>") == 1);
    CHECK(count(page, "<tr><td>") == 3);
    // 1, 94 and 100 of 100 in on a line of 180 mm.
    CHECK(count(page, "M1.8,") == 1);
    CHECK(count(page, "M169.2,") == 1);
    CHECK(count(page, "M180,") == 1);
    CHECK(count(page, "Screws at 6 in, 1 ft 6 in.") == 1);
    CHECK(count(page, "@page{size:letter") == 1);
    CHECK(count(page, "gloves") == 1);
}

TEST_CASE("words of the job cannot break the printed page") {
    const std::string page = card_page(card_of_eave(), {}, Marks::sixteenth, Paper::a4);
    CHECK(count(page, "A&lt;1&gt;") == 2);  // heading and title
    CHECK(count(page, "A<1>") == 0);
    CHECK(count(page, "@page{size:A4") == 1);
}

TEST_CASE("a card that waits says so above everything that might be cut") {
    Card card = card_of_eave();
    card.waits_for = "Fix piece 1 first.";
    const std::string page = card_page(card, {}, Marks::sixteenth, Paper::letter);
    CHECK(count(page, "<h2>NOT YET TO CUT: Fix piece 1 first.</h2>") == 1);
    CHECK(title_of(card, Marks::sixteenth).find("NOT YET TO CUT: ") == 0);
}
