#include <doctest/doctest.h>

#include <string_view>
#include <vector>

#include "engine/words/utf8.h"

using namespace hemline;

TEST_CASE("Well-formed UTF-8 is read, at both ends of every length") {
    // The Unicode Standard, table 3-7, well-formed UTF-8 byte sequences.
    struct Row {
        std::string_view text;
        char32_t value;
    };
    const std::vector<Row> table = {
        {std::string_view("\0", 1), 0},
        {"\x7F", 0x7F},
        {"\xC2\x80", 0x80},
        {"\xDF\xBF", 0x7FF},
        {"\xE0\xA0\x80", 0x800},
        {"\xED\x9F\xBF", 0xD7FF},
        {"\xEE\x80\x80", 0xE000},
        {"\xEF\xBF\xBF", 0xFFFF},
        {"\xF0\x90\x80\x80", 0x10000},
        {"\xF4\x8F\xBF\xBF", 0x10FFFF},
    };
    for (const Row& row : table) {
        const CodePoint point = code_point_at(row.text, 0);
        CHECK(point.value == row.value);
        CHECK(point.bytes == row.text.size());
    }
}

TEST_CASE("Ill-formed UTF-8 is seen") {
    // The same table: overlong, surrogate, past U+10FFFF, cut off, and bytes that never lead.
    for (const std::string_view text :
         {"\x80", "\xBF", "\xC0\x80", "\xC1\xBF", "\xE0\x9F\xBF", "\xED\xA0\x80", "\xED\xBF\xBF",
          "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80", "\xF5\x80\x80\x80", "\xFF", "\xC2", "\xE2\x80",
          "\xF0\x90\x80", "\xC2\x41", "\xE2\x28\xA1"}) {
        CHECK(code_point_at(text, 0).bytes == 0);
    }
}
