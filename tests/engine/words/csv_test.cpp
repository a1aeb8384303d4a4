#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <string>
#include <vector>

#include "engine/words/csv.h"

using namespace hemline;

namespace {

TableProblem problem_of(std::string_view text) {
    const auto read = read_table(text);
    REQUIRE(std::holds_alternative<TableProblem>(read));
    return std::get<TableProblem>(read);
}

Table table_of(std::string_view text) {
    const auto read = read_table(text);
    REQUIRE(std::holds_alternative<Table>(read));
    return std::get<Table>(read);
}

std::string written(const std::vector<std::string>& cells) {
    std::string line;
    for (const std::string& cell : cells) {
        line += line.empty() ? "\"" : ",\"";
        for (const char c : cell) {
            line += c;
            line += c == '"' ? "\"" : "";
        }
        line += '"';
    }
    return line;
}

}  // namespace

TEST_CASE("A table is read as RFC 4180 writes it") {
    // RFC 4180 §2, rules 5 to 7, with its examples.
    const Table table = table_of(
        "\"aaa\",\"b\r\nbb\",\"ccc\"\r\n"
        "zzz,yyy,xxx\r\n"
        "\"aaa\",\"b\"\"bb\",\"ccc\"");
    REQUIRE(table.header.size() == 3);
    CHECK(table.header[1].text == "b\r\nbb");
    REQUIRE(table.rows.size() == 2);
    CHECK(table.rows[0][2].text == "xxx");
    CHECK(table.rows[1][1].text == "b\"bb");
    CHECK(table.column("ccc") == 2);
    CHECK_FALSE(table.column("CCC").has_value());
}

TEST_CASE("LF, CR LF, a missing last line end, blank lines and a byte-order mark are all legal") {
    for (const char* text : {"a,b\n1,2\n", "a,b\r\n1,2\r\n", "a,b\n1,2", "\n\na,b\n\n1,2\n\n",
                             "\xEF\xBB\xBF"
                             "a,b\r\n1,2"}) {
        const Table table = table_of(text);
        CHECK(table.column("a") == 0);
        REQUIRE(table.rows.size() == 1);
        CHECK(table.rows[0][1].text == "2");
    }
    CHECK(table_of("a,b").rows.empty());
}

TEST_CASE("Spaces belong to a cell, and empty cells count") {
    const Table table = table_of("a,b,c\n x ,,\n");
    CHECK(table.rows[0][0].text == " x ");
    CHECK(table.rows[0][1].text.empty());
    CHECK(table.rows[0][2].text.empty());
}

TEST_CASE("A cell knows its line and its byte in the line") {
    const Table table = table_of("a,b\n\"1\n1\",½\n3,4\n");
    CHECK(table.rows[0][0].line == 2);
    CHECK(table.rows[0][0].column == 1);
    CHECK(table.rows[0][1].line == 3);
    CHECK(table.rows[0][1].column == 4);
    CHECK(table.rows[1][1].line == 4);
    CHECK(table.rows[1][1].column == 3);
    CHECK(table_of("½,b\n1,2").header[1].column == 4);
}

TEST_CASE("What is wrong with a table is said with its line and column") {
    struct Row {
        std::string text;
        int line, column;
        const char* why;
    };
    const std::vector<Row> rows = {
        {"", 0, 0, "empty"},
        {"\n\r\n", 0, 0, "empty"},
        {"\xEF\xBB\xBF", 0, 0, "empty"},
        {"a,b\n1\n", 2, 1, "1 cells"},
        {"a,b\n1,2,3\n", 2, 5, "3 cells"},
        {"a,a\n1,2\n", 1, 3, "twice"},
        {"a,\n1,2\n", 1, 3, "no name"},
        {"a,b\n\"1,2\n3,4\n", 2, 1, "never ends"},
        {"a,b\n1,\"2\"x\n", 2, 6, "after the closing quote"},
        {"a,b\n1,31' 7\"\n", 2, 8, "inside a cell"},
        {"a,b\n1,\xFF\n", 2, 3, "UTF-8"},
        {"a,b\n1,\xC3", 2, 3, "UTF-8"},
        {"a,b\n1,\xED\xA0\x80\n", 2, 3, "UTF-8"},
        {"a,b\n1,\xC0\x80\n", 2, 3, "UTF-8"},
        {std::string("a,b\n1,\0", 7), 2, 3, "zero byte"},
        {"a,b\r1,2\r", 1, 4, "carriage return"},
        {std::string((1U << 20) + 1, 'a'), 0, 0, "1 MiB"},
    };
    for (const Row& row : rows) {
        const TableProblem problem = problem_of(row.text);
        CAPTURE(problem.what);
        CHECK(problem.line == row.line);
        CHECK(problem.column == row.column);
        CHECK(problem.what.find(row.why) != std::string::npos);
        CHECK_FALSE(problem.mend.empty());
    }
}

TEST_CASE("A table holds 20 000 rows and 100 columns, and no more") {
    std::string text = "a\n";
    for (int i = 0; i < 20'000; ++i) {
        text += "1\n";
    }
    CHECK(table_of(text).rows.size() == 20'000);
    CHECK(problem_of(text + "1\n").line == 20'002);
    std::string wide = "c0";
    for (int i = 1; i < 100; ++i) {
        wide += ",c" + std::to_string(i);
    }
    CHECK(table_of(wide).header.size() == 100);
    CHECK(problem_of(wide + ",more").line == 1);
}

TEST_CASE("Any cells written in quotes are read back as they were") {
    CHECK(rc::check([]() {
        const auto texts = *rc::gen::container<std::vector<std::string>>(
            3, rc::gen::container<std::string>(rc::gen::elementOf(std::string("ab ,\"\n'1/"))));
        const auto read = read_table("x,y,z\n" + written(texts) + "\r\n" + written(texts));
        const auto* table = std::get_if<Table>(&read);
        RC_ASSERT(table != nullptr);
        RC_ASSERT(table->rows.size() == 2U);
        for (const auto& row : table->rows) {
            for (std::size_t i = 0; i < texts.size(); ++i) {
                RC_ASSERT(row[i].text == texts[i]);
            }
        }
    }));
}

TEST_CASE("Whatever the bytes, a table comes out with even rows, or a problem with its mend") {
    const auto holds = [](const std::string& text) {
        const auto read = read_table(text);
        if (const auto* table = std::get_if<Table>(&read)) {
            for (const auto& row : table->rows) {
                RC_ASSERT(row.size() == table->header.size());
            }
        } else {
            RC_ASSERT(!std::get<TableProblem>(read).what.empty());
            RC_ASSERT(!std::get<TableProblem>(read).mend.empty());
        }
    };
    CHECK(rc::check([&holds](const std::string& text) { holds(text); }));
    CHECK(rc::check([&holds]() {
        holds(*rc::gen::container<std::string>(rc::gen::elementOf(std::string("a,\"\r\n\n"))));
    }));
}
