#include "field/screens/keypad.h"

#include <numeric>
#include <string>

namespace hemline {

namespace {

constexpr float key_mm = 19;
constexpr float gap_mm = 3;

/// Key `index` of a grid four wide.
Box key_box(const Ui& ui, Box box, int index, int wide) {
    const float gap = ui.mm(gap_mm);
    const float w = (box.w - gap * static_cast<float>(wide - 1)) / static_cast<float>(wide);
    const float h = (box.h - gap * 3) / 4;
    const auto column = static_cast<float>(index % wide);
    const auto row = static_cast<float>(index / wide);
    return {box.x + column * (w + gap), box.y + row * (h + gap), w, h};
}

void draw_sixteenth_keys(Ui& ui, LengthDraft& draft, Box box) {
    for (int n = 0; n < 16; ++n) {
        const Box place = key_box(ui, box, n, 4);
        const bool chosen = draft.sixteenths == n;
        const std::string name = "sixteenths " + std::to_string(n);
        if (ui.button(name, n == 0 ? "0" : "", place, chosen ? Look::chosen : Look::key)) {
            press_sixteenths(draft, n);
        }
        if (n > 0) {
            const int common = std::gcd(n, 16);
            ui.fraction(place, n / common, 16 / common,
                        chosen ? ui.colours().chalk_ink : ui.colours().ink);
        }
    }
}

void draw_inch_keys(Ui& ui, LengthDraft& draft, Box box) {
    for (int n = 0; n < 12; ++n) {
        const Look look = draft.inches == n ? Look::chosen : Look::key;
        if (ui.button("inches " + std::to_string(n), std::to_string(n), key_box(ui, box, n, 4),
                      look)) {
            press_inches(draft, n);
        }
    }
}

}  // namespace

Box key_room(const Ui& ui) {
    const float side = ui.mm(4 * key_mm + 3 * gap_mm);
    return {0, 0, side, side};
}

char draw_digit_keys(Ui& ui, Box box, bool with_point) {
    char tapped = 0;
    for (int i = 0; i < 9; ++i) {
        const int digit = 7 - 3 * (i / 3) + i % 3;
        if (ui.button("digit " + std::to_string(digit), std::to_string(digit),
                      key_box(ui, box, i, 3), Look::key)) {
            tapped = static_cast<char>('0' + digit);
        }
    }
    if (ui.button("digit 0", "0", key_box(ui, box, 9, 3), Look::key)) {
        tapped = '0';
    }
    if (with_point && ui.button("point", ".", key_box(ui, box, 10, 3), Look::key)) {
        tapped = '.';
    }
    if (ui.button("back", "take\nback", key_box(ui, box, 11, 3), Look::key)) {
        tapped = '\b';
    }
    return tapped;
}

void draw_length_keys(Ui& ui, LengthDraft& draft, Box box, bool metric) {
    if (!metric && draft.field == 2) {
        draw_sixteenth_keys(ui, draft, box);
        return;
    }
    if (!metric && draft.field == 1) {
        draw_inch_keys(ui, draft, box);
        if (ui.button("back", "take\nback", key_box(ui, box, 15, 4), Look::key)) {
            press_back(draft, metric);
        }
        return;
    }
    const char tapped = draw_digit_keys(ui, box, false);
    if (tapped == '\b') {
        press_back(draft, metric);
    } else if (tapped != 0 && metric) {
        press_millimetre_digit(draft, tapped - '0');
    } else if (tapped != 0) {
        press_feet_digit(draft, tapped - '0');
    }
}

float draw_length_fields(Ui& ui, LengthDraft& draft, float x, float y, float w, bool metric) {
    ui.figure(x, y, shown_length(draft, metric), metric ? Marks::millimetre : Marks::sixteenth);
    float used = ui.figure_height() + ui.mm(3);
    if (metric) {
        return used;
    }
    const Box strip{x, y + used, w, ui.mm(14)};
    const std::vector<Box> places = columns(strip, 3, ui.mm(gap_mm));
    const char* const labels[] = {"feet", "inches", "16ths"};
    for (int field = 0; field < 3; ++field) {
        const auto i = static_cast<std::size_t>(field);
        if (ui.button(std::string("field ") + labels[i], labels[i], places[i],
                      draft.field == field ? Look::chosen : Look::plain)) {
            draft.field = field;
            draft.refused.clear();
        }
    }
    return used + strip.h;
}

}  // namespace hemline
