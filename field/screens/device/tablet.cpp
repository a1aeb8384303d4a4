// What a person sets: hand, units, light, language, size of the screen, and the crew's words.
#include <string>
#include <utility>

#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float setting_row_mm = 13, button_w_mm = 52, word_row_mm = 12, two_columns_mm = 160,
                settings_part = 0.56F;

struct Setting {
    Text now;
    Action change;
    Wish wish;
};

std::vector<Setting> settings(const State& state) {
    return {
        {state.hand == Hand::right ? say("Keys lie for the right hand.")
                                   : say("Keys lie for the left hand."),
         {"hand", state.hand == Hand::right ? say("Left handed") : say("Right handed")},
         Toggle::hand},
        {state.both_units ? say("Lengths are told in inches and in millimeters.")
                          : say("Lengths are told in the job's unit."),
         {"units", state.both_units ? say("One unit") : say("Both units")},
         Toggle::units},
        {say("A light ground for the sun, a dark one for the night."),
         {"light", say("Day or night")},
         Toggle::light},
        {say("The words are English."), other_language(state), Toggle::language},
        {say("Buttons are as large as a glove needs where the screen was measured."),
         {"screen size", say("Screen size")},
         Go{{Screen::calibrate, {}}}},
    };
}

/// What is set, with what a touch on its button makes of it.
void draw_settings(Ui& ui, const State& state, Box& body, Wished& wish) {
    const float button_w = std::min(ui.mm(button_w_mm), body.w * 0.4F);
    for (const Setting& setting : settings(state)) {
        const float words_w = body.w - button_w - ui.mm(gap_mm);
        const float words_h = ui.paragraph_height(words_w, setting.now, Size::body) + ui.mm(2);
        Box row = take_top(body, std::max(ui.mm(setting_row_mm), words_h));
        Box button = take_right(row, button_w);
        button.h = ui.mm(setting_row_mm);
        ui.paragraph(row.x, row.y + ui.mm(1), words_w, setting.now);
        if (ui.button(setting.change.name, setting.change.label, button)) {
            wish = setting.wish;
        }
        take_top(body, ui.mm(gap_mm));
    }
}

/// The words of this language that crews say differently, the crew's own lit.
void draw_crew_words(Ui& ui, const State& state, Box& body, Wished& wish) {
    bool is_first = true;
    for (const CrewThing& thing : crew_things) {
        if (thing.language != state.language) {
            continue;
        }
        if (std::exchange(is_first, false)) {
            take_top(body, ui.paragraph(body.x, body.y, body.w, say("What does your crew call it?"),
                                        Size::bold) +
                               ui.mm(1));
        }
        const Box row = take_top(body, ui.mm(word_row_mm));
        const std::vector<Box> places =
            columns(row, static_cast<int>(thing.words.size()), ui.mm(gap_mm));
        std::vector<Text> labels;
        for (const std::string_view word : thing.words) {
            labels.emplace_back(word);
        }
        const Size largest = ui.label_size(labels, places.front());
        for (std::size_t i = 0; i < thing.words.size() && !thing.words[i].empty(); ++i) {
            const std::string word(thing.words[i]);
            const bool chosen = word_said(thing, state.crew_words) == i;
            if (ui.button("word " + word, Text(word), places[i],
                          chosen ? Look::chosen : Look::plain, largest)) {
                wish = SayWord{std::string(thing.thing), word};
            }
        }
        take_top(body, ui.mm(gap_mm));
    }
}

}  // namespace

Wished draw_tablet(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const Frame frame = open_frame(ui, state, say("My settings"), {{"leave", say("Back")}});
    Wished wish = frame.wish;
    Box list = ui.begin_scroll("settings", frame.body);
    const float top = list.y;
    if (!ui.portrait() && list.w >= ui.mm(two_columns_mm)) {
        Box words = list;
        Box set = take_left(words, list.w * settings_part);
        take_left(words, ui.mm(8));
        draw_settings(ui, state, set, wish);
        draw_crew_words(ui, state, words, wish);
        list.y = std::max(set.y, words.y);
    } else {
        draw_settings(ui, state, list, wish);
        draw_crew_words(ui, state, list, wish);
    }
    ui.end_scroll(list.y - top);
    if (frame.tapped == "leave") {
        wish = Go{{state.job.name.empty() ? Screen::jobs : Screen::roof, {}}};
    }
    return wish;
}

}  // namespace hemline
