#include "field/screens/keypad.h"

#include <numeric>
#include <string>

namespace hemline {

namespace {

constexpr float gap_mm = 3, fields_mm = 11, short_readback_mm = 52;
constexpr int inch_keys = 13;

void draw_sixteenth_keys(Ui& ui, LengthDraft& draft, Box box) {
    const KeyGrid grid(ui, box, sixteenth_keys);
    for (int n = 0; n < 16; ++n) {
        const Box place = grid.place(n);
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
    const KeyGrid grid(ui, box, inch_keys);
    for (int n = 0; n < 12; ++n) {
        const Look look = draft.inches == n ? Look::chosen : Look::key;
        if (ui.button("inches " + std::to_string(n), std::to_string(n), grid.place(n), look)) {
            press_inches(draft, n);
        }
    }
    if (ui.button("back", "take\nback", grid.last(), Look::key)) {
        press_back(draft, false);
    }
}

/// As drawn in key_grid.h.
int place_of(int digit, bool low) {
    if (digit == 0) {
        return low ? 11 : 9;
    }
    const int row = (9 - digit) / 3;
    const int column = (digit - 1) % 3;
    return row * (low ? 4 : 3) + column;
}

}  // namespace

char draw_digit_keys(Ui& ui, Box box, bool with_point) {
    const KeyGrid grid(ui, box, digit_keys);
    const bool low = grid.is_low();
    char tapped = 0;
    for (int digit = 0; digit < 10; ++digit) {
        if (ui.button("digit " + std::to_string(digit), std::to_string(digit),
                      grid.place(place_of(digit, low)), Look::key)) {
            tapped = static_cast<char>('0' + digit);
        }
    }
    if (with_point && ui.button("point", ".", grid.place(low ? 7 : 10), Look::key)) {
        tapped = '.';
    }
    if (ui.button("back", "take\nback", grid.place(low ? 3 : 11), Look::key)) {
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

float length_fields_height(const Ui& ui, bool metric, FieldsAt at) {
    const float readback = ui.figure_height() + ui.mm(2);
    return metric || at == FieldsAt::right ? readback : readback + ui.mm(fields_mm);
}

float draw_length_fields(Ui& ui, LengthDraft& draft, Box body, bool metric, FieldsAt at) {
    ui.figure(body.x, body.y, shown_length(draft, metric),
              metric ? Marks::millimetre : Marks::sixteenth);
    const float used = length_fields_height(ui, metric, at);
    if (metric) {
        return used;
    }
    Box strip{body.x, body.y + used - ui.mm(fields_mm), body.w, ui.mm(fields_mm)};
    if (at == FieldsAt::right) {
        strip.y = body.y + (ui.figure_height() - strip.h) / 2;
        take_left(strip, ui.mm(short_readback_mm));
    }
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
    return used;
}

}  // namespace hemline
