#include "engine/words/csv_row.h"

#include <algorithm>
#include <array>
#include <optional>

#include "engine/words/shown_text.h"
#include "engine/words/utf8.h"

namespace hemline {

namespace {

/// The characters that make a cell a formula: = + - @, the minus sign, and their full-width forms.
constexpr std::array<char32_t, 13> formula_signs = {
    '=', '+', '-', '@', 0x2212, 0xFE62, 0xFE63, 0xFE66, 0xFE6B, 0xFF0B, 0xFF0D, 0xFF1D, 0xFF20};

bool is_space_or_quote(char32_t c) {
    return c == ' ' || c == '"' || c == 0xA0 || c == 0x1680 || (c >= 0x2000 && c <= 0x200A) ||
           c == 0x202F || c == 0x205F || c == 0x3000;
}

/// Whether the text, after spaces and quotes, begins like a formula.
bool begins_formula(std::string_view text) {
    for (std::size_t at = 0; at < text.size();) {
        const CodePoint point = code_point_at(text, at);
        if (point.bytes == 0 || !is_space_or_quote(point.value)) {
            return point.bytes > 0 && std::find(formula_signs.begin(), formula_signs.end(),
                                                point.value) != formula_signs.end();
        }
        at += point.bytes;
    }
    return false;
}

enum class Apostrophes { put, taken };

/// Adds or removes an apostrophe where a formula could begin.
std::string with_apostrophes(std::string_view text, Apostrophes apostrophes) {
    std::string out;
    bool could_begin = true;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t there = std::min(text.find_first_not_of('\'', at), text.size()) - at;
        std::size_t count = there;
        if (could_begin && begins_formula(text.substr(at + there))) {
            count = apostrophes == Apostrophes::put ? there + 1
                                                    : there - std::min<std::size_t>(there, 1);
        }
        out.append(count, '\'');
        at += there;
        if (at < text.size()) {
            could_begin = text[at] == ',' || text[at] == ';';
            out += text[at];
            ++at;
        }
    }
    return out;
}

/// The number of the four hexadecimal digits at `at`.
std::optional<std::uint32_t> four_digits(std::string_view text, std::size_t at) {
    constexpr std::size_t digits = 4;
    if (text.size() < at + digits) {
        return {};
    }
    std::uint32_t number = 0;
    for (const char c : text.substr(at, digits)) {
        const std::size_t digit = std::string_view("0123456789ABCDEF").find(c);
        if (digit == std::string_view::npos) {
            return {};
        }
        number = number << 4U | static_cast<std::uint32_t>(digit);
    }
    return number;
}

/// The number of a \uXXXX at `at`.
std::optional<std::uint32_t> unit_at(std::string_view text, std::size_t at) {
    return text.substr(at, 2) == "\\u" ? four_digits(text, at + 2) : std::nullopt;
}

std::string utf8_of(char32_t c) {
    const auto last = [](char32_t part) { return static_cast<char>(0x80U | (part & 0x3FU)); };
    if (c < 0x80) {
        return {static_cast<char>(c)};
    }
    if (c < 0x800) {
        return {static_cast<char>(0xC0U | c >> 6U), last(c)};
    }
    if (c < 0x10000) {
        return {static_cast<char>(0xE0U | c >> 12U), last(c >> 6U), last(c)};
    }
    return {static_cast<char>(0xF0U | c >> 18U), last(c >> 12U), last(c >> 6U), last(c)};
}

constexpr std::size_t unit_size = 6;

/// The character written by its number at `at`, and how many bytes that takes; none where cell_of()
/// would not have written it so.
struct Numbered {
    char32_t character;
    std::size_t bytes;
};
std::optional<Numbered> numbered_at(std::string_view text, std::size_t at) {
    const auto first = unit_at(text, at);
    if (!first) {
        return {};
    }
    Numbered found{*first, unit_size};
    if (*first >= 0xD800 && *first < 0xDC00) {
        const auto second = unit_at(text, at + unit_size);
        if (!second || *second < 0xDC00 || *second > 0xDFFF) {
            return {};
        }
        found = {0x10000 + ((*first - 0xD800) << 10U) + (*second - 0xDC00), 2 * unit_size};
    }
    const bool was_written = found.character == '\\' || is_unseen(found.character);
    return was_written ? std::optional(found) : std::nullopt;
}

}  // namespace

CsvCell::CsvCell(std::string_view text) : written(cell_of(text)) {}

CsvCell::CsvCell(const Text& words, std::optional<Marks> marks)
    : written(with_apostrophes(words.english(marks), Apostrophes::put)) {}

std::string csv_row(std::initializer_list<CsvCell> cells) {
    std::string row;
    for (const CsvCell& cell : cells) {
        row += row.empty() ? "\"" : ",\"";
        for (const char c : cell.written) {
            row += c == '"' ? "\"\"" : std::string(1, c);
        }
        row += '"';
    }
    return row + "\r\n";
}

std::string cell_of(std::string_view text) {
    std::string told;  // tells text that looks like a number from a number we wrote
    for (std::size_t at = 0; at < text.size(); ++at) {
        told += unit_at(text, at) ? std::string("\\u005C") : std::string(1, text[at]);
    }
    return with_apostrophes(shown_text(told), Apostrophes::put);
}

std::string text_of_cell(std::string_view cell) {
    if (cell.find_first_of("'\\") == std::string_view::npos) {
        return std::string(cell);
    }
    const std::string numbered = with_apostrophes(cell, Apostrophes::taken);
    std::string text;
    for (std::size_t at = 0; at < numbered.size();) {
        if (const auto found = numbered_at(numbered, at)) {
            text += utf8_of(found->character);
            at += found->bytes;
        } else {
            text += numbered[at];
            ++at;
        }
    }
    return text;
}

}  // namespace hemline
