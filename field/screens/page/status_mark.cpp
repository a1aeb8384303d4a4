#include "field/screens/page/status_mark.h"

#include <imgui.h>

#include <cmath>

namespace hemline {

namespace {

constexpr float pi = 3.14159265F;
// Makes all shapes look equally large.
constexpr float diamond = 1.15F, square = 0.86F;

void draw_broken_rim(Ui& ui, ImVec2 centre, float radius, float thickness) {
    constexpr int dashes = 8;
    for (int i = 0; i < dashes; ++i) {
        const float from = 2 * pi * static_cast<float>(i) / dashes;
        ui.ink()->PathArcTo(centre, radius, from, from + pi / dashes, 4);
        ui.ink()->PathStroke(ui.colours().ink, 0, thickness);
    }
}

}  // namespace

void draw_status_mark(Ui& ui, float cx, float cy, float radius, EdgeStatus status,
                      std::string_view letter, Size size) {
    const Palette& colour = ui.colours();
    const ImVec2 centre(cx, cy);
    const float thickness = ui.mm(size == Size::small ? 0.35F : 0.5F);
    Colour letter_colour = colour.ink;
    switch (status) {
        case EdgeStatus::no_reading:
            draw_broken_rim(ui, centre, radius, thickness);
            break;
        case EdgeStatus::one_reading:
            ui.ink()->AddCircle(centre, radius, colour.ink, 0, thickness);
            break;
        case EdgeStatus::readings_disagree:
        case EdgeStatus::pitch_missing:
        case EdgeStatus::undecided:
        case EdgeStatus::held:
        case EdgeStatus::sent_back:
            ui.ink()->AddNgonFilled(centre, radius * diamond, colour.key, 4);
            ui.ink()->AddNgon(centre, radius * diamond, colour.ink, 4, thickness * 2);
            break;
        case EdgeStatus::ready:
            ui.ink()->AddCircle(centre, radius, colour.ink, 0, thickness);
            ui.ink()->AddCircle(centre, radius - 2 * thickness, colour.ink, 0, thickness);
            break;
        case EdgeStatus::cutting:
        case EdgeStatus::fitting:
        case EdgeStatus::to_tick:
            ui.ink()->AddRectFilled({cx - radius * square, cy - radius * square},
                                    {cx + radius * square, cy + radius * square}, colour.chalk);
            letter_colour = colour.chalk_ink;
            break;
        case EdgeStatus::finished:
            ui.ink()->AddCircleFilled(centre, radius, colour.ink);
            letter_colour = colour.paper;
            break;
    }
    ui.text(cx, cy - ui.line_height(size) / 2, Text(letter), size, Align::centre, letter_colour);
}

}  // namespace hemline
