// What is a PO file and what is not: GNU gettext manual, "The Format of PO Files".
#include "field/words/po_file.h"
#include "engine/words/result.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <string>

namespace hemline {
namespace {

TEST_CASE("an entry has its context, its English, its plural and its strings") {
    const auto read = read_po(
        "#. of a stick\n"
        "#: engine/plan.cpp\n"
        "#, c-format\n"
        "msgctxt \"hem\"\n"
        "msgid \"{1} piece\"\n"
        "msgid_plural \"{1} pieces\"\n"
        "msgstr[0] \"{1} pieza\"\n"
        "msgstr[1] \"{1} piezas\"\n");
    REQUIRE(read.ok());
    REQUIRE(read->size() == 1);
    const PoEntry& entry = read->front();
    CHECK(entry.context == "hem");
    CHECK(entry.id == "{1} piece");
    CHECK(entry.id_plural == "{1} pieces");
    CHECK(entry.strings == std::vector<std::string>{"{1} pieza", "{1} piezas"});
    CHECK_FALSE(entry.fuzzy);
}

TEST_CASE("a string goes on over lines, and its escapes are those of C") {
    const auto read = read_po(
        "msgid \"\"\n"
        "\"one \"\n"
        "\"two\\n\"\n"
        "msgstr \"\\\"a\\\" \\\\ \\tb\"\n");
    REQUIRE(read.ok());
    CHECK(read->front().id == "one two\n");
    CHECK(read->front().strings.front() == "\"a\" \\ \tb");
}

TEST_CASE("fuzzy marks the entry that follows, and no other") {
    const auto read = read_po(
        "#, fuzzy, c-format\nmsgid \"a\"\nmsgstr \"b\"\n\n"
        "msgid \"c\"\nmsgstr \"d\"\n");
    REQUIRE(read.ok());
    REQUIRE(read->size() == 2);
    CHECK((*read)[0].fuzzy);
    CHECK_FALSE((*read)[1].fuzzy);
}

TEST_CASE("obsolete entries, blank lines and line ends of another system are passed over") {
    const auto read = read_po(
        "\r\n#~ msgid \"old\"\r\n#~ msgstr \"viejo\"\r\n"
        "#| msgid \"was\"\r\nmsgid \"a\"\r\nmsgstr \"b\"\r\n");
    REQUIRE(read.ok());
    REQUIRE(read->size() == 1);
    CHECK(read->front().strings.front() == "b");
    CHECK(read_po("").value().empty());
    CHECK(read_po("# nothing yet\n").value().empty());
}

TEST_CASE("what is no PO file is refused with its line") {
    const struct {
        const char *po, *line;
    } rows[] = {
        {"msgid \"a\"\n", "line 1"},                                       // no msgstr
        {"msgid \"a\"\nmsgid \"b\"\nmsgstr \"c\"\n", "line 2"},            // none for the first
        {"msgstr \"a\"\n", "line 1"},                                      // no msgid
        {"\"a\"\n", "line 1"},                                             // of nothing
        {"msgctxt \"c\"\nmsgstr \"a\"\n", "line 2"},                       // no msgid
        {"msgctxt \"c\"\nmsgctxt \"d\"\n", "line 2"},                      // two contexts
        {"msgid \"a\"\nmsgstr \"b\"\nmsgstr \"c\"\n", "line 3"},           // two translations
        {"msgid \"a\"\nmsgid_plural \"b\"\nmsgstr[1] \"c\"\n", "line 3"},  // plural 0 missing
        {"msgid \"a\"\nmsgstr \"b\"\nmsgid_plural \"c\"\n", "line 3"},     // too late
        {"msgid \"a\nmsgstr \"b\"\n", "line 1"},                           // quote not closed
        {"msgid \"a\"b\"\nmsgstr \"c\"\n", "line 1"},                      // quote in quotes
        {"msgid \"a\\\"\nmsgstr \"c\"\n", "line 1"},                       // closed by an escape
        {"msgid \"a\\q\"\nmsgstr \"c\"\n", "line 1"},                      // no such escape
        {"msgid a\nmsgstr \"c\"\n", "line 1"},                             // no quotes
        {"msgid\n", "line 1"},                                             // no words
        {"msgname \"a\"\nmsgstr \"c\"\n", "line 1"},                       // no such keyword
        {"msgid \"a\"\nmsgstr \"b\"\n\nmsgid \"c\"\nmsgstr\n", "line 5"},  // after a good entry
    };
    for (const auto& row : rows) {
        CAPTURE(row.po);
        const auto read = read_po(row.po);
        REQUIRE_FALSE(read.ok());
        CHECK(read.problem().what.english().find(row.line) == 0);
        CHECK(read.problem().mend.english().find("msgfmt") != std::string::npos);
    }
}

TEST_CASE("any bytes are read or refused") {
    const bool held = rc::check([] {
        const auto lines =
            *rc::gen::container<std::vector<std::string>>(rc::gen::element<std::string>(
                "msgid \"a\"", "msgstr \"b\"", "msgctxt \"c\"", "msgid_plural \"d\"",
                "msgstr[0] \"e\"", "msgstr[1] \"f\"", "\"g\"", "#, fuzzy", "", "\\", "msgid \"",
                "\""));
        std::string po;
        for (const std::string& line : lines) {
            po += line + "\n";
        }
        const auto read = read_po(po);
        RC_ASSERT((read.ok() || !read.problem().mend.empty()));
        if (read.ok()) {
            for (const PoEntry& entry : *read) {
                RC_ASSERT(!entry.strings.empty());
            }
        }
    });
    CHECK(held);
}

}  // namespace
}  // namespace hemline
