#include "field/screens/card/draw_solid.h"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <cmath>

#include "field/screens/page/mixed.h"

namespace hemline {

namespace {

constexpr float hatch_mm = 1.6F, swatch_mm = 6;

/// The eye: the axes of the page in space, and the direction to the eye.
struct Eye {
    Space right, up, toward;

    [[nodiscard]] ImVec2 flat(const Space& p) const {
        return {static_cast<float>(dot(right, p)), -static_cast<float>(dot(up, p))};
    }
};

/// Seen from outside the building (from −y) when not turned.
Eye eye_of(const SolidView& view) {
    const double a = radians_of(view.turned), e = radians_of(view.raised);
    Eye eye;
    eye.right = {std::cos(a), std::sin(a), 0};
    eye.toward = {std::sin(a) * std::cos(e), -std::cos(a) * std::cos(e), std::sin(e)};
    eye.up = {-std::sin(a) * std::sin(e), std::cos(a) * std::sin(e), std::cos(e)};
    return eye;
}

/// Slanted lines across a convex shape, aligned with those of its neighbors.
void hatch(const Ui& ui, const std::vector<ImVec2>& shape, Colour colour) {
    const float step = ui.mm(hatch_mm);
    float low = shape[0].x + shape[0].y, high = low;
    for (const ImVec2& p : shape) {
        low = std::min(low, p.x + p.y);
        high = std::max(high, p.x + p.y);
    }
    for (float at = std::ceil(low / step) * step; at < high; at += step) {
        std::vector<ImVec2> ends;
        for (std::size_t i = 0; i < shape.size(); ++i) {
            const ImVec2 p = shape[i], q = shape[(i + 1) % shape.size()];
            const float a = p.x + p.y - at, b = q.x + q.y - at;
            if ((a < 0) != (b < 0)) {
                const float t = a / (a - b);
                ends.emplace_back(p.x + (q.x - p.x) * t, p.y + (q.y - p.y) * t);
            }
        }
        if (ends.size() == 2) {
            ui.ink()->AddLine(ends[0], ends[1], colour, ui.mm(0.2F));
        }
    }
}

/// Where the parts lie on the page.
struct Sheet {
    const Ui& ui;
    Eye eye;
    ImVec2 origin;
    float scale = 1;

