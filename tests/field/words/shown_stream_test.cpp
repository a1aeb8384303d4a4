#include "field/words/shown_stream.h"

#include <doctest/doctest.h>

#include <cstdio>
#include <memory>
#include <nlohmann/json.hpp>
#include <sstream>
#include <string>

#include "engine/words/shown_text.h"

using namespace hemline;

TEST_CASE("What goes out through a shown stream is text, in whatever bits it is written") {
    std::ostringstream terminal;
    {
        const ShownStream shown(terminal);
        terminal << "a\x1B]0;b\nc";
        for (const char c : std::string("½\u202E\xFF"
                                        "d")) {
            terminal << c << std::flush;
        }
        terminal << "\xE2\x80";  // the rest of it never comes
    }
    CHECK(terminal.str() == "a\\u001B]0;b\nc½\\u202E\uFFFDd\uFFFD\uFFFD");
    terminal << "\x1B";
    CHECK(terminal.str().back() == '\x1B');  // as it was, afterwards
}

TEST_CASE("JSON that goes out through a shown stream is the same JSON") {
    const nlohmann::json said = {{"by", "R.\x1B \u202E\x7F\u0085\U000E0041 Vale ½"}};
    std::ostringstream terminal;
    {
        const ShownStream shown(terminal);
        terminal << said.dump();
    }
    CHECK(is_plain(terminal.str()));
    CHECK(nlohmann::json::parse(terminal.str()) == said);
}

TEST_CASE("A shown stream says when nothing more can be written") {
    struct Full : std::streambuf {};
    Full full;
    std::ostream terminal(&full);
    const ShownStream shown(terminal);
    terminal << "words";
    CHECK_FALSE(terminal.good());
}

TEST_CASE("Unseen is what Unicode says has no face, and no letter, figure or sign") {
    // Python's copy of the Unicode character database: "first last category" of each stretch.
    const char* list =
        "python3 -c 'import itertools, sys, unicodedata as u\n"
        "for k, g in itertools.groupby(range(0x110000), lambda c: u.category(chr(c))):\n"
        "    g = list(g); print(g[0], g[-1], k)'";
    const std::unique_ptr<std::FILE, int (*)(std::FILE*)> python(popen(list, "r"), &pclose);
    REQUIRE(python != nullptr);
    // Signs that are written before a number or join hieroglyphs (Cf), and are seen: Unicode 14's
    // Prepended_Concatenation_Mark, and U+13430 to 13438.
    const auto has_a_face = [](unsigned c) {
        return (c >= 0x600 && c <= 0x605) || c == 0x6DD || c == 0x70F || c == 0x890 || c == 0x891 ||
               c == 0x8E2 || c == 0x110BD || c == 0x110CD || (c >= 0x13430 && c <= 0x13438);
    };
    // Letters without a face: fillers, and the same database's Default_Ignorable_Code_Point.
    const auto has_none = [](unsigned c) {
        return c == 0x34F || c == 0x115F || c == 0x1160 || c == 0x17B4 || c == 0x17B5 ||
               (c >= 0x180B && c <= 0x180F) || c == 0x3164 || c == 0xFFA0 ||
               (c >= 0xE0100 && c <= 0xE01EF);
    };
    unsigned first = 0, last = 0, stretches = 0, wrong = 0;
    char category[3] = {};
    while (std::fscanf(python.get(), "%u %u %2s", &first, &last, category) == 3) {
        ++stretches;
        const std::string kind = category;
        if (kind == "Cn" || kind == "Cs" || kind == "Co") {
            continue;  // no character, or one that UTF-8 cannot hold, or for private use
        }
        const bool faceless = kind == "Cc" || kind == "Cf" || kind == "Zl" || kind == "Zp";
        for (unsigned c = first; c <= last; ++c) {
            const bool wanted = has_none(c) || (faceless && !has_a_face(c));
            if (is_unseen(c) != wanted) {
                MESSAGE(c << " of category " << kind);
                ++wrong;
            }
        }
    }
    CHECK(stretches > 3000);
    CHECK(wrong == 0);
}
