#include "field/screens/section/profile_line.h"

#include <algorithm>
#include <cmath>

#include "engine/trim/section.h"

namespace hemline {

namespace {

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

/// From the fold, around, to the free end. `from`: where the leg that it is folded on begins;
/// `fold`, where it ends; `end`: the side on which the hem lies.
std::vector<ImVec2> hem_line(Hem hem, ImVec2 from, ImVec2 fold, ImVec2 end) {
    const float length = std::max(0.1F, std::hypot(fold.x - from.x, fold.y - from.y));
    const ImVec2 out{(fold.x - from.x) / length, (fold.y - from.y) / length};
    const float turn = out.x * (end.y - fold.y) - out.y * (end.x - fold.x) < 0 ? -1.0F : 1.0F;
    const ImVec2 aside{-out.y * turn, out.x * turn};
    const float width = std::hypot(end.x - fold.x, end.y - fold.y);
    const HemShape shape = shape_of(hem);
    const float r = width * shape.at_fold / 2;
    constexpr int arc_parts = 12;
    std::vector<ImVec2> line;
    for (int i = 0; i <= arc_parts; ++i) {
        const float a = 3.14159265F * static_cast<float>(i) / arc_parts;
        const float along = r * std::sin(a), across = r * (1 - std::cos(a));
        line.emplace_back(fold.x + out.x * along + aside.x * across,
                          fold.y + out.y * along + aside.y * across);
    }
    const float gap = width * shape.at_end;
    line.emplace_back(fold.x - out.x * width + aside.x * gap,
                      fold.y - out.y * width + aside.y * gap);
    return line;
}

/// The hem of that leg in these corners, from its fold on.
std::vector<ImVec2> hem_of(const ProfileAsked& asked, const std::vector<ImVec2>& corners,
                           std::size_t leg) {
    const Hem hem = asked.section.legs[leg].hem;
    return leg == 0 ? hem_line(hem, corners[2], corners[1], corners[0])
                    : hem_line(hem, corners[leg - 1], corners[leg], corners[leg + 1]);
}

}  // namespace

ProfileLine profile_line(const ProfileAsked& asked, Box box) {
    ProfileLine line;
    line.corners = placed(path_of(asked), asked.hem, box);
    const std::size_t legs = line.corners.size() - 1;
    const auto& all = asked.section.legs;
    for (std::size_t i = 0; i < legs; ++i) {
        if (all[i].hem == Hem::none || legs < 2) {
            line.stroke.push_back(line.corners[i]);
            continue;
        }
        std::vector<ImVec2> hem = hem_of(asked, line.corners, i);
        if (i == 0) {
            std::reverse(hem.begin(), hem.end());
            hem.pop_back();  // its fold is the next leg's corner
        }
        line.stroke.insert(line.stroke.end(), hem.begin(), hem.end());
    }
    if (all[legs - 1].hem == Hem::none || legs < 2) {
        line.stroke.push_back(line.corners.back());
    }
    return line;
}

std::vector<ImVec2> hem_enlarged(const ProfileAsked& asked, const ProfileLine& line, int hem,
                                 ImVec2 middle, float radius) {
    const auto leg = static_cast<std::size_t>(hem);
    const ImVec2 fold = line.corners[hem == 0 ? 1 : leg];
    const ImVec2 from = line.corners[hem == 0 ? 2 : leg - 1];
    const ImVec2 end = line.corners[hem == 0 ? 0 : leg + 1];
    const float width = std::max(0.1F, std::hypot(end.x - fold.x, end.y - fold.y));
    const float length = std::max(0.1F, std::hypot(fold.x - from.x, fold.y - from.y));
    const ImVec2 out{(fold.x - from.x) / length, (fold.y - from.y) / length};
    const float scale = radius / width;
    const ImVec2 center{fold.x - out.x * width * 0.55F, fold.y - out.y * width * 0.55F};
    std::vector<ImVec2> stroke = hem_of(asked, line.corners, leg);
    stroke.insert(stroke.begin(), {fold.x - out.x * width * 1.35F, fold.y - out.y * width * 1.35F});
    for (ImVec2& p : stroke) {
        p = {middle.x + (p.x - center.x) * scale, middle.y + (p.y - center.y) * scale};
    }
    return stroke;
}

}  // namespace hemline
