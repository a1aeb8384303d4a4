// Letters: lines, paragraphs, and labels that fit their box.
#include <imgui.h>

#include <algorithm>
#include <array>
#include <cfloat>
#include <cmath>

#include "field/touch/lines.h"
#include "field/touch/ui.h"

namespace hemline {

namespace {

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

std::string Ui::in_words(const Text& text) const {
    return phrases_->of(text, marks_, *crew_words_);
}

float Ui::text(float x, float y, const Text& words, Size size, Align align) {
    return text(x, y, words, size, align, palette_->ink);
}

float Ui::text(float x, float y, const Text& text, Size size, Align align, Colour colour) {
    const std::string words = in_words(text);
    const float w = width_of(font_of(size), words);
    const float left = align == Align::left ? x : align == Align::centre ? x - w / 2 : x - w;
    put(ink(), font_of(size), left, y, words, colour);
    note(words, {left, y, w, line_height(size)}, size);
    return w;
}

void Ui::text_along(float x, float y, float along_x, float along_y, const Text& text, Size size,
                    Colour colour) {
    const std::string words = in_words(text);
    const ImFont* const font = font_of(size);
    const float w = width_of(font, words);
    ImDrawList* const list = ink();
    // Drawn where all of it shows, then carried to its place: letters out of view are left out.
    const ImVec2 shown = list->GetClipRectMin();
    const float left = std::ceil(shown.x), top = std::ceil(shown.y);
    const float mid_x = left + w / 2, mid_y = top_for(font, 0);
    const int before = list->VtxBuffer.Size;
    put(list, font, left, top, words, colour);
    for (int i = before; i < list->VtxBuffer.Size; ++i) {
        ImVec2& at = list->VtxBuffer[i].pos;
        const float along = at.x - mid_x, across = at.y - top + mid_y;
        at = {x + along * along_x - across * along_y, y + along * along_y + across * along_x};
    }
    const float half_w = (std::abs(along_x) * w + std::abs(along_y) * line_height(size)) / 2;
    const float half_h = (std::abs(along_y) * w + std::abs(along_x) * line_height(size)) / 2;
    note(words, {x - half_w, y - half_h, 2 * half_w, 2 * half_h}, size);
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
    note(words, {x, y, w, line_y - y}, size);
    return line_y - y;
}

/// Words scrolled out of sight do not count as on the screen.
void Ui::note(std::string_view words, Box box, Size size) {
    const Box shown = scroll_ != nullptr ? common_of(box, scroll_->view) : box;
    if (shown.w > 0 && shown.h > 0) {
        words_.push_back({std::string(words), shown, size});
    }
}

Text Ui::shortened(const Text& text, Size size, float w) const {
    return Text(cut_short(in_words(text), size, w));
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
