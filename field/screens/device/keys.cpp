// Which keys a keyboard has: a sheet that ? puts over any screen.
#include <algorithm>
#include <array>

#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

struct KeyMeaning {
    const char *key, *meaning;
};

constexpr auto key_meanings = std::to_array<KeyMeaning>({
    {phrase("Tab, arrows"), phrase("The frame goes to the next button.")},
    {phrase("Enter"), phrase("Does what is framed. A line typed is read; Enter again keeps it.")},
    {phrase("Esc"), phrase("Goes back.")},
    {phrase("Digits, letters"), phrase("Go into the field. Backspace takes one back.")},
    {phrase("Page up, page down"), phrase("The list moves.")},
    {phrase("Ctrl + down, Ctrl + up"), phrase("The next edge, the edge before.")},
    {phrase("Ctrl + Z"), phrase("Takes the last entry back.")},
    {phrase("Ctrl + C"), phrase("Copies the pieces or sticks, as a table.")},
    {phrase("Ctrl + V"), phrase("Readings from a list, one a line.")},
    {phrase("? or F1"), phrase("This page.")},
});

constexpr float meanings_beside_mm = 120;  // narrower: below the key
constexpr float row_gap_mm = 1.5F;

}  // namespace

bool draw_keys(Ui& ui, const State& state) {
    const Frame frame = open_frame(ui, state, say("Keys"), {{"leave", say("Back"), Look::primary}});
    Box body = ui.begin_scroll("keys", frame.body);
    const float top = body.y;
    float key_w = 0;
    for (const KeyMeaning& one : key_meanings) {
        key_w = std::max(key_w, ui.text_width(say(one.key), Size::bold) + ui.mm(5));
    }
    const bool beside = body.w >= ui.mm(meanings_beside_mm);
    for (const KeyMeaning& one : key_meanings) {
        ui.text(body.x, body.y, say(one.key), Size::bold);
        take_top(body, beside ? 0 : ui.line_height(Size::bold));
        const float x = beside ? body.x + key_w : body.x;
        take_top(body,
                 ui.paragraph(x, body.y, body.right() - x, say(one.meaning)) + ui.mm(row_gap_mm));
    }
    ui.end_scroll(body.y - top);
    return frame.tapped == "leave";
}

}  // namespace hemline
