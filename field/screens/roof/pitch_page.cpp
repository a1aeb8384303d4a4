#include "field/screens/roof/pitch_page.h"

#include <string>
#include <vector>

#include "engine/measure/slope.h"
#include "engine/words/result.h"
#include "field/screens/page/keypad.h"
#include "field/screens/roof/draw_roof_plan.h"

namespace hemline {

namespace {

constexpr float above_pitch_mm = 45, drawn_mm_least = 25;
constexpr std::size_t pitch_digits_most = 6;

struct PitchNotation {
    SlopeNotation notation;
    const char *words, *ending;
};
constexpr PitchNotation pitch_notations[] = {{SlopeNotation::rise_in_12, phrase("in 12"), "/12"},
                                             {SlopeNotation::degrees, phrase("degrees"), "deg"},
                                             {SlopeNotation::percent, phrase("percent"), "%"}};

void key_pitch(std::string& number, char key) {
    if (key == '\b') {
        number.resize(number.empty() ? 0 : number.size() - 1);
    } else if (key != 0 && number.size() < pitch_digits_most &&
               (key != '.' || number.find('.') == std::string::npos)) {
        number += key;
    }
}

/// The roof that the walk and the pitch give, or why they give none.
void draw_given(Ui& ui, const State& state, const WalkedBody& walk, Slope pitch, Box box) {
    const BodyOnJob roof = roof_body(state.job, walk, pitch);
    if (roof.problem) {
        take_top(box, draw_band(ui, said(*roof.problem), box));
    }
    if (box.h > ui.mm(drawn_mm_least)) {
        draw_sheet(ui, body_sheet(state, roof, inset(box, ui.mm(7))), box);
    }
}

}  // namespace

PitchAsked draw_pitch_page(Ui& ui, const State& state, PitchDraft& draft, const Text& title,
                           const WalkedBody& walk) {
    const PitchNotation& as = pitch_notations[static_cast<std::size_t>(draft.notation)];
    const Result<Slope> pitch = parse_slope(draft.number + as.ending);
    const bool is_said = pitch && rise_in_12_of(*pitch) > 0;
    PitchAsked asked{
        open_frame(ui, state, title,
                   {{"leave", say("Back to the walk")},
                    {"keep pitch", say("Keep this pitch"), is_said ? Look::primary : Look::off}},
                   {digit_keys, above_pitch_mm}),
        {}};
    key_pitch(draft.number, draw_digit_keys(ui, asked.frame.keys, true));
    Box body = asked.frame.body;
    take_top(body,
             ui.paragraph(body.x, body.y, body.w, say("What pitch has the roof?"), Size::title) +
                 ui.mm(2));
    const std::vector<Box> places = columns(take_top(body, ui.mm(12)), 3, ui.mm(gap_mm));
    std::vector<Text> labels;
    for (const PitchNotation& one : pitch_notations) {
        labels.push_back(say(one.words));
    }
    const Size largest = ui.label_size(labels, places.front());
    for (std::size_t i = 0; i < 3; ++i) {
        if (ui.button(std::string("notation ") + pitch_notations[i].words, labels[i], places[i],
                      draft.notation == pitch_notations[i].notation ? Look::chosen : Look::plain,
                      largest)) {
            draft.notation = pitch_notations[i].notation;
        }
    }
    take_top(body, ui.mm(2));
    ui.text(body.x, body.y, glued(draft.number.empty() ? "…" : draft.number, " ", say(as.words)),
            Size::title);
    take_top(body, ui.line_height(Size::title) + ui.mm(2));
    const Text once =
        say("Said once, it holds for all eaves. An eave with another pitch is read there.");
    if (ui.paragraph_height(body.w, once, Size::small) <= body.h) {
        take_top(body, ui.paragraph(body.x, body.y, body.w, once, Size::small, ui.colours().soft) +
                           ui.mm(2));
    }
    if (is_said) {
        asked.pitch = *pitch;
        draw_given(ui, state, walk, *pitch, body);
    }
    return asked;
}

}  // namespace hemline
