// The cut card: the length, where it comes from, and the piece with every mark on the tape.
#include "engine/roof/edge_shape.h"
#include "engine/work/readiness.h"
#include "field/screens/card/card_heading.h"
#include "field/screens/card/draw_piece.h"
#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

Text title_for(const EdgeWork& work, const Card& card) {
    Text piece = card.role == TrimRole::main
                     ? say("{1} · piece {2} of {3}", title_of(work.edge), card.piece, card.pieces)
                     : say("{1} · {2} piece {3} of {4}", title_of(work.edge), card.trim_name,
                           card.piece, card.pieces);
    if (is_sloped(work.edge.kind) && !joins_two_roofs(work.edge.kind)) {
        piece = foot_of(work) == Side::left ? say("{1} · foot at the left", piece)
                                            : say("{1} · foot at the right", piece);
    }
    if (!card.hand) {
        return piece;
    }
    return *card.hand == Side::left ? say("{1} · left end, {2}", piece, spoken(card.left))
                                    : say("{1} · right end, {2}", piece, spoken(card.right));
}

PieceCut cut_as_shown(const Card& card) {
    return {card.edge, card.role, card.piece, card.cut, {card.stick_length, card.offcut}};
}

}  // namespace

Wished draw_card(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const EdgeWork* const work = edge_of(state, state.where.edge);
    if (work == nullptr) {
        return Go{{Screen::roof, {}}};
    }
    const Result<Card> card = card_in_hand(state, state.where);
    if (!card) {
        const Frame frame = open_frame(ui, state, title_of(work->edge), {{"leave", say("Roof")}});
        Wished wish = frame.wish;
        ui.paragraph(frame.body.x, frame.body.y, frame.body.w, said(card.problem()));
        if (frame.tapped == "leave") {
            wish = Go{{Screen::roof, {}}};
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
    Wished wish = frame.wish;
    Box body = ui.begin_scroll("card " + title_for(*work, *card).english(), frame.body);
    const float top = body.y;
    draw_card_heading(ui, state, *card, body);
    if (!card->waits_for.empty()) {
        take_top(body,
                 ui.paragraph(body.x, body.y, body.w, card->waits_for, Size::title) + ui.mm(3));
    }
    const float heading = body.y - top;
    body.h = frame.body.h - heading;
    const Tapes tapes = tapes_of(state);
    body.h = piece_height(ui, *card, tapes, body);
    draw_piece(ui, *card, tapes, body);
    ui.end_scroll(heading + body.h);
    if (frame.tapped == "cut") {
        wish = Keep{cut_as_shown(*card)};
    } else if (frame.tapped == "spoiled") {
        wish = Go{at(state.where, Screen::spoiled)};
    } else if (frame.tapped == "differently") {
        wish = Go{at(state.where, Screen::differently)};
    } else if (frame.tapped == "folded") {
        wish = Go{at(state.where, Screen::folded)};
    } else if (frame.tapped == "run") {
        wish = Go{{Screen::run, work->edge.id}};
    } else if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    }
    return wish;
}

}  // namespace hemline
