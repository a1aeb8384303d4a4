#include "field/screens/page/key_grid.h"

#include <algorithm>

#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr int rows_usual = 4, rows_low = 3;
constexpr float body_least_mm = 60, margins_mm = 8;

/// Width or height of so many keys of the least size.
float span(const Ui& ui, int keys) {
    return ui.mm(static_cast<float>(keys) * (key_min + gap_mm) - gap_mm);
}

/// Side of each key when so many share the room.
float side(float room, int keys, float gap) {
    const auto n = static_cast<float>(keys);
    return (room - gap * (n - 1)) / n;
}

Box take_at_hand(const Ui& ui, Box& box, float w) {
    return ui.hand() == Hand::right ? take_right(box, w) : take_left(box, w);
}

int columns_of(int keys, int tall) { return (keys + tall - 1) / tall; }

int tall_of(const Ui& ui, Box box) {
    return box.h < span(ui, rows_usual) - 1 ? rows_low : rows_usual;
}

}  // namespace

bool erases_beside_fields(const Ui& ui) {
    const float keys = span(ui, columns_of(sixteenth_keys, rows_usual));
    return ui.portrait() && ui.page().w < keys + ui.mm(margins_mm);
}

Box key_room(const Ui& ui) { return {0, 0, span(ui, 4), span(ui, rows_usual)}; }

Box keys_beside(const Ui& ui, Box& body, int keys, float gap) {
    int wide = columns_of(keys, rows_usual);
    if (body.w - span(ui, wide) - gap < ui.mm(body_least_mm)) {
        --wide;
    }
    Box box = take_at_hand(ui, body, span(ui, wide));
    take_at_hand(ui, body, gap);
    box.h = std::min(box.h, span(ui, rows_usual));
    return box;
}

Box keys_below(const Ui& ui, Box& body, int keys, float above) {
    const float gap = ui.mm(gap_mm);
    const bool low = body.h - gap - span(ui, rows_usual) < above;
    Box box = take_bottom(body, span(ui, low ? rows_low : rows_usual));
    take_bottom(body, gap);
    const int wide = columns_of(keys, rows_usual);
    const int least = low ? 4 : wide;
    const float w = span(ui, span(ui, wide) > body.w ? 4 : std::max(wide, least));
    return take_at_hand(ui, box, w);
}

bool holds_keys(const Ui& ui, Box box, int keys) {
    return span(ui, columns_of(keys, tall_of(ui, box))) <= box.w + 1;
}

KeyGrid::KeyGrid(Ui& ui, Box box, int keys) : ui_(ui), box_(box), tall_(tall_of(ui, box)) {
    wide_ = columns_of(keys, tall_);
    scrolls_ = box.h < span(ui, tall_) - 1;
    if (scrolls_) {
        box_ = ui.begin_scroll("keys", box, span(ui, tall_));
        box_.w = box.w;
    }
}

KeyGrid::~KeyGrid() {
    if (scrolls_) {
        ui_.end_scroll();
    }
}

Box KeyGrid::place(int index) const {
    const float gap = ui_.mm(gap_mm);
    const float w = side(box_.w, wide_, gap);
    const float h = side(box_.h, tall_, gap);
    const int row = index / wide_;
    const int column = index % wide_;
    return {box_.x + static_cast<float>(column) * (w + gap),
            box_.y + static_cast<float>(row) * (h + gap), w, h};
}

bool KeyGrid::is_low() const { return tall_ == rows_low; }

}  // namespace hemline
