#include <doctest/doctest.h>
#include <rapidcheck.h>

#include <string>

#include "engine/words/quote.h"
#include "engine/words/utf8.h"

using namespace hemline;

TEST_CASE("Quoted text shows what can be shown, and the numbers of the rest") {
    CHECK(quoted("7 ½ in") == "\"7 ½ in\"");
    CHECK(quoted("a\nb\x7F\xFF\u202E") == "\"a\\u000Ab\\u007F\uFFFD\\u202E\"");
    CHECK(quoted("") == "\"\"");
}

TEST_CASE("Quoted text is cut after 40 characters, never inside one") {
    std::string text;
    for (int i = 0; i < 41; ++i) {
        text += "½";
    }
    CHECK(quoted(text).size() == 2 + 40 * 2 + 3);
    CHECK(quoted(text.substr(2)).size() == 2 + 40 * 2);
}

TEST_CASE("Whatever the bytes, quoted text is valid UTF-8 on one line") {
    CHECK(rc::check([](const std::string& text) {
        const std::string shown = quoted(text);
        for (std::size_t at = 0; at < shown.size();) {
            const CodePoint point = code_point_at(shown, at);
            RC_ASSERT(point.bytes > 0U);
            RC_ASSERT(point.value >= 0x20U);
            at += point.bytes;
        }
    }));
}
