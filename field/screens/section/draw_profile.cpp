#include "field/screens/section/draw_profile.h"

#include <imgui.h>

#include <algorithm>
#include <cmath>
#include <numeric>
#include <optional>

#include "field/touch/box.h"

namespace hemline {

namespace {

constexpr float line_mm = 1.1F, tick_mm = 1.6F, touch_w_mm = 22, touch_h_mm = 11;
constexpr float beside_part_most = 0.35F;  // of the width, on either side of the drawing
constexpr float beside_hem = 0.58F;        // room for its round end
constexpr double hem_shown_degrees = 171;  // shows its leg's far end, by its width

double mm_of(Length length) { return static_cast<double>(length.nm()) / 1e6; }

/// Corners of the path in mm, the building at the left; the deck's leg falls by `deck`.
std::vector<ImVec2> path_of(const ProfileAsked& asked) {
    const auto& legs = asked.section.legs;
    std::vector<double> ways{0};
    for (std::size_t i = 0; i + 1 < legs.size(); ++i) {
        const double bend = asked.bends[i];
        const double shown = std::abs(bend) >= 180 ? std::copysign(hem_shown_degrees, bend) : bend;
        ways.push_back(ways.back() + shown);  // + turns down the page, away from the upper face
    }
    const double turned = asked.deck_degrees - ways[deck_leg(asked.section)];
    std::vector<ImVec2> path{{0, 0}};
    for (std::size_t i = 0; i < legs.size(); ++i) {
        const double way = radians_of(ways[i] + turned);
        const double w = mm_of(legs[i].width);
        path.emplace_back(path.back().x + static_cast<float>(w * std::cos(way)),
                          path.back().y + static_cast<float>(w * std::sin(way)));
    }
    return path;
}

/// As large as the box allows; a hem that is being asked about is shown with only the leg it is
/// folded on.
std::vector<ImVec2> placed(const std::vector<ImVec2>& path, int hem, Box box) {
    const std::size_t last = path.size() - 1;
    const std::size_t begins = hem <= 0 ? 0 : std::min(static_cast<std::size_t>(hem), last) - 1;
    const std::size_t ends = hem == 0 ? std::min<std::size_t>(2, last) : last;
    ImVec2 low = path[begins], high = path[begins];
    for (std::size_t i = begins; i <= ends; ++i) {
        const ImVec2& p = path[i];
        low = {std::min(low.x, p.x), std::min(low.y, p.y)};
        high = {std::max(high.x, p.x), std::max(high.y, p.y)};
    }
    const float whole =
        std::min(box.w / std::max(1.0F, high.x - low.x), box.h / std::max(1.0F, high.y - low.y));
    const float scale = hem < 0 ? whole : whole * beside_hem;
    std::vector<ImVec2> on_page;
    on_page.reserve(path.size());
    for (const ImVec2& p : path) {
        on_page.emplace_back(box.mid_x() + (p.x - (low.x + high.x) / 2) * scale,
                             box.mid_y() + (p.y - (low.y + high.y) / 2) * scale);
    }
    return on_page;
}

/// The shape of a hem from the fold on: the gap between its two layers at the fold and at its free
/// end, as parts of its width.
struct HemShape {
    float at_fold, at_end;
};
HemShape shape_of(Hem hem) {
    switch (hem) {
        case Hem::open:
            return {0.36F, 0.36F};
        case Hem::tear_drop:
            return {0.5F, 0.1F};
        case Hem::closed:
        case Hem::none:
            break;
    }
    return {0.1F, 0.1F};
}

/// `from`: where the leg that it is folded on begins; `fold`, where it ends; `end`: the side on
/// which the hem lies.
void draw_hem(const Ui& ui, Hem hem, ImVec2 from, ImVec2 fold, ImVec2 end, Colour colour,
              float thick) {
    const float length = std::max(0.1F, std::hypot(fold.x - from.x, fold.y - from.y));
    const ImVec2 out{(fold.x - from.x) / length, (fold.y - from.y) / length};
    const float turn = out.x * (end.y - fold.y) - out.y * (end.x - fold.x) < 0 ? -1.0F : 1.0F;
    const ImVec2 aside{-out.y * turn, out.x * turn};
    const float width = std::hypot(end.x - fold.x, end.y - fold.y);
    const HemShape shape = shape_of(hem);
    const float r = width * shape.at_fold / 2;
    constexpr int arc_parts = 12;
    for (int i = 0; i <= arc_parts; ++i) {
        const float a = 3.14159265F * static_cast<float>(i) / arc_parts;
        const float along = r * std::sin(a), across = r * (1 - std::cos(a));
        ui.ink()->PathLineTo(
            {fold.x + out.x * along + aside.x * across, fold.y + out.y * along + aside.y * across});
    }
    const float gap = width * shape.at_end;
    ui.ink()->PathLineTo(
        {fold.x - out.x * width + aside.x * gap, fold.y - out.y * width + aside.y * gap});
    ui.ink()->PathStroke(colour, 0, thick);
}

bool is_free(Box place, const std::vector<Box>& taken, float gap) {
    return std::none_of(taken.begin(), taken.end(), [&](Box other) {
        const Box both = common_of(inset(other, -gap), place);
        return both.w > 0 && both.h > 0;
    });
}

/// What is drawn already: no width is written on a leg, or near another width.
struct Taken {
    std::vector<Box> legs, widths;
};

std::vector<Text> names_of(const ProfileAsked& asked) {
    std::vector<Text> names = asked.names;
    for (std::size_t i = names.size(); i < asked.section.legs.size(); ++i) {
        names.push_back(spoken(asked.section.legs[i].name));
    }
    return names;
}
/// The name on at most two lines, above the width.
Box place_size(const Ui& ui, const Text& name) {
    const float w = std::max(ui.mm(touch_w_mm), ui.label_width(name));
    const float h = ui.paragraph_height(w, name, Size::small) + ui.line_height(Size::small);
    return {0, 0, w, std::max(ui.mm(touch_h_mm), h)};
}

bool can_take(const Ui& ui, Box place, Box page, const Taken& taken) {
    const Box seen = common_of(place, page);
    return seen.w >= place.w - 1 && seen.h >= place.h - 1 && is_free(place, taken.legs, ui.mm(1)) &&
           is_free(place, taken.widths, ui.mm(gap_mm));
}

/// Anywhere on the page, as near as there is room.
std::optional<Box> nearest_place(const Ui& ui, ImVec2 middle, Box size, Box page,
                                 const Taken& taken) {
    constexpr float step_mm = 1.5F;
    std::optional<Box> nearest;
    float least = 0;
    for (float y = page.y; y + size.h <= page.bottom(); y += ui.mm(step_mm)) {
        for (float x = page.x; x + size.w <= page.right(); x += ui.mm(step_mm)) {
            const Box place{x, y, size.w, size.h};
            const float off = std::hypot(place.mid_x() - middle.x, place.mid_y() - middle.y);
            if ((!nearest || off < least) && can_take(ui, place, page, taken)) {
                nearest = place;
                least = off;
            }
        }
    }
    return nearest;
}

/// Beside the leg's middle, on the upper side or else the other, further off, or toward its ends;
/// else where there is room.
std::optional<Box> place_beside(const Ui& ui, ImVec2 a, ImVec2 b, Box size, Box page,
                                const Taken& taken) {
    const float length = std::max(0.1F, std::hypot(b.x - a.x, b.y - a.y));
    const ImVec2 along{(b.x - a.x) / length, (b.y - a.y) / length}, up{along.y, -along.x};
    const ImVec2 middle{(a.x + b.x) / 2, (a.y + b.y) / 2};
    const float w = size.w, h = size.h;
    for (const float to_end : {0.0F, -1.0F, 1.0F}) {
        for (const float off : {1.0F, -1.0F, 2.1F, -2.1F}) {
            const float dx = up.x * off * (w / 2 + ui.mm(2)) + along.x * to_end * w;
            const float dy = up.y * off * (h / 2 + ui.mm(2)) + along.y * to_end * h;
            const Box place{middle.x + dx - w / 2, middle.y + dy - h / 2, w, h};
            if (can_take(ui, place, page, taken)) {
                return place;
            }
        }
    }
    return nearest_place(ui, middle, size, page, taken);
}

/// The leg's name and width; true when touched.
bool draw_dimension(Ui& ui, const ProfileAsked& asked, std::size_t i, const Text& name, ImVec2 a,
                    ImVec2 b, Box page, Taken& taken) {
    const SectionLeg& leg = asked.section.legs[i];
    const std::optional<Box> found = place_beside(ui, a, b, place_size(ui, name), page, taken);
    if (!found) {
        return false;
    }
    const Box place = *found;
    taken.widths.push_back(place);
    const bool touched = ui.area("leg " + std::to_string(i), place, name);
    const ImVec2 middle{(a.x + b.x) / 2, (a.y + b.y) / 2};
    const ImVec2 near{std::clamp(middle.x, place.x, place.right()),
                      std::clamp(middle.y, place.y, place.bottom())};
    if (std::hypot(near.x - middle.x, near.y - middle.y) > ui.mm(gap_mm)) {
        ui.ink()->AddLine(middle, near, ui.colours().hairline, ui.mm(0.3F));
    }
    if (asked.leg == static_cast<int>(i)) {
        ui.ink()->AddRect({place.x, place.y}, {place.right(), place.bottom()}, ui.colours().chalk,
                          ui.mm(1), 0, ui.mm(0.6F));
    }
    const float line = ui.line_height(Size::small);
    const Text width(print_length(leg.width, asked.marks));
    if (ui.text_width(name, Size::small) <= place.w) {
        ui.text(place.mid_x(), place.mid_y() - line, name, Size::small, Align::centre,
                ui.colours().soft);
        ui.text(place.mid_x(), place.mid_y(), width, Size::small, Align::centre);
    } else {
        const float used =
            ui.paragraph(place.x, place.y, place.w, name, Size::small, ui.colours().soft);
        ui.text(place.x, place.y + used, width, Size::small);
    }
    return touched;
}

}  // namespace

Touched draw_profile(Ui& ui, const ProfileAsked& asked, Box box) {
    const std::vector<Text> names = names_of(asked);
    float beside = 0;
    for (const Text& name : names) {
        beside = std::max(beside, place_size(ui, name).w + ui.mm(3));
    }
    const std::vector<ImVec2> path = placed(path_of(asked), asked.hem,
                                            inset(box, std::min(beside, box.w * beside_part_most),
                                                  std::min(ui.mm(touch_h_mm), box.h * 0.08F)));
    const Palette& p = ui.colours();
    ImDrawList* const ink = ui.ink();
    ink->PushClipRect({box.x, box.y}, {box.right(), box.bottom()}, true);
    for (std::size_t i = 0; i + 1 < path.size(); ++i) {
        const bool chosen = asked.leg == static_cast<int>(i);
        const Colour colour = chosen ? p.chalk : p.ink;
        const float thick = ui.mm(chosen ? 1.6F * line_mm : line_mm);
        const Hem hem = asked.section.legs[i].hem;
        if (hem == Hem::none || path.size() < 3) {
            ui.ink()->AddLine(path[i], path[i + 1], colour, thick);
        } else if (i > 0) {
            draw_hem(ui, hem, path[i - 1], path[i], path[i + 1], colour, thick);
        } else {
            draw_hem(ui, hem, path[2], path[1], path[0], colour, thick);
        }
    }
    for (std::size_t i = 1; i + 1 < path.size(); ++i) {
        const bool chosen = asked.bend == static_cast<int>(i) - 1;
        ui.ink()->AddCircleFilled(path[i], ui.mm(chosen ? tick_mm : 0.9F),
                                  chosen ? p.chalk : p.ink);
    }
    ink->PopClipRect();
    Taken taken;
    for (std::size_t i = 0; i + 1 < path.size(); ++i) {
        const ImVec2 a = path[i], b = path[i + 1];
        for (float t = 0; t <= 1; t += 0.125F) {
            taken.legs.push_back({a.x + (b.x - a.x) * t - 1, a.y + (b.y - a.y) * t - 1, 2, 2});
        }
    }
    // The widest legs first: the others find a place beside them.
    std::vector<std::size_t> order(asked.section.legs.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::stable_sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return asked.section.legs[a].width > asked.section.legs[b].width;
    });
    Touched picked;
    for (const std::size_t i : order) {
        if (draw_dimension(ui, asked, i, names[i], path[i], path[i + 1], box, taken)) {
            picked.leg = static_cast<int>(i);
        }
    }
    return picked;
}

}  // namespace hemline
