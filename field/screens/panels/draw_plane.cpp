#include "field/screens/panels/draw_plane.h"

#include <imgui.h>

#include <algorithm>

#include "engine/panels/deck_pieces.h"
#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float edge_line_mm = 0.5F, eave_line_mm = 1.1F, seam_line_mm = 0.25F;
constexpr float label_gap_mm = 1;

/// The deck on the page.
struct PlaneOnPage {
    const DeckPlane& plane;
    float scale;
    ImVec2 origin;  ///< of the deck's left end, at the eave

    PlaneOnPage(const DeckPlane& deck, Box box) : plane(deck) {
        const auto w = static_cast<float>(deck.right - deck.left),
                   h = static_cast<float>(deck.top - lowest());
        scale = std::min(std::max(box.w, 1.0F) / w, std::max(box.h, 1.0F) / h);
        origin = {box.mid_x() - w * scale / 2,
                  box.mid_y() + h * scale / 2 + static_cast<float>(lowest()) * scale};
    }
    [[nodiscard]] double lowest() const {
        double low = 0;
        for (const DeckBound& bound : plane.bounds) {
            low = std::min({low, bound.from.y, bound.to.y});
        }
        return low;
    }
    [[nodiscard]] ImVec2 at(double x, double y) const {
        return {origin.x + static_cast<float>(x - plane.left) * scale,
                origin.y - static_cast<float>(y) * scale};
    }
};

void draw_edges(const Ui& ui, const PlaneOnPage& page) {
    for (const DeckBound& bound : page.plane.bounds) {
        const bool eave = bound.kind == EdgeKind::eave;
        ui.ink()->AddLine(page.at(bound.from.x, bound.from.y), page.at(bound.to.x, bound.to.y),
                          ui.colours().ink, ui.mm(eave ? eave_line_mm : edge_line_mm));
    }
}

/// Its parts, each a figure with two sides up the slope.
void fill(const Ui& ui, const PlaneOnPage& page, const DeckPiece& piece, Colour colour) {
    for (const DeckPart& part : piece) {
        ui.ink()->AddQuadFilled(page.at(part.x1, part.foot1), page.at(part.x2, part.foot2),
                                page.at(part.x2, part.top2), page.at(part.x1, part.top1), colour);
    }
}

void outline(const Ui& ui, const PlaneOnPage& page, const LaidPan& pan) {
    for (const DeckPart& part : pan.flat) {
        for (const bool left : {true, false}) {
            const bool end = left ? part.x1 == pan.flat.front().x1 : part.x2 == pan.flat.back().x2;
            const double x = left ? part.x1 : part.x2;
            if (end) {
                ui.ink()->AddLine(page.at(x, left ? part.foot1 : part.foot2),
                                  page.at(x, left ? part.top1 : part.top2), ui.colours().ink,
                                  ui.mm(seam_line_mm));
            }
        }
    }
}

constexpr int counted_in = 5;  // seams are measured by fives

/// Where the pan has room for it its length up the pan; else its number, where those of all have no
/// room every fifth.
void label(Ui& ui, const PlaneOnPage& page, const LaidPan& pan, float widest_number) {
    const DeckPart& part = pan.flat[pan.flat.size() / 2];
    const ImVec2 low = page.at((part.x1 + part.x2) / 2, std::max(part.foot1, part.foot2)),
                 high = page.at((part.x1 + part.x2) / 2, std::min(part.top1, part.top2));
    const float w = static_cast<float>(pan.width.nm()) * page.scale, h = low.y - high.y;
    const Text number(std::to_string(pan.number));
    const Text words = glued(number, " · ", Text(pan.length));
    const float line = ui.line_height(Size::small);
    if (line <= w && ui.text_width(words, Size::small) + ui.mm(2) <= h) {
        ui.text_along(low.x, (low.y + high.y) / 2, 0, -1, words, Size::small, ui.colours().ink);
    } else if ((widest_number + ui.mm(label_gap_mm) <= w || pan.number % counted_in == 0) &&
               line <= h) {
        ui.text(low.x, low.y - line - ui.mm(label_gap_mm), number, Size::small, Align::centre);
    }
}

}  // namespace

void draw_pans(Ui& ui, const PanelLayout& layout, int in_hand, std::span<const Penetration> through,
               Box box) {
    const PlaneOnPage page(layout.plane, box);
    for (const LaidPan& pan : layout.pans) {
        fill(ui, page, pan.flat, pan.number == in_hand ? ui.colours().chalk : ui.colours().metal);
        outline(ui, page, pan);
    }
    const float widest = ui.text_width(Text(std::to_string(layout.pans.size())), Size::small);
    for (const LaidPan& pan : layout.pans) {
        label(ui, page, pan, widest);
    }
    for (const Penetration& one : through) {
        const double x = static_cast<double>(one.x.nm()), y = static_cast<double>(one.y.nm());
        const float r = std::max(ui.mm(1), static_cast<float>(one.wide.nm()) / 2 * page.scale);
        ui.ink()->AddCircleFilled(page.at(x, y), r, ui.colours().paper);
        ui.ink()->AddCircle(page.at(x, y), r, ui.colours().ink, 0, ui.mm(edge_line_mm));
    }
    draw_edges(ui, page);
}

void draw_strips(const Ui& ui, const DeckPlane& plane, std::span<const Length> seams, Box box) {
    const PlaneOnPage page(plane, box);
    double from = plane.left;
    for (std::size_t i = 0; i <= seams.size(); ++i) {
        const double to = i < seams.size() ? static_cast<double>(seams[i].nm()) : plane.right;
        for (const DeckPiece& piece : deck_pieces(plane, from, to)) {
            fill(ui, page, piece, i % 2 == 0 ? ui.colours().metal : ui.colours().metal_low);
        }
        from = to;
    }
    draw_edges(ui, page);
}

}  // namespace hemline
