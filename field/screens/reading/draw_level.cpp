#include "field/screens/reading/draw_level.h"

#include <imgui.h>

#include <algorithm>
#include <cmath>

namespace hemline {

namespace {

constexpr float rise_of_run = 5.0F / 12, level_mm = 3, wide_mm = 62, thick_mm = 0.8F;

/// A level as seen from its side, its bubble in the middle; `up` is where its top is.
void draw_bar(const Ui& ui, ImVec2 from, ImVec2 to, ImVec2 up) {
    const float h = ui.mm(level_mm);
    const ImVec2 mid{(from.x + to.x + up.x * h) / 2, (from.y + to.y + up.y * h) / 2};
    ui.ink()->AddQuadFilled(from, to, {to.x + up.x * h, to.y + up.y * h},
                            {from.x + up.x * h, from.y + up.y * h}, ui.colours().metal);
    ui.ink()->AddQuad(from, to, {to.x + up.x * h, to.y + up.y * h},
                      {from.x + up.x * h, from.y + up.y * h}, ui.colours().ink, ui.mm(0.4F));
    ui.ink()->AddCircle(mid, h / 3, ui.colours().ink, 0, ui.mm(0.4F));
}

}  // namespace

void draw_level(Ui& ui, SlopeNotation notation, Box box) {
    if (box.h < ui.mm(level_picture_mm) || box.w < ui.mm(wide_mm)) {
        return;
    }
    const Palette& p = ui.colours();
    const float line = ui.line_height(Size::small);
    const float rise = std::min(box.h - ui.mm(level_mm + 2) - 2 * line, ui.mm(level_picture_mm));
    const float run = rise / rise_of_run;
    const ImVec2 foot{box.x + ui.mm(2), box.bottom() - line};
    const ImVec2 top{foot.x + run, foot.y - rise};
    ui.ink()->AddLine(foot, top, p.ink, ui.mm(thick_mm));
    ui.text(foot.x + run * 0.55F + ui.mm(3), foot.y - rise * 0.5F, say("deck"), Size::small);
    if (notation == SlopeNotation::degrees) {
        const ImVec2 along{std::cos(std::atan(rise_of_run)), -std::sin(std::atan(rise_of_run))};
        const ImVec2 from{foot.x + run * 0.3F, foot.y - rise * 0.3F};
        const ImVec2 to{foot.x + run * 0.85F, foot.y - rise * 0.85F};
        draw_bar(ui, from, to, {along.y, -along.x});
        ui.ink()->AddLine(foot, {foot.x + run * 0.4F, foot.y}, p.hairline, ui.mm(0.4F));
        ui.ink()->PathArcTo(foot, run * 0.28F, -std::atan(rise_of_run), 0);
        ui.ink()->PathStroke(p.chalk, 0, ui.mm(thick_mm));
        ui.text(foot.x + run * 0.3F, foot.y - line, Text("°"), Size::bold);
        return;
    }
    // The level is held with one end on the deck; the rise is read under its other end.
    const ImVec2 held{foot.x, top.y};
    draw_bar(ui, held, top, {0, -1});
    ui.ink()->AddLine(held, {held.x, foot.y}, p.chalk, ui.mm(thick_mm));
    ui.text(foot.x + ui.mm(2), held.y + ui.mm(2), say("rise"), Size::bold);
    ui.text((held.x + top.x) / 2, held.y - ui.mm(level_mm + 0.5F) - line,
            Text(notation == SlopeNotation::rise_in_12 ? "12 in" : "100"), Size::small,
            Align::centre);
}

}  // namespace hemline
