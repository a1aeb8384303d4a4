// How this tablet is set: hand, units, light, language, size of its screen.
#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float setting_row_mm = 16, button_w_mm = 52;

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

}  // namespace

Wished draw_tablet(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const Frame frame = open_frame(ui, state, say("This tablet"), {{"leave", say("Back")}});
    Wished wish = frame.wish;
    Box body = ui.begin_scroll("settings", frame.body);
    const float top = body.y;
    for (const Setting& setting : settings(state)) {
        Box row = take_top(body, ui.mm(setting_row_mm));
        const Box button = take_right(row, ui.mm(button_w_mm));
        ui.paragraph(row.x, row.y + ui.mm(1), row.w - ui.mm(gap_mm), setting.now);
        if (ui.button(setting.change.name, setting.change.label, button)) {
            wish = setting.wish;
        }
        take_top(body, ui.mm(gap_mm));
    }
    ui.end_scroll(body.y - top);
    if (frame.tapped == "leave") {
        wish = Go{{state.job.name.empty() ? Screen::jobs : Screen::roof, {}}};
    }
    return wish;
}

}  // namespace hemline
