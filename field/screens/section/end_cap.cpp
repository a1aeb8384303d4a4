// The card of the cap that closes an open end: its flat metal with dimensions, lips and folds.
#include "engine/work/end_cap.h"

#include <imgui.h>

#include <algorithm>
#include <cmath>

#include "engine/quantity/angle.h"
#include "engine/work/mark_deeds.h"
#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float cap_picture_mm = 70, cap_line_mm = 0.7F, cap_fold_mm = 0.4F, cap_dash_mm = 2;
constexpr float beside_mm = 9;     // room around the metal for its dimensions
constexpr float words_off_mm = 3;  // from a line to the middle of its words

/// Flat metal on the page: as large as the box allows, in its middle.
struct CapOnPage {
    Box box;
    float scale;
    ImVec2 from;

    CapOnPage(const Ui& ui, const EndCap& cap, Box in) : box(inset(in, ui.mm(beside_mm))) {
        const auto w = static_cast<float>(cap.wide.nm()), h = static_cast<float>(cap.high.nm());
        scale = std::min(std::max(box.w, 1.0F) / w, std::max(box.h, 1.0F) / h);
        from = {box.mid_x() - w * scale / 2, box.mid_y() - h * scale / 2};
    }
    [[nodiscard]] ImVec2 at(const FlatPoint& p) const {
        return {from.x + static_cast<float>(p.x) * scale, from.y + static_cast<float>(p.y) * scale};
    }
};

void draw_dashes(const Ui& ui, ImVec2 a, ImVec2 b) {
    const float length = std::max(0.1F, std::hypot(b.x - a.x, b.y - a.y)),
                dash = ui.mm(cap_dash_mm);
    const ImVec2 step{(b.x - a.x) / length, (b.y - a.y) / length};
    for (float t = 0; t < length; t += 2 * dash) {
        const float to = std::min(t + dash, length);
        ui.ink()->AddLine({a.x + step.x * t, a.y + step.y * t},
                          {a.x + step.x * to, a.y + step.y * to}, ui.colours().ink,
                          ui.mm(cap_fold_mm));
    }
}

/// The words along a line of the metal, on the side of it that `inside` does not lie on; `off`
/// millimeters from it.
void write_beside(Ui& ui, ImVec2 a, ImVec2 b, ImVec2 inside, float off_mm, const Text& words) {
    if (a.x > b.x) {
        std::swap(a, b);
    }
    const float length = std::max(0.1F, std::hypot(b.x - a.x, b.y - a.y));
    const ImVec2 along{(b.x - a.x) / length, (b.y - a.y) / length};
    const ImVec2 middle{(a.x + b.x) / 2, (a.y + b.y) / 2};
    const float side = (inside.x - middle.x) * -along.y + (inside.y - middle.y) * along.x;
    const float off = ui.mm(off_mm) * (side > 0 ? -1 : 1);
    ui.text_along(middle.x - along.y * off, middle.y + along.x * off, along.x, along.y, words,
                  Size::small, ui.colours().ink);
}

ImVec2 middle_of(const CapOnPage& page, const EndCap& cap) {
    ImVec2 sum{0, 0};
    for (const FlatPoint& point : cap.outline) {
        const ImVec2 at = page.at(point);
        sum = {sum.x + at.x, sum.y + at.y};
    }
    const auto n = static_cast<float>(cap.outline.size());
    return {sum.x / n, sum.y / n};
}

