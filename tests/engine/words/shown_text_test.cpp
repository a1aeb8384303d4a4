#include "engine/words/shown_text.h"

#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <string>

#include "engine/words/text.h"
#include "engine/words/utf8.h"

using namespace hemline;

TEST_CASE("What would steer a terminal or turn a line round is shown by its number") {
    // ECMA-48: ESC ] 0 ; sets a terminal's title, BEL ends it; 9B is CSI in one byte.
    CHECK(shown_text("\x1B]0;owned\a") == "\\u001B]0;owned\\u0007");
    CHECK(shown_text("\xC2\x9B"
                     "2J") == "\\u009B2J");
    CHECK(shown_text("a\nb\tc\rd\x7F") == "a\\u000Ab\\u0009c\\u000Dd\\u007F");
    CHECK(shown_text(std::string_view("a\0b", 3)) == "a\\u0000b");
    // Unicode 15, chapter 23.2 and UAX 9: overrides, isolates and marks; line and paragraph ends.
    CHECK(shown_text("46\u202E64") == "46\\u202E64");
    CHECK(shown_text("\u200E\u200F\u061C\u2066\u2069") == "\\u200E\\u200F\\u061C\\u2066\\u2069");
    CHECK(shown_text("\u2028\u2029\u0085") == "\\u2028\\u2029\\u0085");
    CHECK(shown_text("V\u200Ba\u00ADl\uFEFFe") == "V\\u200Ba\\u00ADl\\uFEFFe");
    CHECK(shown_text("\U000E0041") == "\\uDB40\\uDC41");
}

TEST_CASE("Letters, figures and signs of any language stay as they are") {
    for (const char* plain : {"R. Vale", "7 ½ in", "12′ 3″", "Café Ñuñoa", "בית", "東屋", "5 − 3",
                              "✓ ⅝", "\u2600\uFE0F", "\\u0041", ""}) {
        CHECK(shown_text(plain) == plain);
        CHECK(is_plain(plain));
    }
}

TEST_CASE("Bytes that are no UTF-8 are shown as the replacement character") {
    CHECK(shown_text("a\xFF"
                     "b\xC3") == "a\uFFFDb\uFFFD");
    CHECK(shown_text("\xED\xA0\x80") == "\uFFFD\uFFFD\uFFFD");  // a surrogate: RFC 3629 §3
    CHECK_FALSE(is_plain("\xFF"));
}

TEST_CASE("Text in lines keeps its line ends and nothing else unseen") {
    CHECK(shown_lines("a\nb\x1B\r\n") == "a\nb\\u001B\\u000D\n");
}

TEST_CASE("Whatever the bytes, what is shown is plain, and showing it again changes nothing") {
    CHECK(rc::check([](const std::string& text) {
        const std::string shown = shown_text(text);
        RC_ASSERT(is_plain(shown));
        RC_ASSERT(shown_text(shown) == shown);
        for (std::size_t at = 0; at < shown.size();) {
            const CodePoint point = code_point_at(shown, at);
            RC_ASSERT(point.bytes > 0U);
            RC_ASSERT(!is_unseen(point.value));
            at += point.bytes;
        }
    }));
}

TEST_CASE("A sentence shows what somebody typed into it, wherever it came from") {
    const std::string name = "R.\x1B[2J\nVale\u202E";
    const std::string shown = "R.\\u001B[2J\\u000AVale\\u202E";
    CHECK(Text(name).english() == shown);
    CHECK(say("Read by {1}", name).english() == "Read by " + shown);
    CHECK(say("{1}: {2}", "A", say("by {1}", name)).english() == "A: by " + shown);
    CHECK(glued(say("one"), "\n", name).english() == "one\n" + shown);  // a label of two lines
    CHECK(recalled("off by " + name, {"off by {1}"}).english() == "off by " + shown);
    CHECK(recalled(name, {"off by {1}"}).english() == shown);
    // A name that is looked up as a phrase, because it may be "Installer".
    CHECK(say(name).english() == shown);
}
