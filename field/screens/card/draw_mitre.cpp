#include "field/screens/card/draw_mitre.h"

#include <imgui.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

namespace hemline {

namespace {

constexpr float waste_hatch_mm = 2.2F;

/// A diagonal at an end: from the leg's outer edge to the bend.
struct Diagonal {
    Length outer, point;
    Length tab;  ///< the cut lies so much nearer to the end than the fold
    Side side = Side::left;
    bool far = false;  ///< on the other roof's leg
};

std::optional<Length> place_of(const Card& card, MarkKind kind, Side side) {
    for (const Mark& mark : card.marks) {
        if (mark.kind == kind && mark.toward == side) {
            return mark.at;
        }
    }
    return {};
}

/// From the end inward.
Length in(const Card& card, Side side, Length at) {
    return side == Side::left ? at : card.cut - at;
}

std::vector<Diagonal> diagonals_of(const Card& card) {
    std::vector<Diagonal> all;
    for (const Side side : {Side::left, Side::right}) {
        const auto point = place_of(card, MarkKind::corner_point, side);
        if (!point) {
            continue;
        }
        const auto near = place_of(card, MarkKind::mitre_near, side);
        const auto far = place_of(card, MarkKind::mitre_far, side);
        Length tab;
        if (place_of(card, MarkKind::tab_end, side)) {
            tab = std::min({in(card, side, *point), in(card, side, near.value_or(*point)),
                            in(card, side, far.value_or(*point))});
        }
        if (near) {
            all.push_back({*near, *point, tab, side, false});
        }
        if (far) {
            all.push_back({*far, *point, tab, side, true});
        }
    }
    return all;
}

/// Hatching inside a convex outline.
void hatch(const Ui& ui, const std::array<ImVec2, 4>& outline) {
    ImDrawList* const ink = ui.ink();
    ink->AddConvexPolyFilled(outline.data(), static_cast<int>(outline.size()),
                             ui.colours().waste_ground);
    float least = outline[0].x + outline[0].y, most = least;
    for (const ImVec2& p : outline) {
        least = std::min(least, p.x + p.y);
        most = std::max(most, p.x + p.y);
    }
    const float step = ui.mm(waste_hatch_mm);
    for (float sum = std::ceil(least / step) * step; sum < most; sum += step) {
        std::vector<ImVec2> ends;
        for (std::size_t i = 0; i < outline.size(); ++i) {
            const ImVec2 &a = outline[i], &b = outline[(i + 1) % outline.size()];
            const float from = a.x + a.y - sum, to = b.x + b.y - sum;
            if ((from < 0) != (to < 0)) {
                const float t = from / (from - to);
                ends.emplace_back(a.x + (b.x - a.x) * t, a.y + (b.y - a.y) * t);
            }
        }
        if (ends.size() == 2) {
            ink->AddLine(ends[0], ends[1], ui.colours().waste, ui.mm(0.4F));
        }
    }
    ink->AddPolyline(outline.data(), static_cast<int>(outline.size()), ui.colours().waste,
                     ImDrawFlags_Closed, ui.mm(0.3F));
}

struct Heights {
    float outer, bend;
};
Heights heights_of(const DrawnCard& drawn, bool far) {
    return far ? Heights{drawn.far.bottom(), drawn.far.y}
               : Heights{drawn.near.y, drawn.near.bottom()};
}

}  // namespace

bool is_on_diagonal(MarkKind kind) {
    return kind == MarkKind::mitre_near || kind == MarkKind::mitre_far;
}

void draw_corner_waste(Ui& ui, const DrawnCard& drawn) {
    for (const Diagonal& line : diagonals_of(drawn.card)) {
        const bool left = line.side == Side::left;
        const Length end = left ? Length() : drawn.card.cut;
        const auto cut = [&](Length at) { return left ? at - line.tab : at + line.tab; };
        const auto [outer, bend] = heights_of(drawn, line.far);
        hatch(ui, {ImVec2{drawn.at(end), outer}, ImVec2{drawn.at(cut(line.outer)), outer},
                   ImVec2{drawn.at(cut(line.point)), bend}, ImVec2{drawn.at(end), bend}});
    }
}

void draw_corner_lines(const Ui& ui, const DrawnCard& drawn) {
    for (const Diagonal& line : diagonals_of(drawn.card)) {
        const auto [outer, bend] = heights_of(drawn, line.far);
        ui.ink()->AddLine({drawn.at(line.outer), outer}, {drawn.at(line.point), bend},
                          ui.colours().chalk, ui.mm(0.7F));
    }
}

}  // namespace hemline
