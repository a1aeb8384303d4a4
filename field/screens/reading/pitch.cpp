// The pitch: three ways to read it, the fold it asks for, and whether trim and panels suit it.
#include <imgui.h>

#include <cstdio>

#include "engine/roof/edge_shape.h"
#include "engine/roof/fold_angle.h"
#include "engine/trim/pitch_check.h"
#include "engine/words/result.h"
#include "field/screens/page/frame.h"
#include "field/screens/page/keypad.h"
#include "field/screens/reading/draw_level.h"
#include "field/screens/reading/keep_pitch.h"
#include "field/screens/screens.h"
#include "field/screens/section/draw_section.h"
#include "field/state/edge_view.h"
#include "field/state/pool_view.h"

namespace hemline {

namespace {

constexpr SlopeNotation notations[] = {SlopeNotation::rise_in_12, SlopeNotation::degrees,
                                       SlopeNotation::percent};
constexpr const char* notation_words[] = {phrase("in 12"), phrase("degrees"), phrase("percent")};
constexpr std::size_t digits_most = 6;
constexpr float picture_mm_least = 20;
constexpr float number_mm = 11, before_mm = 34, label_room = 1.5F, before_part_most = 0.55F;
constexpr float verdict_mm = 60;  // the verdict, on an upright screen

Result<Slope> slope_of(const PitchDraft& draft) {
    static constexpr const char* endings[] = {"/12", "deg", "%"};
    return parse_slope(draft.number + endings[static_cast<int>(draft.notation)]);
}

std::string one_decimal(double value) {
    char text[32];
    std::snprintf(text, sizeof text, "%.1f°", value);
    return text;
}

void press(PitchDraft& draft, char key) {
    std::string& number = draft.number;
    if (key == '\b') {
        if (!number.empty()) {
            number.pop_back();
        }
    } else if (number.size() < digits_most &&
               (key != '.' || number.find('.') == std::string::npos)) {
        number += key;
    }
}

/// The fold of this edge's own trim; of an eave before either fascia. Returns the height used.
float draw_fold(Ui& ui, const Edge& edge, Slope pitch, Box box) {
    if (edge.kind != EdgeKind::eave && edge.kind != EdgeKind::high_eave) {
        Edge pitched = edge;
        pitched.pitch = pitch;
        const std::optional<FoldAngle> fold = fold_at(pitched);
        return !fold ? 0
                     : ui.paragraph(box.x, box.y, box.w,
                                    say("{1}: included {2}, bend {3}", spoken(edge.kind),
                                        one_decimal(fold->included_degrees),
                                        one_decimal(fold->bend_degrees)),
                                    Size::bold);
    }
    const auto of = [&](Fascia fascia) { return *fold_of({edge.kind, pitch, {}, {}, fascia}); };
    const FoldAngle plumb = of(Fascia::plumb), square = of(Fascia::square_cut);
    const float h =
        ui.paragraph(box.x, box.y, box.w,
                     say("Plumb fascia: included {1}, bend {2}",
                         one_decimal(plumb.included_degrees), one_decimal(plumb.bend_degrees)),
                     Size::bold);
    return h +
           ui.paragraph(box.x, box.y + h, box.w,
                        say("Square-cut fascia: included {1}, bend {2}",
                            one_decimal(square.included_degrees), one_decimal(square.bend_degrees)),
                        Size::small);
}

/// The fold; which trims suit, which do not and why. Returns the height used.
float draw_verdict(Ui& ui, const State& state, const Edge& edge, Slope pitch, Box box) {
    const PitchCheck check = check_pitch(pitch, edge.kind, edge.seam, state.catalogue);
    float y = box.y;
    y += draw_fold(ui, edge, pitch, box) + ui.mm(2);
    for (const std::string& id : check.serves) {
        y += ui.paragraph(box.x, y, box.w, say("✓ serves: {1}", trim_name(state, id)), Size::bold);
    }
    for (const Refusal& refusal : check.refused) {
        y += ui.paragraph(box.x, y, box.w, glued("× ", refusal.reason), Size::small);
    }
    if (!check.measure_again.empty()) {
        y += ui.paragraph(box.x, y + ui.mm(1), box.w, check.measure_again, Size::bold) + ui.mm(1);
    }
    y += ui.paragraph(box.x, y + ui.mm(2), box.w,
                      say("The local code and the maker's printed limits go before this."),
                      Size::small, ui.colours().soft);
    return y - box.y;
}

/// As if it had been keyed in: "4.5" of "4.5/12".
PitchDraft keyed(Slope pitch) {
    const std::string words = print_slope(pitch);
    return {words.substr(0, words.find_first_not_of("0123456789.")), pitch.notation};
}

/// What is keyed in, and beside it the pitch before, a touch away.
void draw_number(Ui& ui, const State& state, const EdgeWork& work, PitchDraft& draft, Box row) {
    const std::optional<Slope> before = pitch_before(state, work);
    if (before && row.h >= ui.mm(target_min)) {
        const Text label = say("As before: {1}", *before);
        const float w = std::min(ui.label_width(label) * label_room, row.w * before_part_most);
        if (ui.button("as before", label, take_right(row, std::max(w, ui.mm(before_mm))))) {
            draft = keyed(*before);
        }
    }
    const Text unit = say(notation_words[static_cast<int>(draft.notation)]);
    ui.text(row.x, row.mid_y() - ui.line_height(Size::title) / 2,
            glued(draft.number.empty() ? "…" : draft.number, " ", unit), Size::title);
}

void draw_notations(Ui& ui, PitchDraft& draft, Box strip) {
    const std::vector<Box> places = columns(strip, 3, ui.mm(3));
    for (std::size_t i = 0; i < 3; ++i) {
        if (ui.button(std::string("notation ") + notation_words[i], say(notation_words[i]),
                      places[i], draft.notation == notations[i] ? Look::chosen : Look::plain)) {
            draft.notation = notations[i];
        }
    }
}

/// What the pitch keyed in so far means, and the eave at that pitch where there is room.
void draw_answer(Ui& ui, const State& state, const Edge& edge, const PitchDraft& draft,
                 const Result<Slope>& pitch, Box body) {
    Box words = ui.begin_scroll("pitch words", body);
    const float top = words.y;
    float used = 0;
    const Trim* const trim = state.catalogue.of(edge);
    if (pitch && trim != nullptr) {
        take_top(words, draw_verdict(ui, state, edge, *pitch, words));
        used = words.y - top;
        take_top(words, ui.mm(2));
        words.h = body.h - used - ui.mm(2);
        if (words.h > ui.mm(picture_mm_least)) {
            draw_eave_section(
                ui, {.trim = fitted_to(*trim, edge), .pitch = *pitch, .fascia = edge.fascia},
                words);
        }
    } else {
        used = ui.paragraph(
            words.x, words.y, words.w,
            draft.number.empty()
                ? say("Hold a level on the deck: rise over 12 in, or what a digital level shows.")
                : said(pitch.problem()));
        draw_level(ui, draft.notation,
                   {words.x, words.y + used, words.w, body.h - used - ui.mm(gap_mm)});
    }
    ui.end_scroll(used);
}

}  // namespace

Wished draw_pitch(Ui& ui, const State& state, Drafts& drafts) {
    PitchDraft& draft = drafts.pitch;
    const EdgeWork* const work = edge_of(state, state.where.edge);
    if (work == nullptr) {
        return Go{{Screen::roof, {}}};
    }
    const Result<Slope> pitch = slope_of(draft);
    std::vector<Action> actions{{"leave", say("Roof")}};
    if (state.tilt_there) {
        actions.push_back({"lay down", say("Lay the tablet down")});
    }
    add_keep_pitch(actions, state, *work, pitch.ok());
    const Frame frame =
        open_frame(ui, state, say("{1} · pitch of the roof behind it", title_of(work->edge)),
                   actions, {digit_keys, verdict_mm});
    Wished wish = frame.wish;
    if (const char key = draw_digit_keys(ui, frame.keys, true); key != 0) {
        press(draft, key);
    }
    Box body = frame.body;
    draw_notations(ui, draft, take_top(body, ui.mm(12)));
    take_top(body, ui.mm(gap_mm));
    draw_number(ui, state, *work, draft, take_top(body, ui.mm(number_mm)));
    take_top(body, ui.mm(2));
    draw_answer(ui, state, work->edge, draft, pitch, body);
    if (Wished kept = pitch ? keep_pitch(frame.tapped, state, *work, *pitch) : Wished()) {
        wish = std::move(kept);
    } else if (frame.tapped == "lay down") {
        wish = Go{at(state.where, Screen::tilt)};
    } else if (frame.tapped == "leave") {
        wish = Go{{Screen::roof, {}}};
    }
    return wish;
}

}  // namespace hemline
