#include "field/screens/keypad.h"

#include <algorithm>
#include <numeric>
#include <string>

namespace hemline {

namespace {

constexpr float gap_mm = 3;
constexpr float fields_mm = 11;
constexpr int rows_usual = 4, rows_low = 3;
constexpr int inch_keys = 13;

/// Width or height of so many keys of the least size.
float span(const Ui& ui, int keys) {
    return ui.mm(static_cast<float>(keys) * (key_min + gap_mm) - gap_mm);
}

int columns_of(int keys, int tall) { return (keys + tall - 1) / tall; }

bool lacks_room(const Ui& ui, float h) { return h < span(ui, rows_usual) - 1; }

/// Keys in rows, never less than their least size: in a box too low for them they scroll.
class KeyGrid {
  public:
    KeyGrid(Ui& ui, Box box, int keys)
        : ui_(ui), box_(box), gap_(ui.mm(gap_mm)), tall_(rows_usual) {
        if (lacks_room(ui, box.h) && span(ui, columns_of(keys, rows_low)) <= box.w + 1) {
            tall_ = rows_low;
        }
        wide_ = columns_of(keys, tall_);
        scrolls_ = box.h < span(ui, tall_) - 1;
        if (scrolls_) {
            box_ = ui.begin_scroll("keys", box, span(ui, tall_));
        }
    }
    KeyGrid(const KeyGrid&) = delete;
    KeyGrid& operator=(const KeyGrid&) = delete;
    ~KeyGrid() {
        if (scrolls_) {
            ui_.end_scroll();
        }
    }
    [[nodiscard]] Box place(int index) const {
        const float w = side(box_.w, wide_);
        const float h = side(box_.h, tall_);
        return {box_.x + static_cast<float>(index % wide_) * (w + gap_),
                box_.y + static_cast<float>(index / wide_) * (h + gap_), w, h};
    }
    [[nodiscard]] Box last() const { return place(wide_ * tall_ - 1); }
    [[nodiscard]] bool is_low() const { return tall_ == rows_low; }

  private:
    [[nodiscard]] float side(float room, int keys) const {
        const auto n = static_cast<float>(keys);
        return (room - gap_ * (n - 1)) / n;
    }
    Ui& ui_;
    Box box_;
    float gap_;
    int tall_, wide_ = 0;
    bool scrolls_ = false;
};

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

//   7 8 9     7 8 9 back
//   4 5 6     4 5 6 .
//   1 2 3     1 2 3 0       in a low box
//   0 . back
int place_of(int digit, bool low) {
    if (digit == 0) {
        return low ? 11 : 9;
    }
    const int row = (9 - digit) / 3;
    const int column = (digit - 1) % 3;
    return row * (low ? 4 : 3) + column;
}

}  // namespace

Box key_room(const Ui& ui) { return {0, 0, span(ui, 4), span(ui, rows_usual)}; }

Box take_keys(const Ui& ui, Box& body, int keys, float beside_mm) {
    const float w = span(ui, columns_of(keys, rows_usual));
    if (ui.portrait()) {
        const float above = ui.figure_height() + ui.mm(fields_mm + 2 * gap_mm);
        Box box = take_bottom(body, std::min(span(ui, rows_usual), body.h - above));
        take_bottom(body, ui.mm(gap_mm));
        box.w = std::min(box.w, w);
        return box;
    }
    const float w_low = span(ui, columns_of(keys, rows_low));
    const float gap = ui.mm(8);
    const bool low = lacks_room(ui, body.h) && body.w - w_low - gap >= ui.mm(beside_mm);
    Box box = take_right(body, low ? w_low : w);
    take_right(body, gap);
    box.h = std::min(box.h, span(ui, low ? rows_low : rows_usual));
    return box;
}

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

float draw_length_fields(Ui& ui, LengthDraft& draft, float x, float y, float w, bool metric) {
    ui.figure(x, y, shown_length(draft, metric), metric ? Marks::millimetre : Marks::sixteenth);
    float used = ui.figure_height() + ui.mm(2);
    if (metric) {
        return used;
    }
    const Box strip{x, y + used, w, ui.mm(fields_mm)};
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
