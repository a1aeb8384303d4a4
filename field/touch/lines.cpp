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

/// Where the UTF-8 letter that begins there ends.
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
            for (std::size_t at = rest.find(' ');
                 at != std::string_view::npos && width_of(font, rest.substr(0, at)) <= w;
                 at = rest.find(' ', at + 1)) {
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