/// The outline to cut, the two folds, and the lengths beside them.
void draw_cap(Ui& ui, const EndCap& cap, Box box) {
    const CapOnPage page(ui, cap, box);
    for (std::size_t i = 0; i < cap.outline.size(); ++i) {
        ui.ink()->AddLine(page.at(cap.outline[i]),
                          page.at(cap.outline[(i + 1) % cap.outline.size()]), ui.colours().ink,
                          ui.mm(cap_line_mm));
    }
    const ImVec2 bend = page.at(cap.bend), middle = middle_of(page, cap);
    for (const CapLeg* leg : {&cap.flange, &cap.face}) {
        const ImVec2 a = page.at(leg->fold.a), b = page.at(leg->fold.b);
        draw_dashes(ui, a, b);
        const float lip = page.scale * static_cast<float>(cap_lip.nm()) / ui.mm(1);
        write_beside(ui, a, b, middle, lip + words_off_mm, Text(leg->width));
        write_beside(ui, a, b, middle, lip / 2, Text(cap_lip));
    }
    const std::size_t last = cap.outline.size() - 1;
    write_beside(ui, page.at(cap.outline[0]), page.at(cap.outline[last]), middle, words_off_mm,
                 Text(cap.lower));
    if (cap.flange.down > Length()) {
        write_beside(ui, page.at(cap.outline[0]), page.at(cap.outline[1]), middle, words_off_mm,
                     Text(cap.flange.down));
    }
    if (cap.face.down > Length()) {
        write_beside(ui, page.at(cap.outline[last]), page.at(cap.outline[last - 1]), middle,
                     words_off_mm, Text(cap.face.down));
    }
    // Between the legs, where they are far enough apart for it.
    const Text angle(fold_words(cap.corner_degrees));
    const float down = (ui.text_width(angle, Size::small) / 2 + ui.mm(1)) /
                       static_cast<float>(std::tan(radians_of(cap.corner_degrees / 2)));
    const float to = std::max(0.1F, std::hypot(middle.x - bend.x, middle.y - bend.y));
    const float off = down + ui.line_height(Size::small);
    ui.text(bend.x + (middle.x - bend.x) / to * off,
            bend.y + (middle.y - bend.y) / to * off - ui.line_height(Size::small) / 2, angle,
            Size::small, Align::centre);
}

Side end_drawn(const Edge& edge) {
    const std::vector<Side> ends = capped_ends(edge);
    return ends.empty() ? Side::left : ends.front();
}

Text hand_line(const EndCap& cap, const Edge& edge) {
    if (cap.fits_both_ends) {
        return say("It is the same for both ends.");
    }
    const bool left = end_drawn(edge) == Side::left;
    return capped_ends(edge).size() < 2
               ? left ? say("Drawn for the left end, seen from outside.")
                      : say("Drawn for the right end, seen from outside.")
               : say("Drawn for the left end, seen from outside; the right end's is its mirror "
                     "image.");
}

float write_lines(Ui& ui, const std::vector<Text>& lines, Box words) {
    const float top = words.y;
    for (const Text& line : lines) {
        take_top(words, ui.paragraph(words.x, words.y, words.w, line) + ui.mm(gap_mm));
    }
    return words.y - top;
}

}  // namespace

Wished draw_end_cap(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const EdgeWork* const work = edge_of(state, state.where.edge);
    if (work == nullptr || !takes_end_cap(work->edge.kind)) {
        return Go{{Screen::roof, {}}};
    }
    const Edge& edge = work->edge;
    const Frame frame = open_frame(ui, state, say("{1} · end cap", title_of(edge)),
                                   {{"leave", say("Back to the step"), Look::primary}});
    const Result<EndCap> cap =
        end_cap_of(edge, state.catalogue.of(edge), state.sections, state.job.practice);
    Box body = frame.body;
    std::vector<Text> lines;
    if (cap) {
        const bool lying = !ui.portrait();
        const Box picture = lying ? take_left(body, body.w / 2)
                                  : take_top(body, std::min(body.h / 2, ui.mm(cap_picture_mm)));
        draw_cap(ui, cap_for(*cap, end_drawn(edge)), picture);
        lying ? take_left(body, ui.mm(gap_mm)) : take_top(body, ui.mm(gap_mm));
        lines = cap_lines(*cap, edge);
        lines.push_back(hand_line(*cap, edge));
    } else {
        lines.push_back(said(cap.problem()));
    }
    lines.push_back(say("Cut edges are sharp: wear gloves and eye protection."));
    ui.end_scroll(write_lines(ui, lines, ui.begin_scroll("cap words", body)));
    return frame.tapped == "leave" ? Wished(Go{at(state.where, Screen::steps)}) : frame.wish;
}

}  // namespace hemline
