// What really happened at the sawhorse: a piece cut to another length, or metal spoiled.
#include "engine/words/result.h"
#include "field/screens/page/frame.h"
#include "field/screens/page/keypad.h"
#include "field/screens/page/readback.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"

namespace hemline {

namespace {

constexpr float above_keys_mm = 40;  // what the card says, on an upright screen

/// Why this length cannot have been cut from that metal; empty when it can.
Text impossible(Length length, const Card& card) {
    if (length <= card.stick_length) {
        return {};
    }
    return say("Only {1} of metal lies there. Measure again.", card.stick_length);
}

}  // namespace

Wished draw_real_cut(Ui& ui, const State& state, Drafts& drafts) {
    RealCutDraft& draft = drafts.real_cut;
    const bool spoiled = state.where.screen == Screen::spoiled;
    const bool metric = state.marks == Marks::millimetre;
    Where back = state.where;
    back.screen = Screen::card;
    const Result<Card> card = card_in_hand(state, state.where);
    if (!card || card->stick == 0) {
        return Go{{Screen::roof, {}}};
    }
    take_typed(ui, draft.length, metric);
    const Result<Length> length = length_of(draft.length, metric);
    const Text refused = length ? impossible(*length, *card) : length.problem().what;
    const Frame frame =
        open_frame(ui, state,
                   spoiled ? say("Spoiled · how much metal is lost?")
                           : say("Cut differently · how long is it really?"),
                   {{"leave", say("Back to the card")},
                    {"as planned", spoiled ? say("The whole piece") : say("As planned")},
                    {"keep", spoiled ? say("This much is lost") : say("It is this long"),
                     refused.empty() ? Look::primary : Look::off}},
                   {metric ? digit_keys : sixteenth_keys, above_keys_mm});
    Wished wish = frame.wish;
    draw_length_keys(ui, draft.length, frame.keys, metric);
    Box body = frame.body;
    take_top(body, draw_length_fields(ui, draft.length, body, tapes_of(state)) + ui.mm(3));
    Box words = ui.begin_scroll("real cut words", body);
    const float top = words.y;
    take_top(words, ui.paragraph(words.x, words.y, words.w,
                                 say("The card says {1}.", length_on(card->cut, tapes_of(state)))) +
                        ui.mm(1));
    take_top(words, ui.paragraph(words.x, words.y, words.w,
                                 !draft.length.refused.empty() ? draft.length.refused
                                 : refused.empty() ? say("The rest is planned again at once.")
                                                   : refused));
    ui.end_scroll(words.y - top);
    const MetalTaken metal{card->stick_length, card->offcut};
    if (frame.tapped == "leave") {
        wish = Go{back};
    } else if (frame.tapped == "as planned") {
        draft.length = draft_of(card->cut, metric);
    } else if (frame.tapped == "keep" && refused.empty()) {
        if (spoiled) {
            wish = Keep{PieceSpoiled{card->edge, card->role, card->piece, *length, metal}};
        } else {
            wish = Keep{PieceCut{card->edge, card->role, card->piece, *length, metal}};
        }
    }
    return wish;
}

}  // namespace hemline
