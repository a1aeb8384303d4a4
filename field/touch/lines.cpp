#include "field/touch/lines.h"

#include <imgui.h>

#include <algorithm>
#include <cfloat>
#include <cmath>

namespace hemline {

float width_of(const ImFont* font, std::string_view words) {
    return font
        ->CalcTextSizeA(font->FontSize, FLT_MAX, 0, words.data(), words.data() + words.size())
        .x;
}

namespace {

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// Whether the space lies in a length: "1 1/2", "3 ft", "3 ft 8 in". Read across two lines it is
/// another one.
bool in_length(std::string_view words, std::size_t space) {
    const bool past_feet = space >= 4 && words.substr(space - 3, 3) == " ft" &&
                           is_digit(words[space - 4]) && space + 1 < words.size();
    if (past_feet && is_digit(words[space + 1])) {
        return true;
    }
    if (space == 0 || !is_digit(words[space - 1]) || space + 1 >= words.size() ||
        words[space + 1] == ' ') {
        return false;
    }
    const std::string_view rest = words.substr(space + 1);
    const std::string_view next = rest.substr(0, rest.find(' '));
    const std::string_view unit = next.substr(0, 2);
    const bool is_unit = unit == "in" || unit == "ft" || unit == "mm";
    const char after = next.size() > 2 ? next[2] : ' ';
    const bool is_fraction = is_digit(next.front()) && next.find('/') != next.npos;
    return is_fraction || (is_unit && (after < 'a' || after > 'z'));
}

/// The next space at which a line may end.
std::size_t next_break(std::string_view words, std::size_t from) {
    std::size_t at = words.find(' ', from);
    while (at != std::string_view::npos && in_length(words, at)) {
        at = words.find(' ', at + 1);
    }
    return at;
}

/// Where the UTF-8 character that begins there ends.
std::size_t letter_end(std::string_view words, std::size_t at) {
    do {
        ++at;
    } while (at < words.size() && (static_cast<unsigned char>(words[at]) & 0xC0U) == 0x80U);
    return std::min(at, words.size());
}

}  // namespace

std::vector<std::string_view> lines_of(std::string_view label) {
    std::vector<std::string_view> lines;
    for (std::size_t from = 0; from <= label.size();) {
        const std::size_t end = std::min(label.find('\n', from), label.size());
        lines.push_back(label.substr(from, end - from));
        from = end + 1;
    }
    return lines;
}

std::vector<std::string_view> lines_within(const ImFont* font, std::string_view words, float w) {
    std::vector<std::string_view> lines;
    for (std::string_view rest : lines_of(words)) {
        while (width_of(font, rest) > w) {
            std::size_t end = 0;
            for (std::size_t at = next_break(rest, 0);
                 at != std::string_view::npos && width_of(font, rest.substr(0, at)) <= w;
                 at = next_break(rest, at + 1)) {
                end = at;
            }
            const bool at_space = end > 0;
            if (!at_space) {
                end = letter_end(rest, 0);
                while (width_of(font, rest.substr(0, letter_end(rest, end))) <= w) {
                    end = letter_end(rest, end);
                }
            }
            lines.push_back(rest.substr(0, end));
            rest.remove_prefix(std::min(rest.size(), end + (at_space ? 1U : 0U)));
        }
        lines.push_back(rest);
    }
    return lines;
}

std::vector<std::string_view> broken(const ImFont* font, std::string_view label) {
    std::vector<std::string_view> best{label};
    float least = width_of(font, label);
    for (std::size_t at = label.find(' '); at != std::string_view::npos;
         at = label.find(' ', at + 1)) {
        const float wider =
            std::max(width_of(font, label.substr(0, at)), width_of(font, label.substr(at + 1)));
        if (wider < least) {
            least = wider;
            best = {label.substr(0, at), label.substr(at + 1)};
        }
    }
    return best;
}

void put(ImDrawList* ink, const ImFont* font, float x, float y, std::string_view words,
         Colour colour) {
    ink->AddText(font, font->FontSize, ImVec2(std::round(x), std::round(y)), colour, words.data(),
                 words.data() + words.size());
}

float top_for(const ImFont* font, float mid_y) {
    return mid_y - cap_middle_per_size * font->FontSize;
}

}  // namespace hemline
