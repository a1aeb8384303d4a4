#include "engine/handover/sheets.h"

#include <doctest/doctest.h>

#include "tests/engine/handover/count.h"

using namespace hemline;

TEST_CASE("every sheet has its head with its number, and a table its names again") {
    Sheets sheets(Paper::letter, {"Boat <house>", Text("4 May 2026")}, Text("Edge A"), 12);
    sheets.heading(Text("Rows"));
    sheets.table({{Text("length"), 60}, {Text("what"), 100}});
    for (int i = 0; i < 100; ++i) {
        sheets.row({Text("17 ft 5 1/2 in"), Text("read")});
    }
    const std::string html = sheets.html();
    // A row takes 12 pt × 1.25 and 1.6 mm, 6.9 mm in all: 33 of them on a sheet of 237 mm.
    CHECK(count(html, "<section>") == 4);
    for (const char* page : {"page 1 of 4", "page 2 of 4", "page 3 of 4", "page 4 of 4"}) {
        CHECK(count(html, page) == 1);
    }
    CHECK(count(html, "Edge A · Boat &lt;house&gt;") == 4);
    CHECK(count(html, "4 May 2026 · ") == 4);
    CHECK(count(html, "<th>length</th>") == 4);
    CHECK(count(html, "<table") == count(html, "</table>"));
    CHECK(count(html, "<tr><td>") == 100);
}

TEST_CASE("a heading never stands alone at a sheet's foot, and no sheet is empty") {
    for (int rows = 1; rows < 70; ++rows) {
        Sheets sheets(Paper::a4, {}, {}, 12);
        sheets.table({Column{{}, 100}});
        for (int i = 0; i < rows; ++i) {
            sheets.row({Text("x")});
        }
        sheets.heading(Text("Last"));
        sheets.paragraph(Text("words"));
        const std::string html = sheets.html();
        CHECK(count(html, "</header>\n</section>") == 0);
        CHECK(count(html, "</h2>\n</section>") == 0);
    }
}

TEST_CASE("words longer than a sheet go on on the next") {
    Sheets sheets(Paper::letter, {}, {}, 12);
    std::string words;
    for (int i = 0; i < 1500; ++i) {
        words += "word ";
    }
    sheets.table({Column{{}, 100}});
    sheets.row({Text(words)});
    const std::string html = sheets.html();
    CHECK(count(html, "<section>") >= 3);
    CHECK(count(html, "word") == 1500);
}
