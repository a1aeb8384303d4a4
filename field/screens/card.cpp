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

std::string title_for(const EdgeWork& work, const Card& card) {
    std::string title = title_of(work.edge) + " · ";
    if (card.role != TrimRole::main) {
        title += card.trim_name + " ";
    }
    title += "piece " + std::to_string(card.piece) + " of " + std::to_string(card.pieces);
    if (work.edge.kind == EdgeKind::gable || work.edge.kind == EdgeKind::sidewall) {
        title += foot_of(work) == Side::left ? " · foot at the left" : " · foot at the right";
    }
    if (card.hand) {
        title += " · " + std::string(word_of(*card.hand)) + " end, " +
                 std::string(spoken(*card.hand == Side::left ? card.left : card.right));
    }
    return title;
}

std::string metal_words(const Card& card, Marks marks) {
    return (card.offcut ? "Take the offcut of " : "Take a new stick, ") +
           print_length(card.stick_length, marks);
}

std::string metal_detail(const State& state, const Card& card) {
    if (card.left_over <= Length()) {
        return "the whole of it";
    }
    const std::string left = print_length(card.left_over, state.marks);
    return card.left_over < state.job.practice.offcut_kept ? "leaves " + left
                                                           : "keep the " + left + " it leaves";
}

std::string screw_words(const Card& card, Marks marks) {
    if (card.screws.empty()) {
        return "";
    }
    std::string words = std::to_string(card.screws.size()) + " screws, first at " +
                        print_length(card.screws.front(), marks);
    if (card.screws.size() > 1) {
        words += ", last at " + print_length(card.screws.back(), marks);
    }
    return words;
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
                      "Hook the tape on the " + std::string(word_of(card.hooks)) + " end",
                      Size::bold);
    const std::string screws = screw_words(card, marks);
    y += ui.paragraph(words.x, y, words.w, "Face toward you. " + screws, Size::small,
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
        const Frame frame = open_frame(ui, state, title_of(work->edge), {{"leave", "Roof"}});
        ui.paragraph(frame.body.x, frame.body.y, frame.body.w,
                     card.problem().what + " " + card.problem().mend);
        if (frame.tapped == "leave") {
            wish.go = Where{Place::roof, {}};
        }
        return wish;
    }
    const bool can_cut = card->waits_for.empty() && card->stick > 0;
    const Frame frame = open_frame(
        ui, state, title_for(*work, *card),
        {{"leave", "Roof"},
         {"run", "The run"},
         {"folded", "Folded"},
         {"differently", "Cut\ndifferently", can_cut ? Look::plain : Look::off},
         {"spoiled", "Spoiled", can_cut ? Look::plain : Look::off, true},
         {"cut", can_cut ? "Cut as shown" : "Waits", can_cut ? Look::primary : Look::off}});
    Box body = ui.begin_scroll("card " + title_for(*work, *card), frame.body);
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
