#include "field/screens/edges/draw_tape_laid.h"

#include <imgui.h>

#include <algorithm>
#include <cmath>

#include "engine/roof/edge_shape.h"

namespace hemline {

namespace {

constexpr float stroke_mm = 2.2F, gap_to_tape_mm = 1.2F, tape_mm = 4, case_mm = 8, rise_mm = 14;
constexpr float wall_mm = 4, hook_margin_mm = 2;
constexpr float wide_most_mm = 150;
constexpr int ticks = 20, figures_each = 5;

/// Places along the edge, from where the tape begins, and across it, down from the roof.
struct Line {
    ImVec2 from, along, across;
    float length = 0;
    [[nodiscard]] ImVec2 at(float along_it, float down) const {
        return {from.x + along.x * along_it + across.x * down,
                from.y + along.y * along_it + across.y * down};
    }
};

void fill(const Ui& ui, const Line& line, float from, float to, float top, float low,
          Colour colour) {
    const ImVec2 a = line.at(from, top), b = line.at(to, top), c = line.at(to, low),
                 d = line.at(from, low);
    ui.ink()->AddQuadFilled(a, b, c, d, colour);
    ui.ink()->AddQuad(a, b, c, d, ui.colours().ink, ui.mm(0.3F));
}

void stroke(const Ui& ui, const Line& line, float along, float top, float low, Colour colour,
            float w_mm) {
    ui.ink()->AddLine(line.at(along, top), line.at(along, low), colour, ui.mm(w_mm));
}

bool is_closed(End end) { return end == End::wall || end == End::corner_in; }

bool is_hooked(End end) {
    return end == End::gable || end == End::corner_out || end == End::open || end == End::eave;
}

Text hook_words(End end, bool on_metal) {
    return on_metal || is_hooked(end) ? say("Hook the tape here")
           : is_closed(end)           ? say("Push the tape in here")
                                      : say("Hold the tape here");
}

/// Two lines from a place at or below the picture, within its box.
void draw_words(Ui& ui, const Text& first, const Text& second, ImVec2 at, bool to_the_left,
                Box box) {
    const Align align = to_the_left ? Align::right : Align::left;
    const float w = std::max(ui.text_width(first, Size::body), ui.text_width(second, Size::small));
    const float x = to_the_left ? std::max(at.x, box.x + w) : std::min(at.x, box.right() - w);
    const float y = at.y;
    ui.text(x, y, first, Size::body, align);
    ui.text(x, y + ui.line_height(Size::body), second, Size::small, align);
}

float words_height(const Ui& ui) {
    return ui.line_height(Size::body) + ui.line_height(Size::small);
}

/// The edge, its metal that is on, and the tape with its case past the place that is read.
void draw_line(const Ui& ui, const Line& edge, float fixed, bool closed_there) {
    const Palette& p = ui.colours();
    const float top = ui.mm(gap_to_tape_mm), low = top + ui.mm(tape_mm);
    ui.ink()->AddLine(edge.at(-fixed, 0), edge.at(edge.length, 0), p.ink, ui.mm(0.8F));
    stroke(ui, edge, edge.length, -ui.mm(stroke_mm), ui.mm(stroke_mm), p.ink, 0.5F);
    if (fixed > 0) {
        fill(ui, edge, -fixed, 0, -ui.mm(stroke_mm), ui.mm(0.4F), p.metal);
    } else {
        stroke(ui, edge, 0, -ui.mm(stroke_mm), ui.mm(stroke_mm), p.ink, 0.5F);
    }
    // Where a wall is in the way, the case lies on the blade.
    const float end = closed_there ? edge.length : edge.length + ui.mm(1);
    fill(ui, edge, 0, end, top, low, p.tape);
    for (int i = 1; i < ticks; ++i) {
        const float at = edge.length * static_cast<float>(i) / ticks;
        stroke(ui, edge, at, top, top + ui.mm(i % figures_each == 0 ? tape_mm : tape_mm / 2),
               IM_COL32_BLACK, 0.25F);
    }
    const float from = closed_there ? end - ui.mm(case_mm) : end;
    fill(ui, edge, from, from + ui.mm(case_mm), top - ui.mm(0.5F), low + ui.mm(2.5F), p.key);
    if (closed_there) {
        fill(ui, edge, edge.length, edge.length + ui.mm(hook_margin_mm), -ui.mm(wall_mm),
             low + ui.mm(2.5F), p.metal_low);
    }
    stroke(ui, edge, 0, -ui.mm(1.6F), low, p.ink, 0.9F);  // the hook
    stroke(ui, edge, edge.length, -ui.mm(stroke_mm + 1), low, p.chalk, 0.9F);
}

}  // namespace

Side hooked_end(const TapeLaid& laid) {
    if (laid.fixed > 0) {
        return first_fitted(laid.edge);
    }
    const bool from_right = !is_hooked(laid.edge.left) && is_hooked(laid.edge.right);
    return from_right ? Side::right : Side::left;
}

float tape_laid_height(const Ui& ui, const TapeLaid& laid) {
    const float line = ui.mm(wall_mm + gap_to_tape_mm + tape_mm + 3) + words_height(ui);
    const bool sloped = is_sloped(laid.edge.kind);
    return line + (sloped || laid.fixed > 0 ? words_height(ui) : 0) + (sloped ? ui.mm(rise_mm) : 0);
}

void draw_tape_laid(Ui& ui, const TapeLaid& laid, Box box) {
    const float least = tape_laid_height(ui, laid);
    if (box.h < least) {
        return;
    }
    box = take_bottom(box, least);
    box.w = std::min(box.w, ui.mm(wide_most_mm));
    const bool sloped = is_sloped(laid.edge.kind);
    const Side hooked = hooked_end(laid);
    const End start = end_at(laid.edge, hooked), end = end_at(laid.edge, other(hooked));
    const bool turned = hooked == Side::right;
    const float words = words_height(ui), at_hook = ui.mm(hook_margin_mm),
                at_read = ui.mm(is_closed(end) ? hook_margin_mm : case_mm + (sloped ? 3.0F : 1));
    const float foot = box.bottom() - words - ui.mm(gap_to_tape_mm + tape_mm + 3);
    const ImVec2 left{box.x + (turned ? at_read : at_hook), foot};
    const ImVec2 right{box.right() - (turned ? at_hook : at_read),
                       foot - (sloped ? ui.mm(rise_mm) : 0)};
    const ImVec2 from = hooked == Side::left ? left : right,
                 to = hooked == Side::left ? right : left;
    const float whole = std::hypot(to.x - from.x, to.y - from.y);
    const ImVec2 along{(to.x - from.x) / whole, (to.y - from.y) / whole};
    const ImVec2 across{turned ? along.y : -along.y, turned ? -along.x : along.x};
    const float fixed = whole * static_cast<float>(std::clamp(laid.fixed, 0.0, 0.95));
    const Line edge{
        {from.x + along.x * fixed, from.y + along.y * fixed}, along, across, whole - fixed};
    draw_line(ui, edge, fixed, is_closed(end));
    const float low = box.bottom() - words;
    const bool read_low = sloped ? turned : fixed <= 0;
    const float hook_y = sloped && turned ? box.y : low;
    const Text first = hook_words(start, fixed > 0);
    const Text second = fixed > 0 ? say("end of the fixed piece") : spoken(start);
    // Words of a place past the middle run back toward it.
    const float hook_x = edge.from.x, read_x = to.x;
    draw_words(ui, first, second, {hook_x - ui.mm(turned ? -2 : 2), hook_y}, hook_x > box.mid_x(),
               box);
    if (sloped && fixed > 0) {
        ui.ink()->AddLine(edge.at(0, ui.mm(gap_to_tape_mm + tape_mm + 1)), {hook_x, low},
                          ui.colours().hairline, ui.mm(0.3F));
    }
    draw_words(ui, say("Read here"), spoken(end),
               {read_x + ui.mm(turned ? -2 : 2), read_low ? low : box.y}, !turned, box);
}

}  // namespace hemline
