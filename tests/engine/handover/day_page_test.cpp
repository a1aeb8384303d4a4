#include "engine/handover/day_page.h"

#include <doctest/doctest.h>

using namespace hemline;

TEST_CASE("A printed day sheet has each deed with who and when, and no word breaks the page") {
    DaySheet sheet;
    sheet.job = "Boat<house>";
    sheet.people = {{"Ben & son", 1}};
    sheet.finished = {{{1, 1}, {0, 0}, "Ben & son", {}, EdgeFinished{"A\"<b>", ""}}};
    const std::string page = day_page(sheet, Text("4 May 2026"), Paper::a4,
                                      [](WallTime) { return std::string("15:40"); });
    const auto has = [&](const char* words) { return page.find(words) != std::string::npos; };
    CHECK(has("<h1>Day sheet, 4 May 2026</h1>"));
    CHECK(has("4 May 2026 · page 1 of 1"));
    CHECK(has("Boat&lt;house&gt;"));
    CHECK(
        has("<td>Edge A&quot;&lt;b&gt; finished</td><td class=\"right\">Ben &amp; son 15:40</td>"));
    CHECK(has("@page{size:A4"));
    CHECK_FALSE(has("<b>"));
}

TEST_CASE("A day sheet is printed in the words that it is given") {
    DaySheet sheet;
    const PageWords loud{"es", [](const Text& text) { return "¡" + text.english() + "!"; }};
    const std::string page = day_page(
        sheet, Text("4 May 2026"), Paper::a4, [](WallTime) { return std::string(); }, {}, loud);
    CHECK(page.find("<html lang=\"es\">") != std::string::npos);
    CHECK(page.find("<h1>¡Day sheet, 4 May 2026!</h1>") != std::string::npos);
}
