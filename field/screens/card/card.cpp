// The cut card: the length, where it comes from, and the piece with every mark on the tape.
#include "engine/roof/edge_shape.h"
#include "engine/words/result.h"
#include "engine/work/confirm.h"
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
    const bool has_hand = !joins_two_roofs(work.edge.kind) || has_two_pitches(work.edge);
    if (is_sloped(work.edge.kind) && has_hand) {
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

/// This cut and those after it that are made in one go, up to the first that is not: one touch says
/// so. An apprentice cuts each by itself.
std::vector<Fact> cuts_in_one_go(const State& state, const Card& card) {
    std::vector<Fact> cuts = {cut_as_shown(card)};
    const Result<Card> planned =
        make_card(state.job, state.plan, state.catalogue, card.edge, card.role, card.piece);
    for (int piece = card.piece + 1; state.way != Way::learn && planned && piece <= card.pieces;
         ++piece) {
        const Result<Card> next =
            make_card(state.job, state.plan, state.catalogue, card.edge, card.role, piece);
        if (!next || !are_cut_in_one_go(*planned, *next)) {
            break;
        }
        cuts.emplace_back(cut_as_shown(*next));
    }
    return cuts;
}

/// "All 3 alike cut", "All 2 cut: 10 ft, 3 ft 5 in".
Text words_of(const std::vector<Fact>& cuts) {
    std::vector<Text> lengths;
    for (const Fact& cut : cuts) {
        const Text length = std::get<PieceCut>(cut).cut;
        if (lengths.empty() || !(lengths.back() == length)) {
            lengths.push_back(length);
        }
    }
    return lengths.size() == 1 ? say("All {1} alike cut", cuts.size())
                               : say("All {1} cut: {2}", cuts.size(), joined(lengths, ", "));
}

std::vector<Action> actions_of(const State& state, const Card& card, bool can_cut) {
    std::vector<Action> actions = {
        {"leave", say("Roof")},
        {"run", say("The run")},
        {"folded", say("Folded")},
        {"differently", say("Cut differently"), can_cut ? Look::plain : Look::off},
        {"spoiled", say("Spoiled"), can_cut ? Look::plain : Look::off, true}};
    if (const std::vector<Fact> cuts = cuts_in_one_go(state, card); can_cut && cuts.size() > 1) {
        actions.push_back({"cut alike", words_of(cuts)});
    }
    actions.push_back(
        {"cut", can_cut ? say("Cut as shown") : say("Waits"), can_cut ? Look::primary : Look::off});
    return actions;
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
        open_frame(ui, state, title_for(*work, *card), actions_of(state, *card, can_cut));
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
    } else if (frame.tapped == "cut alike") {
        wish = KeepAll{cuts_in_one_go(state, *card)};
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
