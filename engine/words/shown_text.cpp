#include "engine/words/shown_text.h"

#include <algorithm>
#include <array>
#include <cstdint>

#include "engine/words/utf8.h"

namespace hemline {

namespace {

struct Range {
    char32_t first, last;
};

/// Unicode 15: general categories Cc, Zl and Zp of UnicodeData.txt, Default_Ignorable_Code_Point of
/// DerivedCoreProperties.txt without U+FE00 to FE0F, which choose an emoji's look, and the
/// interlinear annotation marks, U+FFF9 to FFFB.
constexpr std::array<Range, 17> unseen = {{{0x0000, 0x001F},
                                           {0x007F, 0x009F},
                                           {0x00AD, 0x00AD},
                                           {0x034F, 0x034F},
                                           {0x061C, 0x061C},
                                           {0x115F, 0x1160},
                                           {0x17B4, 0x17B5},
                                           {0x180B, 0x180F},
                                           {0x200B, 0x200F},
                                           {0x2028, 0x202E},
                                           {0x2060, 0x206F},
                                           {0x3164, 0x3164},
                                           {0xFEFF, 0xFEFF},
                                           {0xFFA0, 0xFFA0},
                                           {0xFFF0, 0xFFFB},
                                           {0x1BCA0, 0x1BCA3},
                                           {0x1D173, 0x1D17A}}};
constexpr Range unseen_tags = {0xE0000, 0xE0FFF};

/// "\u202E".
void put_unit(std::string& out, std::uint32_t unit) {
    constexpr std::string_view digits = "0123456789ABCDEF";
    out += "\\u";
    for (int shift = 12; shift >= 0; shift -= 4) {
        out += digits[(unit >> static_cast<unsigned>(shift)) & 0xFU];
    }
}

void put_number(std::string& out, char32_t character) {
    if (character < 0x10000) {
        put_unit(out, character);
        return;
    }
    const std::uint32_t above = character - 0x10000;
    put_unit(out, 0xD800 + (above >> 10U));
    put_unit(out, 0xDC00 + (above & 0x3FFU));
}

/// Fast path for printable ASCII, which most text is.
bool is_everyday(std::string_view text) {
    return std::all_of(text.begin(), text.end(), [](char c) { return c >= ' ' && c <= '~'; });
}

enum class LineEnds { shown, kept };

std::string shown(std::string_view text, LineEnds line_ends) {
    if (is_everyday(text)) {
        return std::string(text);
    }
    std::string out;
    for (std::size_t at = 0; at < text.size();) {
        const CodePoint point = code_point_at(text, at);
        if (point.bytes == 0) {
            out += "\xEF\xBF\xBD";  // U+FFFD, the replacement character
            ++at;
            continue;
        }
        const bool kept = line_ends == LineEnds::kept && point.value == '\n';
        if (is_unseen(point.value) && !kept) {
            put_number(out, point.value);
        } else {
            out += text.substr(at, point.bytes);
        }
        at += point.bytes;
    }
    return out;
}

}  // namespace

bool is_unseen(char32_t character) {
    const auto holds = [&](Range range) {
        return range.first <= character && character <= range.last;
    };
    const bool is_none = (character & 0xFFFEU) == 0xFFFE || holds({0xFDD0, 0xFDEF});
    return is_none || std::any_of(unseen.begin(), unseen.end(), holds) || holds(unseen_tags);
}

bool is_plain(std::string_view text) { return shown(text, LineEnds::shown) == text; }

std::string shown_text(std::string_view text) { return shown(text, LineEnds::shown); }

std::string shown_lines(std::string_view text) { return shown(text, LineEnds::kept); }

}  // namespace hemline
