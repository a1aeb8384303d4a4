#include "tools/cli/panels_drawing.h"

#include <algorithm>
#include <cmath>

#include "engine/handover/svg.h"

namespace hemline {
namespace {

/// A roof at its true size has no room for letters.
constexpr double scale = 20;

std::int64_t drawn(double nm) { return std::llround(nm / scale); }

/// y up the slope becomes y down the page, below what is drawn already.
struct Sheet {
    Drawing drawing;
    double below = 0;          ///< where the plane's top lies
    double left = 0, top = 0;  ///< of the plane

    [[nodiscard]] FlatPoint at(double x, double y) const {
        return {drawn(x - left), drawn(below + top - y)};
    }
    void line(Layer layer, std::vector<FlatPoint> points, bool closed) {
        drawing.lines.push_back({layer, std::move(points), closed});
    }
};

void draw_pans(Sheet& sheet, const PanelLayout& layout, Marks marks) {
    for (const LaidPan& pan : layout.pans) {
        for (const DeckPart& part : pan.flat) {
            sheet.line(Layer::bend, {sheet.at(part.x1, part.foot1), sheet.at(part.x1, part.top1)},
                       false);
        }
        const DeckPart& part = pan.flat.front();
        const std::string name =
            std::to_string(pan.number) + (pan.piece > 0 ? "." + std::to_string(pan.piece) : "");
        sheet.drawing.words.push_back(
            {sheet.at(part.x1 + (part.x2 - part.x1) * 0.6, std::max(part.foot1, part.foot2)),
             name + ": " + tell_length(pan.length, marks), Turned::upright});
    }
}

void draw_through(Sheet& sheet, const std::vector<Penetration>& through) {
    for (const Penetration& one : through) {
        const double x = nm_of(one.x), y = nm_of(one.y), half = nm_of(one.wide) / 2;
        if (one.kind == Penetration::Kind::pipe) {
            sheet.drawing.circles.push_back(
                {Layer::mark, sheet.at(x, y), Length::of_nm(drawn(half))});
        } else {
            sheet.line(Layer::mark,
                       {sheet.at(x - half, y - half), sheet.at(x + half, y - half),
                        sheet.at(x + half, y + half), sheet.at(x - half, y + half)},
                       true);
        }
    }
}

}  // namespace

std::string panels_svg(const PanelsPrinted& printed) {
    Sheet sheet;
    sheet.drawing.title = "Panels, 1 : 20";
    for (const PlanePrinted& plane : printed.planes) {
        const DeckPlane& deck = plane.layout.plane;
        sheet.left = deck.left;
        sheet.top = deck.top;
        double foot = deck.top;
        for (const DeckBound& bound : deck.bounds) {
            // A side that leans is drawn as it was read.
            const auto lean = [&](const PlanVector& place) {
                const bool at_side = place.x == deck.left || place.x == deck.right;
                return at_side && deck.top > 0 ? nm_of(deck.lean) * place.y / deck.top : 0.0;
            };
            sheet.line(Layer::cut,
                       {sheet.at(bound.from.x + lean(bound.from), bound.from.y),
                        sheet.at(bound.to.x + lean(bound.to), bound.to.y)},
                       false);
            foot = std::min({foot, bound.from.y, bound.to.y});
        }
        draw_pans(sheet, plane.layout, printed.marks);
        draw_through(sheet, plane.through);
        FlatPoint name = sheet.at(deck.left, foot);
        name.y += drawn(nm_of(feet(1)));
        sheet.drawing.words.push_back({name, "Plane " + deck.name, Turned::level});
        sheet.below += deck.top - foot + nm_of(feet(3));
        sheet.drawing.most.x = std::max(sheet.drawing.most.x, drawn(deck.right - deck.left));
        sheet.drawing.most.y = drawn(sheet.below);
    }
    return svg_of(sheet.drawing);
}

}  // namespace hemline
