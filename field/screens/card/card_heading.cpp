#include "field/screens/card/card_heading.h"

#include <algorithm>
#include <vector>

#include "engine/work/mark_deeds.h"
#include "field/screens/page/other_tape.h"

namespace hemline {

namespace {

constexpr float below_mm = 3, brief_below_mm = 1;
constexpr float beside_mm_least = 60;  // of words beside the length, in brief

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

struct HeadingLine {
    Box box;
    Text words;
    Size size;
    bool soft = false;
};

/// Where everything lies, from the top left of the heading.
struct HeadingLaid {
    Size figure = Size::figure;
    std::vector<HeadingLine> lines;
    float h = 0;
};

/// Puts a paragraph below the others of its column.
void add(const Ui& ui, HeadingLaid& laid, float x, float& y, float w, const Text& words, Size size,
         bool soft = false) {
    const float h = ui.paragraph_height(w, words, size);
    laid.lines.push_back({{x, y, w, h}, words, size, soft});
    y += h;
}

/// The length on the other tape, beside it or below it; returns the height of both.
float add_other_tape(const Ui& ui, HeadingLaid& laid, const Card& card, Tapes tapes, float w) {
    const Text other = on_other_tape(card.cut, tapes);
    float h = ui.figure_height(laid.figure, tapes.marks);
    if (other.empty()) {
        return h;
    }
    const float used = ui.figure_width(card.cut, tapes.marks, laid.figure) + ui.mm(6);
    const float line = ui.line_height(Size::body), other_w = ui.text_width(other, Size::body) + 1;
    if (used + other_w <= w) {
        laid.lines.push_back({{used, h - line, other_w, line}, other, Size::body});
        return h;
    }
    add(ui, laid, 0, h, w, other, Size::body);
    return h + ui.mm(1);
}

Text hook_words(const Card& card) {
    return card.hooks == Side::left ? say("Hook the tape on the left end")
                                    : say("Hook the tape on the right end");
}

HeadingLaid brief_heading(const Ui& ui, const State& state, const Card& card, float w) {
    const Tapes tapes = tapes_of(state);
    HeadingLaid laid{Size::title, {}, 0};
    const float figure_w = ui.figure_width(card.cut, tapes.marks, Size::title) + ui.mm(4);
    const bool beside = w - figure_w >= ui.mm(beside_mm_least);
    const float left = add_other_tape(ui, laid, card, tapes, beside ? figure_w : w);
    const float x = beside ? figure_w : 0;
    float y = beside ? 0 : left;
    add(ui, laid, x, y, w - x, joined({metal_words(card), metal_detail(state, card)}, "; "),
        Size::small);
    const bool fits = ui.text_width(hook_words(card), Size::bold) < w - x;
    add(ui, laid, x, y, w - x, hook_words(card), fits ? Size::bold : Size::small);
    laid.h = std::max(left, y) + ui.mm(brief_below_mm);
    return laid;
}

HeadingLaid whole_heading(const Ui& ui, const State& state, const Card& card, float w) {
    const Tapes tapes = tapes_of(state);
    HeadingLaid laid;
    float figure_w = w, x = 0;
    if (!ui.portrait()) {
        x = std::max(ui.figure_width(card.cut, tapes.marks, Size::figure) + ui.mm(8), w * 0.44F);
        figure_w = x - ui.mm(4);
    }
    const float left = add_other_tape(ui, laid, card, tapes, figure_w);
    float y = ui.portrait() ? left + ui.mm(3) : 0;
    add(ui, laid, x, y, w - x, metal_words(card), Size::bold);
    add(ui, laid, x, y, w - x, metal_detail(state, card), Size::small, true);
    add(ui, laid, x, y, w - x, hook_words(card), Size::bold);
    const Text screws = legs_and_screws(card);
    if (ui.text_width(screws, Size::small) > w - x) {
        x = 0;
        y = std::max(y, left);
    }
    add(ui, laid, x, y, w - x, screws, Size::small, true);
    laid.h = std::max(y, left) + ui.mm(below_mm);
    return laid;
}

HeadingLaid heading_laid(const Ui& ui, const State& state, const Card& card, Heading heading,
                         float w) {
    return heading == Heading::whole ? whole_heading(ui, state, card, w)
                                     : brief_heading(ui, state, card, w);
}

}  // namespace

Text legs_and_screws(const Card& card) {
    return joined({leg_toward_you(card), screws_told(card)}, "; ");
}

Text metal_and_hook(const State& state, const Card& card) {
    return joined({metal_words(card), metal_detail(state, card), hook_words(card)}, "; ");
}

float heading_height(const Ui& ui, const State& state, const Card& card, Heading heading, float w) {
    return heading_laid(ui, state, card, heading, w).h;
}

void draw_card_heading(Ui& ui, const State& state, const Card& card, Heading heading, Box& body) {
    const HeadingLaid laid = heading_laid(ui, state, card, heading, body.w);
    ui.figure(body.x, body.y, card.cut, state.marks, laid.figure);
    for (const HeadingLine& line : laid.lines) {
        ui.paragraph(body.x + line.box.x, body.y + line.box.y, line.box.w, line.words, line.size,
                     line.soft ? ui.colours().soft : ui.colours().ink);
    }
    take_top(body, laid.h);
}

}  // namespace hemline
