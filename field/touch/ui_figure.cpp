// Lengths as large figures with a stacked fraction, in three sizes.
//
//        5
//   31 ft 7 ─ in      the fraction is lower than the digits, the unit lower still
//        8
#include <imgui.h>

#include <algorithm>
#include <cmath>

#include "field/touch/lines.h"
#include "field/touch/ui.h"

namespace hemline {

/// The measures of a figure of a size; lengths in mm.
struct Ui::FigureLetters {
    const ImFont *whole, *fraction, *unit;
    float cap_whole, cap_fraction;
    float bar, bar_gap;  ///< of the fraction: its bar, and above and below it
    float unit_gap, feet_gap, fraction_gap;

    [[nodiscard]] float height(Marks marks) const {
        const float stacked = 2 * (cap_fraction + bar_gap) + bar;
        return marks == Marks::millimetre ? std::min(stacked, cap_whole * 1.25F) : stacked;
    }
};

namespace {

enum class Is { digits, unit, fraction };
enum class Gap { none, unit, feet, fraction };
struct FigurePart {
    Is is;
    std::string words;
    Gap before;
};

/// "31 ft 0 5/8 in": after feet the inches are shown even when they are 0.
std::vector<FigurePart> parts_of_figure(const LengthParts& parts, Marks marks) {
    std::vector<FigurePart> figure;
    if (parts.negative) {
        figure.push_back({Is::digits, "\u2212", Gap::none});
    }
    if (marks == Marks::millimetre) {
        figure.push_back({Is::digits, std::to_string(parts.millimetres), Gap::none});
        figure.push_back({Is::unit, "mm", Gap::unit});
        return figure;
    }
    const bool feet = parts.feet != 0;
    const bool fraction = parts.numerator != 0;
    if (feet) {
        figure.push_back({Is::digits, std::to_string(parts.feet), Gap::none});
        figure.push_back({Is::unit, "ft", Gap::unit});
    }
    if (feet || parts.inches != 0 || !fraction) {
        figure.push_back({Is::digits, std::to_string(parts.inches), feet ? Gap::feet : Gap::none});
    }
    if (fraction) {
        figure.push_back({Is::fraction, "", figure.empty() ? Gap::none : Gap::fraction});
    }
    figure.push_back({Is::unit, "in", Gap::unit});
    return figure;
}

}  // namespace

Ui::FigureLetters Ui::letters_of(Size size) const {
    const Fonts& f = *fonts_;
    if (size == Size::title) {
        return {f.title, f.bold, f.small, cap_title, cap_body, 0.5F, 0.55F, 1.2F, 2.6F, 0.8F};
    }
    if (size == Size::bold) {
        return {f.bold, f.small, f.small, cap_body, cap_small, 0.4F, 0.45F, 1.0F, 2.0F, 0.6F};
    }
    return {f.figure, f.fraction, f.body, cap_figure, cap_fraction, 0.7F, 0.75F, 2.5F, 6.0F, 1.0F};
}

float Ui::fraction_width(const FigureLetters& letters, int numerator, int denominator) const {
    return std::max(width_of(letters.fraction, std::to_string(numerator)),
                    width_of(letters.fraction, std::to_string(denominator))) +
           2 * mm(0.4F);
}

void Ui::draw_fraction(const FigureLetters& letters, float mid_x, float mid_y, int numerator,
                       int denominator, Colour colour) const {
    const ImFont* const font = letters.fraction;
    const float half_w = fraction_width(letters, numerator, denominator) / 2;
    const float step = mm(letters.bar / 2 + letters.bar_gap + letters.cap_fraction / 2);
    for (const auto& [number, mid] :
         {std::pair(numerator, mid_y - step), std::pair(denominator, mid_y + step)}) {
        const std::string digits = std::to_string(number);
        put(ink(), font, mid_x - width_of(font, digits) / 2, top_for(font, mid), digits, colour);
    }
    ink()->AddRectFilled({mid_x - half_w, mid_y - mm(letters.bar / 2)},
                         {mid_x + half_w, mid_y + mm(letters.bar / 2)}, colour);
}

void Ui::fraction(Box box, int numerator, int denominator, Colour colour) {
    const bool is_low = box.h < figure_height(Size::figure, Marks::sixteenth);
    draw_fraction(letters_of(is_low ? Size::title : Size::figure), box.mid_x(), box.mid_y(),
                  numerator, denominator, colour);
}

float Ui::figure_height(Size size, Marks marks) const { return mm(letters_of(size).height(marks)); }

float Ui::figure_width(Length length, Marks marks, Size size) const {
    const FigureLetters letters = letters_of(size);
    const LengthParts parts = take_apart(length, marks);
    const float gaps[] = {0, letters.unit_gap, letters.feet_gap, letters.fraction_gap};
    float total = 0;
    for (const FigurePart& part : parts_of_figure(parts, marks)) {
        total += mm(gaps[static_cast<std::size_t>(part.before)]);
        total += part.is == Is::fraction
                     ? fraction_width(letters, parts.numerator, parts.denominator)
                     : width_of(part.is == Is::unit ? letters.unit : letters.whole, part.words);
    }
    return total;
}

float Ui::figure(float x, float y, Length length, Marks marks, Size size, Align align) {
    return figure(x, y, length, marks, size, align, palette_->ink);
}

float Ui::figure(float x, float y, Length length, Marks marks, Size size, Align align,
                 Colour colour) {
    const FigureLetters letters = letters_of(size);
    const LengthParts parts = take_apart(length, marks);
    const float gaps[] = {0, letters.unit_gap, letters.feet_gap, letters.fraction_gap};
    const float total = figure_width(length, marks, size);
    float at = align == Align::left ? x : align == Align::centre ? x - total / 2 : x - total;
    note(print_length(length, marks), {at, y, total, figure_height(size, marks)}, size);
    const float mid = y + figure_height(size, marks) / 2;
    const float baseline = top_for(letters.whole, mid) + letters.whole->Ascent;
    for (const FigurePart& part : parts_of_figure(parts, marks)) {
        at += mm(gaps[static_cast<std::size_t>(part.before)]);
        if (part.is == Is::fraction) {
            const float w = fraction_width(letters, parts.numerator, parts.denominator);
            draw_fraction(letters, at + w / 2, mid, parts.numerator, parts.denominator, colour);
            at += w;
        } else {
            const ImFont* const font = part.is == Is::unit ? letters.unit : letters.whole;
            put(ink(), font, at, baseline - font->Ascent, part.words, colour);
            at += width_of(font, part.words);
        }
    }
    return total;
}

}  // namespace hemline
