// How a pan is cut: its flat metal with the length of both its sides, at foot and top.
#include "engine/panels/pan_cut.h"

#include <imgui.h>

#include <algorithm>

#include "engine/roof/nearest.h"
#include "field/screens/page/frame.h"
#include "field/screens/screens.h"
#include "field/state/edge_view.h"
#include "field/state/plane_view.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float pan_part = 0.5F, pan_line_mm = 0.6F, off_mm = 1.5F;

Length on_grid(Length length, const State& state) {
    return nearest_on(length, state.job.practice.cut_grid);
}

/// The metal on the page, its foot below.
struct PanOnPage {
    Length wide, high;
    Box box;
    float scale;

    PanOnPage(const Ui& ui, Length width, Length length, Box in)
        : wide(width),
          high(length),
          box(inset(in, ui.text_width(Text(length), Size::bold) + ui.mm(2 * off_mm),
                    ui.line_height(Size::bold) / 2)) {
        scale = std::min(std::max(box.w, 1.0F) / static_cast<float>(wide.nm()),
                         std::max(box.h, 1.0F) / static_cast<float>(high.nm()));
    }
    [[nodiscard]] ImVec2 at(const CutCorner& corner) const {
        const auto w = static_cast<float>(wide.nm()), h = static_cast<float>(high.nm());
        return {box.mid_x() + (static_cast<float>(corner.x.nm()) - w / 2) * scale,
                box.mid_y() + (h / 2 - static_cast<float>(corner.y.nm())) * scale};
    }
};

/// The tape's marks at a corner, on its side of the pan.
void mark(Ui& ui, const State& state, const PanOnPage& page, const CutCorner& corner) {
    const ImVec2 at = page.at(corner);
    const bool left = corner.x * 2 < page.wide;
    const float out = ui.mm(off_mm) * (left ? -1.0F : 1.0F);
    ui.ink()->AddLine(at, {at.x + out, at.y}, ui.colours().chalk, ui.mm(pan_line_mm));
    ui.text(at.x + out * 1.5F, at.y - ui.line_height(Size::bold) / 2,
            Text(on_grid(corner.y, state)), Size::bold, left ? Align::right : Align::left);
}

void draw_metal(Ui& ui, const State& state, const LaidPan& pan, const PanCut& cut, Box box) {
    const PanOnPage page(ui, pan.width, pan.exact, box);
    std::vector<ImVec2> around;
    for (const CutCorner& corner : cut.foot) {
        around.push_back(page.at(corner));
    }
    for (auto corner = cut.top.rbegin(); corner != cut.top.rend(); ++corner) {
        around.push_back(page.at(*corner));
    }
    for (std::size_t i = 0; i < around.size(); ++i) {
        ui.ink()->AddLine(around[i], around[(i + 1) % around.size()], ui.colours().ink,
                          ui.mm(pan_line_mm));
    }
    for (const std::vector<CutCorner>* const end : {&cut.foot, &cut.top}) {
        mark(ui, state, page, end->front());
        mark(ui, state, page, end->back());
    }
}

Text end_words(const State& state, const PanCut& cut, bool top) {
    const std::vector<CutCorner>& end = top ? cut.top : cut.foot;
    if (cut.is_square(end)) {
        return top ? say("Top: cut square at {1}.", on_grid(end.front().y, state))
                   : say("Foot: square, at 0.");
    }
    return top ? say("Top: left side at {1}, right side at {2}.", on_grid(end.front().y, state),
                     on_grid(end.back().y, state))
               : say("Foot: left side at {1}, right side at {2}.", on_grid(end.front().y, state),
                     on_grid(end.back().y, state));
}

std::vector<Text> lines_of(const State& state, const LaidPan& pan, const PanCut& cut) {
    std::vector<Text> lines = {say("From one length of {1}, {2} wide.", pan.length, pan.width),
                               end_words(state, cut, false), end_words(state, cut, true)};
    for (const std::vector<CutCorner>* const end : {&cut.foot, &cut.top}) {
        for (std::size_t i = 1; i + 1 < end->size(); ++i) {
            lines.push_back(say("A corner {1} from the left side, at {2}.",
                                on_grid((*end)[i].x, state), on_grid((*end)[i].y, state)));
        }
    }
    lines.push_back(
        say("All from its lowest metal, seen from outside with the eave below: what "
            "hooks or turns up is in it."));
    lines.push_back(say("Cut edges are sharp: wear gloves and eye protection."));
    return lines;
}

}  // namespace

Wished draw_cut_pan(Ui& ui, const State& state, Drafts& /*drafts*/) {
    const EdgeWork* const work = edge_of(state, state.where.edge);
    const PlannedPanels* const panels = panels_at(state);
    const LaidPan* const pan = panels == nullptr || panels->layout == nullptr
                                   ? nullptr
                                   : find_pan(*panels->layout, state.where.piece);
    if (work == nullptr || pan == nullptr) {
        return Go{{Screen::roof, {}}};
    }
    const Frame frame = open_frame(
        ui, state, say("{1} · pan {2}", title_of(work->edge), pan->number),
        {{"plane", say("The plane")}, {"steps", say("Back to the step"), Look::primary}});
    Wished wish = frame.wish;
    Box body = frame.body;
    const Box picture =
        ui.portrait() ? take_top(body, body.h * pan_part) : take_left(body, body.w * pan_part);
    ui.portrait() ? take_top(body, ui.mm(gap_mm)) : take_left(body, ui.mm(gap_mm));
    // Of a pan in pieces each is cut by itself, from the foot.
    const PanelLayout& layout = *panels->layout;
    draw_metal(ui, state, *pan, pan_cut(layout.plane, *pan, layout.ends), picture);
    Box words = ui.begin_scroll("pan words", body);
    const float top = words.y;
    for (const LaidPan& piece : layout.pans) {
        if (piece.number != pan->number) {
            continue;
        }
        if (&piece != pan) {
            take_top(words, ui.paragraph(words.x, words.y, words.w,
                                         say("The piece above, {1}:", piece.piece), Size::bold));
        }
        for (const Text& line : lines_of(state, piece, pan_cut(layout.plane, piece, layout.ends))) {
            take_top(words, ui.paragraph(words.x, words.y, words.w, line) + ui.mm(gap_mm) / 2);
        }
    }
    ui.end_scroll(words.y - top);
    if (frame.tapped == "plane") {
        wish = Go{at(state.where, Screen::panels)};
    } else if (frame.tapped == "steps") {
        wish = Go{at(state.where, Screen::steps)};
    }
    return wish;
}

}  // namespace hemline
