// The cut card: the length, where it comes from, and the piece with every mark on the tape.
#include <imgui.h>

#include <algorithm>

#include "engine/work/readiness.h"
#include "field/screens/draw_piece.h"
#include "field/screens/edge_view.h"
#include "field/screens/frame.h"
#include "field/screens/screens.h"

namespace hemline {

namespace {

Text title_for(const EdgeWork& work, const Card& card) {
    Text piece = card.role == TrimRole::main
                     ? say("{1} · piece {2} of {3}", title_of(work.edge), card.piece, card.pieces)
                     : say("{1} · {2} piece {3} of {4}", title_of(work.edge), card.trim_name,
                           card.piece, card.pieces);
    if (work.edge.kind == EdgeKind::gable || work.edge.kind == EdgeKind::sidewall) {
        piece = foot_of(work) == Side::left ? say("{1} · foot at the left", piece)
                                            : say("{1} · foot at the right", piece);
    }
    if (!card.hand) {
        return piece;
    }
    return *card.hand == Side::left ? say("{1} · left end, {2}", piece, spoken(card.left))
                                    : say("{1} · right end, {2}", piece, spoken(card.right));
}

Text metal_words(const Card& card, Marks marks) {
    const std::string length = print_length(card.stick_length, marks);
    return card.offcut ? say("Take the offcut of {1}", length)
                       : say("Take a new stick, {1}", length);
}

Text metal_detail(const State& state, const Card& card) {
    if (card.left_over <= Length()) {
        return say("the whole of it");
    }
    const std::string left = print_length(card.left_over, state.marks);
    return card.left_over < state.job.practice.offcut_kept ? say("leaves {1}", left)
                                                           : say("keep the {1} it leaves", left);
}

Text screw_words(const Card& card, Marks marks) {
    if (card.screws.empty()) {
        return {};
    }
    const std::string first = print_length(card.screws.front(), marks);
    return card.screws.size() == 1
               ? say("1 screw, at {1}", first)
               : say("{1} screws, first at {2}, last at {3}", card.screws.size(), first,
                     print_length(card.screws.back(), marks));
}

/// The cut length at the left, what to take and hook beside it (below it in portrait).
void draw_heading(Ui& ui, const State& state, const Card& card, Box& body) {
    const Marks marks = state.marks;
    const float top = body.y;
    const float figure_w = ui.figure(body.x, body.y, card.cut, marks);
    Box words = body;
    float y = body.y;
    if (ui.portrait()) {
        y += ui.figure_height() + ui.mm(3);
    } else {
        take_left(words, std::max(figure_w + ui.mm(8), body.w * 0.44F));
    }
    y += ui.paragraph(words.x, y, words.w, metal_words(card, marks), Size::bold);
    y += ui.paragraph(words.x, y, words.w, metal_detail(state, card), Size::small,
                      ui.colours().soft);
    y += ui.paragraph(words.x, y, words.w,
                      card.hooks == Side::left ? say("Hook the tape on the left end")
                                               : say("Hook the tape on the right end"),
                      Size::bold);
    const Text screws = screw_words(card, marks);
    y += ui.paragraph(words.x, y, words.w, say("Face toward you. {1}", screws), Size::small,
                      ui.colours().soft);
    take_top(body, std::max(y - top, ui.figure_height()) + ui.mm(3));
}

PieceCut cut_as_shown(const Card& card) {
    return {card.edge, card.role, card.piece, card.cut, {card.stick_length, card.offcut}};
}

}  // namespace

Wish draw_card(Ui& ui, const State& state) {
    Wish wish;
    const EdgeWork* const work = edge_of(state, state.where.edge);
    if (work == nullptr) {
        wish.go = Where{Place::roof, {}};
        return wish;
    }
    const Result<Card> card = card_in_hand(state, state.where);
    if (!card) {
        const Frame frame = open_frame(ui, state, title_of(work->edge), {{"leave", say("Roof")}});
        ui.paragraph(frame.body.x, frame.body.y, frame.body.w, said(card.problem()));
        if (frame.tapped == "leave") {
            wish.go = Where{Place::roof, {}};
        }
        return wish;
    }
    const bool can_cut = card->waits_for.empty() && card->stick > 0;
    const Frame frame =
        open_frame(ui, state, title_for(*work, *card),
                   {{"leave", say("Roof")},
                    {"run", say("The run")},
                    {"folded", say("Folded")},
                    {"differently", say("Cut differently"), can_cut ? Look::plain : Look::off},
                    {"spoiled", say("Spoiled"), can_cut ? Look::plain : Look::off, true},
                    {"cut", can_cut ? say("Cut as shown") : say("Waits"),
                     can_cut ? Look::primary : Look::off}});
    Box body = ui.begin_scroll("card " + title_for(*work, *card).english(), frame.body);
    const float top = body.y;
    draw_heading(ui, state, *card, body);
    if (!card->waits_for.empty()) {
        take_top(body,
                 ui.paragraph(body.x, body.y, body.w, card->waits_for, Size::title) + ui.mm(3));
    }
    const float heading = body.y - top;
    body.h = std::max(frame.body.h - heading, piece_height_least(ui, *card, state.marks, body.w));
    draw_piece(ui, *card, state.marks, body);
    ui.end_scroll(heading + body.h);
    if (frame.tapped == "cut") {
        wish.fact = cut_as_shown(*card);
    } else if (frame.tapped == "spoiled") {
        wish.go = state.where;
        wish.go->place = Place::spoiled;
    } else if (frame.tapped == "differently") {
        wish.go = state.where;
        wish.go->place = Place::differently;
    } else if (frame.tapped == "folded") {
        wish.go = state.where;
        wish.go->place = Place::folded;
    } else if (frame.tapped == "run") {
        wish.go = Where{Place::run, work->edge.id};
    } else if (frame.tapped == "leave") {
        wish.go = Where{Place::roof, {}};
    }
    return wish;
}

}  // namespace hemline
