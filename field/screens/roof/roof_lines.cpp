#include "field/screens/roof/roof_lines.h"

#include <algorithm>
#include <cmath>

#include "field/screens/page/mixed.h"
#include "field/screens/roof/fill_shape.h"
#include "field/screens/roof/tilted_box.h"

namespace hemline {

namespace {

constexpr float seam_darker = 0.1F, seam_mm = 0.2F;
constexpr float tone_least = 0.015F, tone_most = 0.075F;  // of ink: words on it stay legible

constexpr float wall_mm = 1.8F, hatch_step_mm = 2.2F;

/// How a line is drawn; widths in mm.
struct Stroke {
    float wide = 0.4F, core = 0;
    Colour ink = 0, core_ink = 0;
    bool dashed = false, twofold = false;
};

/// By how far the work is on it.
Stroke by_status(const Palette& p, EdgeStatus status, float wide) {
    switch (status) {
        case EdgeStatus::no_reading:
            return {wide * 0.75F, 0, p.soft};
        case EdgeStatus::one_reading:
            return {wide * 0.75F, 0, p.ink};
        case EdgeStatus::readings_disagree:
        case EdgeStatus::pitch_missing:
        case EdgeStatus::undecided:
        case EdgeStatus::held:
        case EdgeStatus::sent_back:
            return {wide * 1.9F, wide * 1.1F, p.ink, p.paper};
        case EdgeStatus::ready:
            return {wide, 0, p.ink};
        case EdgeStatus::cutting:
        case EdgeStatus::fitting:
        case EdgeStatus::to_tick:
            return {wide * 1.6F, 0, p.chalk};
        case EdgeStatus::finished:
            return {wide * 1.8F, 0, p.ink};
    }
    return {};
}

Stroke stroke_of(const Ui& ui, const SheetLine& line, bool is_now = false) {
    const Palette& p = ui.colours();
    if (line.work == nullptr && !line.is_walked && line.outer) {
        return {0.5F, 0, p.soft, 0, true};  // no edge of the job
    }
    const bool eave = line.kind == EdgeKind::eave || line.kind == EdgeKind::transition;
    const float wide = line.outer                     ? (eave ? 1.3F : 0.8F)
                       : line.kind == EdgeKind::ridge ? 0.7F
                                                      : 0.4F;
    Stroke stroke = by_status(p, line.is_walked ? EdgeStatus::ready : line.status, wide);
    if (is_now && stroke.core == 0) {
        stroke.ink = p.chalk;
        stroke.wide = std::max(stroke.wide, wide * (line.is_asked ? 1.6F : 1.2F));
    }
    stroke.twofold = line.kind == EdgeKind::valley && stroke.core == 0;
    return stroke;
}

void draw_dashed(const Ui& ui, ImVec2 from, ImVec2 to, Colour colour, float thick) {
    const float length = std::hypot(to.x - from.x, to.y - from.y);
    const ImVec2 way{(to.x - from.x) / std::max(0.001F, length),
                     (to.y - from.y) / std::max(0.001F, length)};
    const float dash = ui.mm(2.6F), step = dash + ui.mm(1.7F);
    for (float at = 0; at < length; at += step) {
        ui.ink()->AddLine(moved(from, way, at), moved(from, way, std::min(at + dash, length)),
                          colour, thick);
    }
}

/// How far a line goes on past its end, so that it and the next one along the walk make a whole
/// corner.
float past_end(const Ui& ui, const RoofSheet& sheet, const SheetLine& own, ImVec2 end) {
    if (!own.outer) {
        return 0;
    }
    for (const SheetLine& other : sheet.lines) {
        const bool meets = &other != &own && other.outer &&
                           std::min(std::hypot(other.from.x - end.x, other.from.y - end.y),
                                    std::hypot(other.to.x - end.x, other.to.y - end.y)) < 1.5F;
        const float across = std::abs(own.along.x * other.along.y - own.along.y * other.along.x);
        if (meets && across > 0.3F) {
            return ui.mm(stroke_of(ui, other).wide / 2) / across;
        }
    }
    return 0;
}

/// Metal ends at a wall there: hatched on the wall's side, as on a site drawing.
bool is_wall(const SheetLine& line) {
    return line.outer && (line.kind == EdgeKind::headwall || line.kind == EdgeKind::sidewall);
}

void draw_hatched(const Ui& ui, const SheetLine& line, Colour ink) {
    const float step = ui.mm(hatch_step_mm), wide = ui.mm(wall_mm);
    for (float at = step / 2; at + wide <= line.length; at += step) {
        const ImVec2 foot = moved(line.from, line.along, at);
        ui.ink()->AddLine(foot, moved(moved(foot, line.along, wide), line.inside, -wide), ink,
                          ui.mm(0.25F));
    }
}

void draw_stroke(const Ui& ui, const RoofSheet& sheet, const SheetLine& line) {
    const bool is_now = line.is_asked || (!line.letter.empty() && line.letter == sheet.now);
    const Stroke stroke = stroke_of(ui, line, is_now);
    const ImVec2 from = moved(line.from, line.along, -past_end(ui, sheet, line, line.from));
    const ImVec2 to = moved(line.to, line.along, past_end(ui, sheet, line, line.to));
    if (stroke.dashed) {
        draw_dashed(ui, from, to, stroke.ink, ui.mm(stroke.wide));
        return;
    }
    if (stroke.twofold) {
        const ImVec2 across{-line.along.y, line.along.x};
        const float off = ui.mm(stroke.wide * 1.3F);
        const float thick = ui.mm(stroke.wide * 0.9F);
        for (const float side : {off, -off}) {
            ui.ink()->AddLine(moved(from, across, side), moved(to, across, side), stroke.ink,
                              thick);
        }
        return;
    }
    ui.ink()->AddLine(from, to, stroke.ink, ui.mm(stroke.wide));
    if (is_wall(line)) {
        draw_hatched(ui, line, stroke.ink);
    }
    if (stroke.core > 0) {
        ui.ink()->AddLine(from, to, stroke.core_ink, ui.mm(stroke.core));
    }
}

}  // namespace

float half_across(const Ui& ui, const SheetLine& line) {
    const Stroke stroke = stroke_of(ui, line);
    return ui.mm(stroke.twofold ? stroke.wide * 1.8F : is_wall(line) ? wall_mm : stroke.wide / 2);
}

void draw_planes(const Ui& ui, const RoofSheet& sheet) {
    const Palette& p = ui.colours();
    for (const SheetPlane& plane : sheet.planes) {
        // Light from above and from the left.
        const float light = (plane.falls.x + plane.falls.y) / 1.4143F;
        const float part = tone_least + (tone_most - tone_least) * (light + 1) / 2;
        for (const std::vector<ImVec2>& piece : plane.pieces) {
            fill_shape(ui, piece, mixed(p.paper, p.ink, part));
        }
        for (const auto& [from, to] : plane.seams) {
            ui.ink()->AddLine(from, to, mixed(p.paper, p.ink, part + seam_darker), ui.mm(seam_mm));
        }
    }
}

void draw_roof_lines(const Ui& ui, const RoofSheet& sheet) {
    for (const bool outer : {false, true}) {
        for (const SheetLine& line : sheet.lines) {
            if (line.outer == outer) {
                draw_stroke(ui, sheet, line);
            }
        }
    }
    for (const SheetGap& gap : sheet.gaps) {
        draw_dashed(ui, gap.from, gap.to, ui.colours().soft, ui.mm(0.4F));
    }
}

}  // namespace hemline
