#include "field/screens/page/keypad.h"

#include <numeric>
#include <string>

namespace hemline {

namespace {

constexpr int eighth_keys = 12;

void draw_erase(Ui& ui, LengthDraft& draft, const KeyGrid& grid) {
    if (!erases_beside_fields(ui) && ui.button("back", say("erase"), grid.last(), Look::key)) {
        press_back(draft, false);
    }
}

/// A key for so many sixteenths of an inch; true when tapped.
bool fraction_key(Ui& ui, const std::string& name, Box place, int n, bool chosen) {
    const bool tapped =
        ui.button(name, Text(n == 0 ? "0" : ""), place, chosen ? Look::chosen : Look::key);
    if (n > 0) {
        const int common = std::gcd(n, 16);
        ui.speak(name, say("{1}/{2} in", n / common, 16 / common));
        ui.fraction(place, n / common, 16 / common,
                    chosen ? ui.colours().chalk_ink : ui.colours().ink);
    }
    return tapped;
}

/// Eight keys for the eighths, and one for a sixteenth more or less.
void draw_eighth_keys(Ui& ui, LengthDraft& draft, Box box) {
    const KeyGrid grid(ui, box, eighth_keys);
    const int now = draft.sixteenths.value_or(0);
    for (int n = 0; n < 16; n += 2) {
        if (fraction_key(ui, "sixteenths " + std::to_string(n), grid.place(n / 2), n,
                         draft.sixteenths && now - now % 2 == n)) {
            press_sixteenths(draft, n);
        }
    }
    const bool odd = now % 2 == 1;
    if (ui.button("a sixteenth more", glued(say("and"), "\n1/16"), grid.place(8),
                  odd ? Look::chosen : Look::key)) {
        press_sixteenths(draft, odd ? now - 1 : now + 1);
    }
    draw_erase(ui, draft, grid);
}

void draw_sixteenth_keys(Ui& ui, LengthDraft& draft, Box box) {
    const int keys = erases_beside_fields(ui) ? sixteenth_keys - 1 : sixteenth_keys;
    if (!holds_keys(ui, box, keys)) {
        draw_eighth_keys(ui, draft, box);
        return;
    }
    const KeyGrid grid(ui, box, keys);
    for (int n = 0; n < 16; ++n) {
        // Four in a row, as on the tape between two quarters; the last column has the key to erase.
        const Box place = grid.place(n / 4 * grid.wide() + n % 4);
        if (fraction_key(ui, "sixteenths " + std::to_string(n), place, n, draft.sixteenths == n)) {
            press_sixteenths(draft, n);
        }
    }
    draw_erase(ui, draft, grid);
}

void draw_inch_keys(Ui& ui, LengthDraft& draft, Box box) {
    const KeyGrid grid(ui, box, erases_beside_fields(ui) ? inch_keys - 1 : inch_keys);
    for (int n = 0; n < 12; ++n) {
        const Look look = draft.inches == n ? Look::chosen : Look::key;
        if (ui.button("inches " + std::to_string(n), Text(std::to_string(n)), grid.place(n),
                      look)) {
            press_inches(draft, n);
        }
    }
    draw_erase(ui, draft, grid);
}

/// As drawn in key_grid.h.
int place_of(int digit, bool low) {
    if (digit == 0) {
        return low ? 7 : 9;
    }
    const int row = (9 - digit) / 3;
    const int column = (digit - 1) % 3;
    return row * (low ? 4 : 3) + column;
}

/// A comma is a point: keyboards have both. 0: no key of these.
char digit_of(char typed, bool with_point) {
    const bool is_digit = typed >= '0' && typed <= '9';
    const bool is_point = with_point && (typed == '.' || typed == ',');
    return is_digit || typed == '\b' ? typed : is_point ? '.' : '\0';
}

}  // namespace

void take_typed(Ui& ui, LengthDraft& draft, bool metric) {
    take_typed(draft, ui.keyboard().take(!draft.typed.empty()), metric);
}

char draw_digit_keys(Ui& ui, Box box, bool with_point, bool with_back) {
    const KeyGrid grid(ui, box, digit_keys);
    const bool low = grid.is_low();
    char tapped = digit_of(ui.keyboard().take_letter(), with_point);
    for (int digit = 0; digit < 10; ++digit) {
        if (ui.button("digit " + std::to_string(digit), Text(std::to_string(digit)),
                      grid.place(place_of(digit, low)), Look::key)) {
            tapped = static_cast<char>('0' + digit);
        }
    }
    if (with_point && ui.button("point", Text("."), grid.place(low ? 3 : 10), Look::key)) {
        tapped = '.';
    }
    if (with_back && ui.button("back", say("erase"), grid.last(), Look::key)) {
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
    const char tapped = draw_digit_keys(ui, box, false, metric || !erases_beside_fields(ui));
    if (tapped == '\b') {
        press_back(draft, metric);
    } else if (tapped != 0 && metric) {
        press_millimetre_digit(draft, tapped - '0');
    } else if (tapped != 0) {
        press_feet_digit(draft, tapped - '0');
    }
}

}  // namespace hemline