    [[nodiscard]] ImVec2 at(const Space& p) const {
        const ImVec2 flat = eye.flat(p);
        return {origin.x + flat.x * scale, origin.y + flat.y * scale};
    }
};

Sheet sheet_for(const Ui& ui, const std::vector<SolidPart>& parts, const SolidView& view, Box box) {
    Sheet sheet{ui, eye_of(view), {}, 1};
    ImVec2 low{1e9F, 1e9F}, high{-1e9F, -1e9F};
    for (const SolidPart& part : parts) {
        for (const Facet& facet : part.facets) {
            for (const Space& corner : facet.corners) {
                const ImVec2 p = sheet.eye.flat(corner);
                low = {std::min(low.x, p.x), std::min(low.y, p.y)};
                high = {std::max(high.x, p.x), std::max(high.y, p.y)};
            }
        }
    }
    sheet.scale =
        std::min(box.w / std::max(1.0F, high.x - low.x), box.h / std::max(1.0F, high.y - low.y));
    sheet.origin = {box.mid_x() - (low.x + high.x) / 2 * sheet.scale,
                    box.mid_y() - (low.y + high.y) / 2 * sheet.scale};
    return sheet;
}

bool is_painted(Painted painted, bool upper) {
    return painted == Painted::both || painted == (upper ? Painted::upper : Painted::under);
}

void draw_facet(const Sheet& sheet, const Facet& facet, const SolidPart& part) {
    const Ui& ui = sheet.ui;
    const Palette& p = ui.colours();
    std::vector<ImVec2> shape;
    for (const Space& corner : facet.corners) {
        shape.push_back(sheet.at(corner));
    }
    const double facing = dot(facet.normal, sheet.eye.toward);
    const bool painted = part.fill || is_painted(part.painted, facing > 0);
    // Light from above and from the left: level metal is the lightest.
    const auto shade =
        static_cast<float>(0.12 - 0.11 * std::abs(facet.normal.z) + 0.05 * facet.normal.x);
    const bool worked = part.worked && facet.is_tab;
    const Colour ground = part.fill ? *part.fill : worked ? p.chalk : part.other ? p.good : p.metal;
    const Colour dark = part.other ? IM_COL32_BLACK : p.ink;
    const Colour fill = painted ? mixed(ground, dark, std::max(0.0F, shade)) : p.paper;
    ui.ink()->AddConvexPolyFilled(shape.data(), static_cast<int>(shape.size()), fill);
    if (!painted) {
        hatch(ui, shape, p.hairline);
    }
    for (std::size_t i = 0; i < shape.size(); ++i) {
        const Rim rim = facet.rims[i];
        if (rim != Rim::none) {
            const bool cut = rim == Rim::cut;
            const Colour line = part.other && painted ? IM_COL32_BLACK : p.ink;
            ui.ink()->AddLine(shape[i], shape[(i + 1) % shape.size()],
                              rim == Rim::broken ? p.hairline : line, ui.mm(cut ? 0.6F : 0.3F));
        }
    }
}

/// The leg's name beside the middle of its broken edge, clear of those before it.
void draw_leg_names(Ui& ui, const Sheet& sheet, const std::vector<Facet>& facets,
                    const std::vector<Text>& legs, ImVec2 middle) {
    std::vector<Box> taken;
    for (const Facet& facet : facets) {
        for (std::size_t i = 0; i < facet.rims.size(); ++i) {
            if (facet.rims[i] != Rim::broken || facet.leg >= legs.size()) {
                continue;
            }
            const ImVec2 a = sheet.at(facet.corners[i]);
            const ImVec2 b = sheet.at(facet.corners[(i + 1) % facet.corners.size()]);
            const ImVec2 at{(a.x + b.x) / 2, (a.y + b.y) / 2};
            if (std::hypot(a.x - b.x, a.y - b.y) < ui.mm(4)) {
                continue;
            }
            const Text& words = legs[facet.leg];
            const float w = ui.text_width(words, Size::small), h = ui.line_height(Size::small);
            const float x = at.x < middle.x ? at.x - w - ui.mm(3) : at.x + ui.mm(3);
            const Box place{x, at.y - h / 2, w, h};
            const bool is_clear = std::none_of(taken.begin(), taken.end(), [&](Box other) {
                const Box both = common_of(place, other);
                return both.w > 0 && both.h > 0;
            });
            if (is_clear) {
                ui.text(place.x, place.y, words, Size::small);
                taken.push_back(place);
            }
        }
    }
}

}  // namespace

void draw_solid(Ui& ui, const std::vector<SolidPart>& parts, const std::vector<Text>& legs,
                const SolidView& view, Box box, const std::vector<SolidPart>& room_for) {
    const float beside = legs.empty() ? ui.mm(1) : std::min(ui.mm(22), box.w / 5);  // for names
    const Sheet sheet = sheet_for(ui, room_for.empty() ? parts : room_for, view,
                                  inset(box, beside, ui.mm(legs.empty() ? 1 : 3)));
    // All parts are ordered together: each facet remembers its part by its leg.
    std::vector<Facet> all;
    constexpr std::size_t part_step = 1000;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        for (Facet facet : parts[i].facets) {
            facet.leg += i * part_step;
            all.push_back(std::move(facet));
        }
    }
    ImDrawList* const ink = ui.ink();
    const ImDrawListFlags before = ink->Flags;
    ink->Flags &= ~ImDrawListFlags_AntiAliasedFill;  // no seams between facets of the same face
    for (const Facet& facet : back_to_front(std::move(all), sheet.eye.toward)) {
        draw_facet(sheet, facet, parts[facet.leg / part_step]);
    }
    ink->Flags = before;
    if (!parts.empty()) {
        draw_leg_names(ui, sheet, parts.front().facets, legs, {box.mid_x(), box.mid_y()});
    }
}

float draw_solid_key(Ui& ui, bool with_other, Box box) {
    const Palette& p = ui.colours();
    const float side = ui.mm(swatch_mm), line = std::max(side, ui.line_height(Size::small));
    struct Row {
        const char* words;
        bool is_there;
        Colour fill;
        bool hatched;
    };
    const std::array<Row, 3> rows{{{phrase("painted side"), true, p.metal, false},
                                   {phrase("back"), true, p.paper, true},
                                   {phrase("the other piece"), with_other, p.good, false}}};
    float y = box.y;
    for (const Row& row : rows) {
        if (!row.is_there) {
            continue;
        }
        const std::vector<ImVec2> square{
            {box.x, y}, {box.x + side, y}, {box.x + side, y + side}, {box.x, y + side}};
        ui.ink()->AddRectFilled(square[0], square[2], row.fill);
        if (row.hatched) {
            hatch(ui, square, p.hairline);
        }
        ui.ink()->AddRect(square[0], square[2], p.ink, 0, 0, ui.mm(0.3F));
        ui.text(box.x + side + ui.mm(2), y + (side - ui.line_height(Size::small)) / 2,
                say(row.words), Size::small);
        y += line + ui.mm(1);
    }
    return y - box.y;
}

}  // namespace hemline
