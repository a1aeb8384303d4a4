#include "engine/words/csv_row.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <array>
#include <string>
#include <variant>
#include <vector>

#include "engine/words/csv.h"
#include "engine/words/shown_text.h"

using namespace hemline;

namespace {

std::string read_back(const std::string& text) {
    const auto read = read_table(csv_row({"a", "b"}) + csv_row({text, "end"}));
    if (const auto* problem = std::get_if<TableProblem>(&read)) {
        FAIL(problem->what);
    }
    const Table& table = std::get<Table>(read);
    REQUIRE(table.rows.size() == 1);
    REQUIRE(table.rows[0][1].text == "end");
    return table.rows[0][0].text;
}

/// Pieces that a mean text is made of: what makes a formula, a cell, an escape, an apostrophe more.
constexpr std::array<const char*, 36> pieces = {
    "=",      "+",       "-",      "@",      "\uFF1D", "\uFF0D", "\u2212", "\uFE66",     "'",
    "''",     "\"",      ",",      ";",      " ",      "\u00A0", "\u3000", "\t",         "\r",
    "\n",     "\r\n",    "\uFEFF", "\u200B", "\u202E", "\x1B",   "\\",     "\\u",        "\\u001B",
    "\\u005", "\\u005C", "00",     "1+1",    "A",      "é",      "|",      "\U000E0041", "\\uDB40"};

std::string made_of(const std::vector<std::uint8_t>& picks) {
    std::string text;
    for (const std::uint8_t pick : picks) {
        text += pieces[pick % pieces.size()];
    }
    return text;
}

}  // namespace

TEST_CASE("A cell that a spreadsheet would work out begins with an apostrophe") {
    // OWASP, "CSV Injection": = + - @, tab, carriage return, their full-width variants, and cells
    // that begin where another separator splits.
    CHECK(cell_of("=1+1") == "'=1+1");
    CHECK(cell_of("+1") == "'+1");
    CHECK(cell_of("-5") == "'-5");
    CHECK(cell_of("@SUM(A1)") == "'@SUM(A1)");
    CHECK(cell_of("\uFF1D1+1") == "'\uFF1D1+1");
    CHECK(cell_of("\u22125") == "'\u22125");
    CHECK(cell_of("  =1+1") == "'  =1+1");
    CHECK(cell_of("\u3000\"=1+1") == "'\u3000\"=1+1");
    CHECK(cell_of("Vale;=1+1") == "Vale;'=1+1");
    CHECK(cell_of("Vale, -1") == "Vale,' -1");
    CHECK(cell_of("'=1+1") == "''=1+1");
}

TEST_CASE("What is not seen is no way into a cell") {
    CHECK(cell_of("\t=1+1") == "\\u0009=1+1");
    CHECK(cell_of("\r=1+1") == "\\u000D=1+1");
    CHECK(cell_of("a\n=1+1") == "a\\u000A=1+1");
    CHECK(cell_of("\uFEFF=1+1") == "\\uFEFF=1+1");
    CHECK(cell_of("\x1B]0;") == "\\u001B]0;");
    CHECK(cell_of("\\u001B") == "\\u005Cu001B");
}

TEST_CASE("Everyday words are written as they are") {
    for (const char* words : {"A", "R. Vale", "31 ft 7 5/8 in", "Edge A: 46 ft, ridge - first",
                              "O'Hara", "'tis", "e\\u", "50% off", "{1}", ""}) {
        CHECK(cell_of(words) == words);
        CHECK(text_of_cell(words) == words);
    }
}

TEST_CASE("A sentence that quotes somebody gives back what he wrote") {
    const std::string name = "N\x1B\u202E";
    CHECK(csv_row({say("{1} took it", name)}) == "\"N\\u001B\\u202E took it\"\r\n");
    CHECK(csv_row({say("{1}", "=1")}) == "\"'=1\"\r\n");
    CHECK(text_of_cell(CsvCell(say("{1} took it", name)).written) == name + " took it");
}

TEST_CASE("A number of ours stays one, below zero too") {
    CHECK(csv_row({std::int64_t{-5}, "-5", "a\"b"}) == "\"-5\",\"'-5\",\"a\"\"b\"\r\n");
}

TEST_CASE("A cell that was never made harmless is read as it stands") {
    for (const char* cell : {"'plain", "\\u0041", "\\uD800", "\\u00", "it's; fine", "\\x1B"}) {
        CHECK(text_of_cell(cell) == cell);
    }
}

TEST_CASE("What was written is read back, whatever somebody typed") {
    for (const char* text : {"=1+1", "-5", "''=", "\t\r\n", "\r", "a;=b", "\\u001B", "\x1B\\u001B",
                             "\\\x1B", "\U000E0041", "'", "' =", ",=,'=,''=", "\\uDB40\\uDC41"}) {
        CHECK(read_back(text) == text);
    }
    CHECK(rc::check([](const std::vector<std::uint8_t>& picks) {
        const std::string text = made_of(picks);
        RC_ASSERT(text_of_cell(cell_of(text)) == text);
    }));
}

TEST_CASE("No cell begins a formula or holds what is not seen, whatever somebody typed") {
    CHECK(rc::check([](const std::vector<std::uint8_t>& picks) {
        const std::string cell = cell_of(made_of(picks));
        RC_ASSERT(is_plain(cell));
        bool could_begin = true;
        for (const char c : cell) {
            RC_ASSERT(!(could_begin && (c == '=' || c == '+' || c == '-' || c == '@')));
            could_begin = c == ',' || c == ';' || (could_begin && (c == ' ' || c == '"'));
        }
    }));
}
