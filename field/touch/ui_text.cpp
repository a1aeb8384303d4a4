// Letters: lines, paragraphs, labels that fit their box, and lengths as large figures.
#include <imgui.h>

#include <algorithm>
#include <array>
#include <cfloat>
#include <cmath>

#include "field/touch/lines.h"
#include "field/touch/ui.h"

namespace hemline {

namespace {

constexpr float fraction_bar = 0.7F, fraction_gap = 0.75F;  // mm: the bar, and above and below it
constexpr float fraction_height = 2 * (cap_fraction + fraction_gap) + fraction_bar;

void put(ImDrawList* ink, const ImFont* font, float x, float y, std::string_view words,
         Colour colour) {
    ink->AddText(font, font->FontSize, ImVec2(std::round(x), std::round(y)), colour, words.data(),
                 words.data() + words.size());
}

/// Top of the line whose capitals have their middle at `mid_y`.
float top_for(const ImFont* font, float mid_y) {
    return mid_y - cap_middle_per_size * font->FontSize;
}

enum class Is { digits, unit, fraction };
struct FigurePart {
    Is is;
    std::string words;
    float gap;  ///< mm before it
};

/// "31 ft 0 5/8 in": inches are said when there are feet, though they be 0.
std::vector<FigurePart> parts_of_figure(const LengthParts& parts, Marks marks) {
    constexpr float unit_gap = 2.5F;
    constexpr float feet_gap = 6;
    std::vector<FigurePart> figure;
    if (parts.negative) {
        figure.push_back({Is::digits, "\u2212", 0});
    }
    if (marks == Marks::millimetre) {
        figure.push_back({Is::digits, std::to_string(parts.millimetres), 0});
        figure.push_back({Is::unit, "mm", unit_gap});
        return figure;
    }
    const bool feet = parts.feet != 0;
    const bool fraction = parts.numerator != 0;
    if (feet) {
        figure.push_back({Is::digits, std::to_string(parts.feet), 0});
        figure.push_back({Is::unit, "ft", unit_gap});
    }
    if (feet || parts.inches != 0 || !fraction) {
        figure.push_back({Is::digits, std::to_string(parts.inches), feet ? feet_gap : 0});
    }
    if (fraction) {
        figure.push_back({Is::fraction, "", figure.empty() ? 0.0F : 1.0F});
    }
    figure.push_back({Is::unit, "in", unit_gap});
    return figure;
}

bool fits(const ImFont* font, const std::vector<std::string_view>& lines, float w, float h) {
    return static_cast<float>(lines.size()) * font->FontSize <= h &&
           std::all_of(lines.begin(), lines.end(),
                       [&](std::string_view line) { return width_of(font, line) <= w; });
}

}  // namespace

ImFont* Ui::font_of(Size size) const {
    switch (size) {
        case Size::small:
            return fonts_->small;
        case Size::body:
            return fonts_->body;
        case Size::bold:
            return fonts_->bold;
        case Size::title:
            return fonts_->title;
        case Size::figure:
            return fonts_->figure;
        case Size::fraction:
            return fonts_->fraction;
    }
    return fonts_->body;
}

std::string Ui::in_words(const Text& text) const { return phrases_->of(text); }

float Ui::text(float x, float y, const Text& words, Size size, Align align) {
    return text(x, y, words, size, align, palette_->ink);
}

float Ui::text(float x, float y, const Text& text, Size size, Align align, Colour colour) {
    const std::string words = in_words(text);
    const float w = width_of(font_of(size), words);
    const float left = align == Align::left ? x : align == Align::centre ? x - w / 2 : x - w;
    put(ink(), font_of(size), left, y, words, colour);
    note(words, {left, y, w, line_height(size)});
    return w;
}

float Ui::paragraph(float x, float y, float w, const Text& words, Size size) {
    return paragraph(x, y, w, words, size, palette_->ink);
}

float Ui::paragraph(float x, float y, float w, const Text& text, Size size, Colour colour) {
    const std::string words = in_words(text);
    float line_y = y;
    for (const std::string_view line : lines_within(font_of(size), words, w)) {
        put(ink(), font_of(size), x, line_y, line, colour);
        line_y += line_height(size);
    }
    note(words, {x, y, w, line_y - y});
    return line_y - y;
}

/// Words that are scrolled out of sight are not on the screen.
void Ui::note(std::string_view words, Box box) {
    const Box shown = scroll_ != nullptr ? common_of(box, scroll_->view) : box;
    if (shown.w > 0 && shown.h > 0) {
        words_.push_back({std::string(words), shown});
    }
}

std::string Ui::shortened(const Text& text, Size size, float w) const {
    return cut_short(in_words(text), size, w);
}

std::string Ui::cut_short(std::string_view line, Size size, float w) const {
    std::string words(line);
    const ImFont* const font = font_of(size);
    if (width_of(font, words) <= w) {
        return words;
    }
    while (!words.empty() && width_of(font, words + "…") > w) {
        while (words.size() > 1 && (static_cast<unsigned char>(words.back()) & 0xC0U) == 0x80U) {
            words.pop_back();
        }
        words.pop_back();
    }
    return words + "…";
}

float Ui::text_width(const Text& text, Size size) const {
    return width_of(font_of(size), in_words(text));
}

float Ui::paragraph_height(float w, const Text& text, Size size) const {
    const std::string words = in_words(text);
    return static_cast<float>(lines_within(font_of(size), words, w).size()) * line_height(size);
}

float Ui::line_height(Size size) const { return font_of(size)->FontSize; }

Ui::Label Ui::fit_label(std::string_view label, Box box, Size largest) const {
    const float w = box.w - 2 * mm(1);
    const std::vector<std::string_view> given = lines_of(label);
    for (const Size size : {Size::title, Size::bold, Size::small}) {
        if (size > largest) {
            continue;
        }
        const ImFont* const font = font_of(size);
        if (fits(font, given, w, box.h)) {
            return {size, given, true};
        }
        const std::vector<std::string_view> two = given.size() == 1 ? broken(font, label) : given;
        if (fits(font, two, w, box.h) || size == Size::small) {
            return {size, two, fits(font, two, w, box.h)};
        }
    }
    return {Size::small, given, false};
}

Size Ui::label_size(const std::vector<Text>& labels, Box box) const {
    Size size = Size::title;
    for (const Text& label : labels) {
        size = fit_label(in_words(label), box, size).size;
    }
    return size;
}

void Ui::draw_label(std::string_view label, Box box, Size largest, Colour colour) const {
    const Label fitted = fit_label(label, box, largest);
    const ImFont* const font = font_of(fitted.size);
    const auto& lines = fitted.lines;
    const float first = box.mid_y() - static_cast<float>(lines.size() - 1) * font->FontSize / 2;
    for (std::size_t i = 0; i < lines.size(); ++i) {
        const float mid = first + static_cast<float>(i) * font->FontSize;
        const std::string line = fitted.fits ? std::string(lines[i])
                                             : cut_short(lines[i], fitted.size, box.w - 2 * mm(1));
        put(ink(), font, box.mid_x() - width_of(font, line) / 2, top_for(font, mid), line, colour);
    }
}

float Ui::label_width(const Text& text) const {
    const std::string label = in_words(text);
    const std::vector<std::string_view> given = lines_of(label);
    const std::vector<std::string_view> lines =
        given.size() == 1 ? broken(fonts_->small, label) : given;
    float w = 0;
    for (const std::string_view line : lines) {
        w = std::max(w, width_of(fonts_->small, line));
    }
    return w + 2 * mm(1) + 1;
}

float Ui::fraction_width(int numerator, int denominator) const {
    return std::max(width_of(fonts_->fraction, std::to_string(numerator)),
                    width_of(fonts_->fraction, std::to_string(denominator))) +
           2 * mm(0.4F);
}

void Ui::draw_fraction(float mid_x, float mid_y, int numerator, int denominator,
                       Colour colour) const {
    const ImFont* font = fonts_->fraction;
    const float half_w = fraction_width(numerator, denominator) / 2;
    const float step = mm(fraction_bar / 2 + fraction_gap + cap_fraction / 2);
    for (const auto& [number, mid] :
         {std::pair(numerator, mid_y - step), std::pair(denominator, mid_y + step)}) {
        const std::string digits = std::to_string(number);
        put(ink(), font, mid_x - width_of(font, digits) / 2, top_for(font, mid), digits, colour);
    }
    ink()->AddRectFilled({mid_x - half_w, mid_y - mm(fraction_bar / 2)},
                         {mid_x + half_w, mid_y + mm(fraction_bar / 2)}, colour);
}

void Ui::fraction(Box box, int numerator, int denominator, Colour colour) {
    draw_fraction(box.mid_x(), box.mid_y(), numerator, denominator, colour);
}

float Ui::figure_height() const { return mm(fraction_height); }

float Ui::figure(float x, float y, Length length, Marks marks, Align align) {
    const LengthParts parts = take_apart(length, marks);
    const std::vector<FigurePart> figure = parts_of_figure(parts, marks);
    const auto font = [&](const FigurePart& part) {
        return part.is == Is::unit ? fonts_->body : fonts_->figure;
    };
    const auto width = [&](const FigurePart& part) {
        return part.is == Is::fraction ? fraction_width(parts.numerator, parts.denominator)
                                       : width_of(font(part), part.words);
    };
    float total = 0;
    for (const FigurePart& part : figure) {
        total += mm(part.gap) + width(part);
    }
    float at = align == Align::left ? x : align == Align::centre ? x - total / 2 : x - total;
    note(print_length(length, marks), {at, y, total, figure_height()});
    const float mid = y + figure_height() / 2;
    const float baseline = top_for(fonts_->figure, mid) + fonts_->figure->Ascent;
    for (const FigurePart& part : figure) {
        at += mm(part.gap);
        if (part.is == Is::fraction) {
            draw_fraction(at + width(part) / 2, mid, parts.numerator, parts.denominator,
                          palette_->ink);
        } else {
            put(ink(), font(part), at, baseline - font(part)->Ascent, part.words, palette_->ink);
        }
        at += width(part);
    }
    return total;
}

void Ui::backspace_sign(Box box, Colour colour) {
    const float w = mm(7);
    const float h = mm(4.5F);
    const float left = box.mid_x() - w / 2;
    const float top = box.mid_y() - h / 2;
    const float thick = mm(0.5F);
    const std::array<ImVec2, 5> outline{ImVec2(left, top + h / 2), ImVec2(left + h / 2, top),
                                        ImVec2(left + w, top), ImVec2(left + w, top + h),
                                        ImVec2(left + h / 2, top + h)};
    ink()->AddPolyline(outline.data(), static_cast<int>(outline.size()), colour, ImDrawFlags_Closed,
                       thick);
    const float cx = left + h / 2 + (w - h / 2) / 2;
    const float arm = mm(1);
    ink()->AddLine({cx - arm, top + h / 2 - arm}, {cx + arm, top + h / 2 + arm}, colour, thick);
    ink()->AddLine({cx - arm, top + h / 2 + arm}, {cx + arm, top + h / 2 - arm}, colour, thick);
}

}  // namespace hemline
