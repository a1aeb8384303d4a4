// A walk begun from a usual roof: each is drawn on its button; then, drawn large with the asked
// side in chalk, its two or three lengths, and a pitch.
#include <algorithm>

#include "engine/words/result.h"
#include "field/screens/page/keypad.h"
#include "field/screens/page/readback.h"
#include "field/screens/roof/draw_roof_plan.h"
#include "field/screens/roof/pitch_page.h"
#include "field/screens/roof/roof_lines.h"
#include "field/screens/roof/roof_shapes.h"
#include "field/screens/screens.h"

namespace hemline {

namespace {

constexpr float shape_keys_above_mm = 85;
constexpr float around_drawn_mm = 3, across_part = 0.62F;  // of a roof's width: how high it is
constexpr float card_h_mm_least = 24, card_h_mm_most = 62;
constexpr float drawn_h_mm_least = 13, lengths_h_mm_least = 34, lengths_room_mm = 7;

/// How many buttons lie beside one another, and how high they are: as is best for the drawings.
struct Cards {
    int wide = 1;
    float h = 0, words_h = 0;
};
Cards cards_for(const Ui& ui, Box body) {
    const auto count = static_cast<int>(roof_shapes().size());
    const float gap = ui.mm(gap_mm);
    Cards best;
    float largest = -1;
    for (int wide = 1; wide <= count; ++wide) {
        const float w = columns(body, wide, gap).front().w;
        const auto lines = static_cast<float>((count + wide - 1) / wide);
        const float h = std::clamp((body.h - (lines - 1) * gap) / lines, ui.mm(card_h_mm_least),
                                   ui.mm(card_h_mm_most));
        float words = 0;
        for (const RoofShape& shape : roof_shapes()) {
            words = std::max(words, ui.paragraph_height(w - ui.mm(2 * around_drawn_mm),
                                                        say(shape.words), Size::bold));
        }
        const float drawn =
            std::min((w - ui.mm(2 * around_drawn_mm)) * across_part, h - words - ui.mm(9));
        if (drawn > largest + 1) {
            largest = drawn;
            best = {wide, h, words};
        }
    }
    return best;
}

bool draw_card(Ui& ui, const State& state, int shape, Box card, float words_h) {
    const RoofShape& facts = roof_shapes()[static_cast<std::size_t>(shape)];
    const bool tapped = ui.button(facts.name, Text(""), card);
    ui.speak(facts.name, say(facts.words));
    if (!ui.shows(card)) {
        return tapped;
    }
    ShapeDraft draft;
    draft.shape = shape;
    Box inside = inset(card, ui.mm(around_drawn_mm));
    const Box words = take_bottom(inside, words_h);
    take_bottom(inside, ui.mm(1.5F));
    const RoofSheet sheet = shape_sheet(state, shape_drawn(draft, false), inset(inside, ui.mm(1)));
    draw_planes(ui, sheet);
    draw_roof_lines(ui, sheet);
    const bool down = ui.pressed(facts.name);
    ui.paragraph(words.x, words.y, words.w, say(facts.words), Size::bold,
                 down ? ui.colours().chalk_ink : ui.colours().ink);
    return tapped;
}

Wished draw_shapes(Ui& ui, const State& state, ShapeDraft& draft) {
    const Frame frame = open_frame(ui, state, say("Start from a shape"),
                                   {{"leave", say("Roof")}, {"to walk", say("Walk it instead")}});
    Wished wish = frame.wish;
    const Cards cards = cards_for(ui, frame.body);
    Box list = ui.begin_scroll("shapes", frame.body);
    const float top = list.y;
    for (std::size_t i = 0; i < roof_shapes().size();) {
        for (const Box& card : columns(take_top(list, cards.h), cards.wide, ui.mm(gap_mm))) {
            if (i < roof_shapes().size() &&
                draw_card(ui, state, static_cast<int>(i), card, cards.words_h)) {
                draft.shape = static_cast<int>(i);
            }
            ++i;
        }
        take_top(list, ui.mm(gap_mm));
    }
    ui.end_scroll(list.y - top - ui.mm(gap_mm));
    if (frame.tapped == "to walk") {
        wish = Go{{Screen::walk, {}}};
    } else if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    }
    return wish;
}

/// The shape with the lengths that are keyed in on their sides, and those asked in chalk.
void draw_asked(Ui& ui, const State& state, const ShapeDraft& draft, bool metric, Box body) {
    if (body.h < ui.mm(drawn_h_mm_least)) {
        return;
    }
    const RoofShape& shape = roof_shapes()[static_cast<std::size_t>(draft.shape)];
    const bool with_lengths = body.h >= ui.mm(lengths_h_mm_least);
    RoofSheet sheet = shape_sheet(state, shape_drawn(draft, metric),
                                  inset(body, ui.mm(with_lengths ? lengths_room_mm : 1.5F)));
    for (std::size_t i = 0; i < shape.lengths; ++i) {
        const Result<Length> said = length_of(draft.lengths[i], metric);
        for (const int side : shape.asks[i].sides) {
            if (side < 0 || static_cast<std::size_t>(side) >= sheet.lines.size()) {
                continue;
            }
            SheetLine& line = sheet.lines[static_cast<std::size_t>(side)];
            line.is_asked = i == static_cast<std::size_t>(draft.asked);
            if (said && with_lengths) {
                line.says = *said;
                line.is_read = true;
            }
        }
    }
    draw_sheet(ui, sheet, body);
}

Wished draw_shape_length(Ui& ui, const State& state, ShapeDraft& draft, bool metric) {
    const RoofShape& shape = roof_shapes()[static_cast<std::size_t>(draft.shape)];
    const auto asked = static_cast<std::size_t>(draft.asked);
    LengthDraft& length = draft.lengths[asked];
    take_typed(ui, length, metric);
    const bool is_last = asked + 1 == shape.lengths;
    const bool is_said = length_of(length, metric).ok();
    const Result<WalkedBody> walk = shape_walk(state.job, draft, metric);
    const bool is_good = is_said && (!is_last || walk.ok());
    const Frame frame = open_frame(ui, state, say(shape.words),
                                   {{"leave", say("Another shape")},
                                    {"next", is_last ? say("Go on: the pitch") : say("Next length"),
                                     is_good ? Look::primary : Look::off}},
                                   {metric ? digit_keys : sixteenth_keys, shape_keys_above_mm});
    Wished wish = frame.wish;
    draw_length_keys(ui, length, frame.keys, metric);
    Box body = frame.body;
    take_top(body, ui.paragraph(body.x, body.y, body.w, say(shape.asks[asked].words), Size::title) +
                       ui.mm(2));
    take_top(body, draw_length_fields(ui, length, body, tapes_of(state)) + ui.mm(2));
    take_top(body, draw_band(ui, length.refused, body));
    if (is_last && is_said && !walk) {
        take_top(body, draw_band(ui, said(walk.problem()), body));
    }
    draw_asked(ui, state, draft, metric, body);
    if (frame.tapped == "next" && is_good) {
        ++draft.asked;
    } else if (frame.tapped == "leave") {
        draft = {};
    }
    return wish;
}

}  // namespace

Wished draw_shape(Ui& ui, const State& state, Drafts& drafts) {
    ShapeDraft& draft = drafts.shape;
    const bool metric = state.marks == Marks::millimetre;
    if (draft.shape < 0 || draft.shape >= static_cast<int>(roof_shapes().size())) {
        return draw_shapes(ui, state, draft);
    }
    const RoofShape& shape = roof_shapes()[static_cast<std::size_t>(draft.shape)];
    const auto lengths = static_cast<int>(shape.lengths);
    const Result<WalkedBody> walk = shape_walk(state.job, draft, metric);
    if (draft.asked < lengths || !walk) {
        draft.asked = std::min(draft.asked, lengths - 1);
        return draw_shape_length(ui, state, draft, metric);
    }
    const PitchAsked asked = draw_pitch_page(ui, state, draft.pitch, say(shape.words), *walk);
    if (asked.frame.tapped == "leave") {
        draft.asked = lengths - 1;
    } else if (asked.frame.tapped == "keep pitch" && asked.pitch) {
        return KeepAll{facts_of_walk(state.job, *walk, asked.pitch, state.catalogue),
                       Where{Screen::roof, {}}};
    }
    return asked.frame.wish;
}

}  // namespace hemline
