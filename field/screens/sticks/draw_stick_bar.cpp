#include "field/screens/sticks/draw_stick_bar.h"

#include <imgui.h>

#include "field/screens/card/draw_piece.h"

namespace hemline {

namespace {

float share_of(Length part, Length whole) {
    return static_cast<float>(static_cast<double>(part.nm()) / static_cast<double>(whole.nm()));
}

/// Words in the middle of a box, where it is wide enough for them.
bool write_in(Ui& ui, Box box, const Text& words, Size size, float y) {
    if (ui.text_width(words, size) + ui.mm(1.5F) > box.w) {
        return false;
    }
    ui.text(box.mid_x(), y, words, size, Align::centre);
    return true;
}

void draw_piece_of(Ui& ui, const SticksAlike::Piece& piece, Marks marks, Box box, bool is_even) {
    ui.ink()->AddRectFilled({box.x, box.y}, {box.right(), box.bottom()},
                            is_even ? ui.colours().metal : ui.colours().metal_low);
    ui.ink()->AddRect({box.x, box.y}, {box.right(), box.bottom()}, ui.colours().ink, 0, 0,
                      ui.mm(0.4F));
    std::string names;
    for (const std::string& name : piece.names) {
        names += (names.empty() ? "" : " ") + name;
    }
    const float y = box.mid_y() - ui.line_height(Size::small) / 2;
    const std::string& first = piece.names.front();
    const std::string more = piece.names.size() > 1 ? first + " …" : first;
    const std::string length = print_length(piece.cut, marks);
    for (const std::string& words : {names + "   " + length, more + "   " + length, names, more}) {
        if (write_in(ui, box, Text(words), Size::small, y)) {
            return;
        }
    }
}

}  // namespace

Leftover leftover_of(const PlannedStick& stick, const Practice& practice) {
    if (stick.left <= Length()) {
        return Leftover::none;
    }
    return stick.left >= practice.offcut_kept ? Leftover::kept : Leftover::scrap;
}

void draw_stick_bar(Ui& ui, const State& state, const SticksAlike& sticks, Length longest,
                    Box bar) {
    const PlannedStick& stick = *sticks.sticks.front();
    const float small = ui.line_height(Size::small);
    Box metal = bar;
    take_bottom(metal, small + ui.mm(0.5F));
    const auto at = [&](Length from) { return bar.x + bar.w * share_of(from, longest); };
    bool is_even = true;
    float written_to = bar.x;
    for (const SticksAlike::Piece& piece : sticks.pieces) {
        const Length end = piece.from + piece.cut;
        const Box own{at(piece.from), metal.y, at(end) - at(piece.from), metal.h};
        draw_piece_of(ui, piece, state.marks, own, is_even);
        is_even = !is_even;
        const std::string mark = print_length(end, state.marks);
        const float w = ui.text_width(Text(mark), Size::small);
        if (own.right() - w > written_to) {
            ui.text(own.right(), metal.bottom() + ui.mm(0.5F), Text(mark), Size::small,
                    Align::right, ui.colours().soft);
            written_to = own.right() + ui.mm(2);
        }
    }
    const Leftover leftover = leftover_of(stick, state.job.practice);
    if (leftover == Leftover::none) {
        return;
    }
    const Box left{at(stick.used), metal.y, at(stick.length) - at(stick.used), metal.h};
    if (leftover == Leftover::scrap) {
        draw_hatching(ui, left);
    }
    ui.ink()->AddRect({left.x, left.y}, {left.right(), left.bottom()}, ui.colours().ink, 0, 0,
                      ui.mm(0.4F));
    if (leftover == Leftover::kept) {
        const float y = left.mid_y() - small / 2;
        write_in(ui, left, say("{1} kept", stick.left), Size::small, y) ||
            write_in(ui, left, say("kept"), Size::small, y);
    }
}

}  // namespace hemline
