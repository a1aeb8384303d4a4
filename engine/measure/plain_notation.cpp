#include "engine/measure/plain_notation.h"

#include <array>

#include "engine/measure/characters.h"
#include "engine/words/utf8.h"

namespace hemline {

namespace {

struct Sign {
    char32_t sign;
    std::string_view plain;
};

constexpr std::array<Sign, 38> signs = {{
    {U'\u2032', "'"},   {U'\u2019', "'"},   {U'\u02B9', "'"},   {U'\u2033', "\""},
    {U'\u201D', "\""},  {U'\u02BA', "\""},  {U'\u2044', "/"},   {U'\u2215', "/"},
    {U'\u2010', "-"},   {U'\u2011', "-"},   {U'\u2012', "-"},   {U'\u2013', "-"},
    {U'\u2014', "-"},   {U'\u2212', "-"},   {U'\u00A0', " "},   {U'\u2007', " "},
    {U'\u2009', " "},   {U'\u202F', " "},   {U'\u00B0', "deg"}, {U'\u00BA', "deg"},
    {U'\u00BC', "1/4"}, {U'\u00BD', "1/2"}, {U'\u00BE', "3/4"}, {U'\u215B', "1/8"},
    {U'\u215C', "3/8"}, {U'\u215D', "5/8"}, {U'\u215E', "7/8"}, {U'\u2153', "1/3"},
    {U'\u2154', "2/3"}, {U'\u2155', "1/5"}, {U'\u2156', "2/5"}, {U'\u2157', "3/5"},
    {U'\u2158', "4/5"}, {U'\u2159', "1/6"}, {U'\u215A', "5/6"}, {U'\u2152', "1/10"},
    {U'\u00ED', "i"},   {U'\u00CD', "i"},
}};

std::string_view plain_of(char32_t sign) {
    for (const Sign& known : signs) {
        if (known.sign == sign) {
            return known.plain;
        }
    }
    return {};
}

void append(PlainNotation& out, std::string_view plain, std::size_t from) {
    out.text += plain;
    out.from.insert(out.from.end(), plain.size(), static_cast<int>(from));
}

/// A ready-made fraction is set apart from the digits around it: 7½ is 7 1/2, never 71/2.
void append_fraction(PlainNotation& out, std::string_view fraction, std::size_t from,
                     std::size_t past) {
    if (!out.text.empty() && is_digit(out.text.back())) {
        append(out, " ", from);
    }
    append(out, fraction, from);
    append(out, " ", past);
}

}  // namespace

PlainNotation plain_notation(std::string_view text) {
    PlainNotation out;
    for (std::size_t at = 0; at < text.size();) {
        const CodePoint point = code_point_at(text, at);
        const std::string_view plain = plain_of(point.value);
        if (point.bytes == 0 || plain.empty()) {
            append(out, text.substr(at, 1), at);
            ++at;
            continue;
        }
        if (is_digit(plain.front())) {
            append_fraction(out, plain, at, at + point.bytes);
        } else {
            append(out, plain, at);
        }
        at += point.bytes;
    }
    out.from.push_back(static_cast<int>(text.size()));
    return out;
}

}  // namespace hemline
