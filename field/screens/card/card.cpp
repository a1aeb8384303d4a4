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

/// `below`: marks that are not in sight yet.
std::vector<Action> actions_of(const Ui& ui, const State& state, const Card& card, bool can_cut,
                               std::size_t below) {
    const Look other = can_cut ? Look::plain : Look::off;
    std::vector<Action> actions = {{"leave", say("Roof")},
                                   {"run", say("The run")},
                                   {"folded", say("Folded")},
                                   {"differently", say("Cut differently"), other},
                                   {"spoiled", say("Spoiled"), other}};
    if (const std::vector<Fact> cuts = cuts_in_one_go(state, card); can_cut && cuts.size() > 1) {
        if (is_low(ui)) {  // there is no room for both
            actions.erase(actions.begin() + 1);
        }
        actions.push_back({"cut alike", words_of(cuts), below > 0 ? Look::off : Look::plain});
    }
    actions.push_back(
        {"cut", can_cut ? say("Cut as shown") : say("Waits"), can_cut ? Look::primary : Look::off});
    see_first(actions.back(), below,
              say_count("{1} more mark below", "{1} more marks below", std::int64_t(below)));
    return actions;
}

/// The heading as a whole if all marks have room below it, else in brief; where even then none has,
/// its words come after the marks, the last of which is the length.
void draw_card_body(Ui& ui, const State& state, const Card& card, std::string_view list, Box body) {
    const Tapes tapes = tapes_of(state);
    const float waits = card.waits_for.empty()
                            ? 0
                            : ui.paragraph_height(body.w, card.waits_for, Size::title) + ui.mm(3);
    Box below = body;
    take_top(below, heading_height(ui, state, card, Heading::whole, body.w) + waits);
    const bool whole = piece_height(ui, card, tapes, below) <= below.h + 1;
    below = body;
    take_top(below, heading_height(ui, state, card, Heading::brief, body.w));
    const bool brief = has_room_for_heading(ui, below);
    if (whole || brief) {
        draw_card_heading(ui, state, card, whole ? Heading::whole : Heading::brief, body);
    }
    const Text after = whole   ? Text()
                       : brief ? legs_and_screws(card)
                               : joined({metal_and_hook(state, card), legs_and_screws(card)}, "; ");
    if (waits > 0) {
        take_top(body,
                 ui.paragraph(body.x, body.y, body.w, card.waits_for, Size::title) + ui.mm(3));
    }
    draw_piece(ui, card, tapes, body, list, after);
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
    const std::string list = "card " + title_for(*work, *card).english();
    const Frame frame = open_frame(ui, state, title_for(*work, *card),
                                   actions_of(ui, state, *card, can_cut, ui.left_below(list)));
    Wished wish = frame.wish;
    draw_card_body(ui, state, *card, list, frame.body);
    if (frame.tapped == below_target) {
        ui.go_on_below(list);
    } else if (frame.tapped == "cut") {
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
