#include "field/screens/edges/draw_edge_sketch.h"

#include <imgui.h>

#include <cmath>
#include <string>

#include "engine/roof/edge_shape.h"

namespace hemline {

namespace {

constexpr float end_mm = 2.2F, arrow_mm = 2;

/// A short stroke across the line where it ends.
void draw_end(const Ui& ui, ImVec2 at, ImVec2 across) {
    const float r = ui.mm(end_mm);
    ui.ink()->AddLine({at.x - across.x * r, at.y - across.y * r},
                      {at.x + across.x * r, at.y + across.y * r}, ui.colours().ink, ui.mm(0.5F));
}

/// An arrow along it, from the side fitted first.
void draw_way(const Ui& ui, ImVec2 from, ImVec2 along) {
    const float r = ui.mm(arrow_mm);
    const ImVec2 tip{from.x + along.x * 4 * r, from.y + along.y * 4 * r};
    const ImVec2 back{tip.x - along.x * 1.6F * r, tip.y - along.y * 1.6F * r};
    ui.ink()->AddTriangleFilled(tip, {back.x - along.y * r, back.y + along.x * r},
                                {back.x + along.y * r, back.y - along.x * r}, ui.colours().ink);
}

}  // namespace

void draw_edge_sketch(Ui& ui, const EdgeSketch& sketch, Box box) {
    const Edge& edge = sketch.edge;
    const Box words = take_bottom(box, ui.line_height(Size::small) + ui.mm(0.5F));
    const bool sloped = is_sloped(edge.kind);
    const float rise = sloped ? box.h - 2 * ui.mm(end_mm) : 0;
    const float foot = sloped ? box.bottom() - ui.mm(end_mm) : box.mid_y();
    const ImVec2 left{box.x + ui.mm(end_mm), foot};
    const ImVec2 right{box.right() - ui.mm(end_mm), foot - rise};
    const float whole = std::hypot(right.x - left.x, rise);
    const ImVec2 along{(right.x - left.x) / whole, -rise / whole};
    ui.ink()->AddLine(left, right, ui.colours().ink, ui.mm(0.8F));
    draw_end(ui, left, {-along.y, along.x});
    draw_end(ui, right, {-along.y, along.x});
    if (sketch.asked) {
        const ImVec2 at = *sketch.asked == Side::left ? left : right;
        ui.ink()->AddCircleFilled(at, ui.mm(end_mm), ui.colours().chalk);
    } else {
        const bool from_left = first_fitted(edge) == Side::left;
        draw_way(ui, from_left ? left : right, from_left ? along : ImVec2{-along.x, -along.y});
    }
    if (sketch.left_said) {
        ui.text(box.x, words.y, spoken(edge.left), Size::small);
    }
    if (sketch.right_said) {
        ui.text(box.right(), words.y, spoken(edge.right), Size::small, Align::right);
    }
}

}  // namespace hemline
