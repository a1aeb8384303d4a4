#include "field/screens/card/card_heading.h"

#include <algorithm>

#include "engine/work/mark_deeds.h"
#include "field/screens/page/other_tape.h"

namespace hemline {

namespace {

Text metal_words(const Card& card) {
    const Length length = card.stick_length;
    return card.offcut ? say("Take the drop of {1}", length) : say("Take a new stick, {1}", length);
}

Text metal_detail(const State& state, const Card& card) {
    if (card.left_over <= Length()) {
        return say("the whole of it");
    }
    const Length left = card.left_over;
    return card.left_over < state.job.practice.offcut_kept ? say("leaves {1}", left)
                                                           : say("keep the {1} it leaves", left);
}

/// The cut length, on the other tape beside it or below it; returns the height used.
float draw_cut(Ui& ui, const Card& card, Tapes tapes, Box box) {
    const float used = ui.figure(box.x, box.y, card.cut, tapes.marks) + ui.mm(6);
    const float h = ui.figure_height();
    const Text other = on_other_tape(card.cut, tapes);
    if (used + ui.text_width(other, Size::body) <= box.w) {
        ui.text(box.x + used, box.y + h - ui.line_height(Size::body), other);
        return h;
    }
    return h + ui.paragraph(box.x, box.y + h, box.w, other) + ui.mm(1);
}

}  // namespace

void draw_card_heading(Ui& ui, const State& state, const Card& card, Box& body) {
    const Tapes tapes = tapes_of(state);
    const float top = body.y;
    Box words = body;
    Box figure = body;
    if (!ui.portrait()) {
        const float figure_w = ui.figure_width(card.cut, tapes.marks, Size::figure);
        figure = take_left(words, std::max(figure_w + ui.mm(8), body.w * 0.44F));
        figure.w -= ui.mm(4);
    }
    const float left = body.y + draw_cut(ui, card, tapes, figure);
    float y = ui.portrait() ? left + ui.mm(3) : body.y;
    y += ui.paragraph(words.x, y, words.w, metal_words(card), Size::bold);
    y += ui.paragraph(words.x, y, words.w, metal_detail(state, card), Size::small,
                      ui.colours().soft);
    y += ui.paragraph(words.x, y, words.w,
                      card.hooks == Side::left ? say("Hook the tape on the left end")
                                               : say("Hook the tape on the right end"),
                      Size::bold);
    const Text screws = joined({leg_toward_you(card), screws_told(card)}, "; ");
    if (ui.text_width(screws, Size::small) > words.w) {
        words.x = body.x;
        words.w = body.w;
        y = std::max(y, left);
    }
    y += ui.paragraph(words.x, y, words.w, screws, Size::small, ui.colours().soft);
    take_top(body, std::max(y, left) - top + ui.mm(3));
}

}  // namespace hemline
