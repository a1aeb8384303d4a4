#include "field/screens/section/profile_places.h"

#include <algorithm>
#include <cmath>

namespace hemline {

namespace {

bool is_free(Box place, const std::vector<Box>& taken, float gap) {
    return std::none_of(taken.begin(), taken.end(), [&](Box other) {
        const Box both = common_of(inset(other, -gap), place);
        return both.w > 0 && both.h > 0;
    });
}

constexpr float beside_line_mm = 1.8F, off_its_line_mm = 4;

/// Whether the lines from a to b and from c to d cross.
bool cross(ImVec2 a, ImVec2 b, ImVec2 c, ImVec2 d) {
    const auto side = [](ImVec2 from, ImVec2 to, ImVec2 of) {
        return (to.x - from.x) * (of.y - from.y) - (to.y - from.y) * (of.x - from.x) > 0;
    };
    return side(a, b, c) != side(a, b, d) && side(c, d, a) != side(c, d, b);
}

/// A leader that runs along the section or across it, or across another, is taken for a part of it.
bool is_clear(const Ui& ui, ImVec2 middle, Box place, const ProfileTaken& taken) {
    const ImVec2 end = leader_end(middle, place);
    const float length = std::hypot(end.x - middle.x, end.y - middle.y);
    const float share = ui.mm(off_its_line_mm) / length;
    if (share >= 1) {
        return true;  // it ends before it is off its own line
    }
    const ImVec2 from{middle.x + (end.x - middle.x) * share, middle.y + (end.y - middle.y) * share};
    return std::none_of(taken.lines.begin(), taken.lines.end(),
                        [&](Box line) {
                            return is_crossed(inset(line, -ui.mm(beside_line_mm)), from.x, from.y,
                                              end.x, end.y);
                        }) &&
           std::none_of(taken.leaders.begin(), taken.leaders.end(), [&](const auto& other) {
               return cross(from, end, other.first, other.second);
           });
}

/// `taken` without leaders: lines may cross.
bool can_take(const Ui& ui, ImVec2 middle, Box place, Box page, const ProfileTaken& taken) {
    const Box seen = common_of(place, page);
    if (seen.w < place.w - 1 || seen.h < place.h - 1 || !is_free(place, taken.lines, ui.mm(1)) ||
        !is_free(place, taken.words, ui.mm(gap_mm))) {
        return false;
    }
    if (taken.leaders.empty() && !taken.words.empty()) {
        return true;
    }
    const ImVec2 end = leader_end(middle, place);
    return std::none_of(
               taken.words.begin(), taken.words.end(),
               [&](Box words) { return is_crossed(words, middle.x, middle.y, end.x, end.y); }) &&
           std::none_of(taken.leaders.begin(), taken.leaders.end(), [&](const auto& leader) {
               return is_crossed(place, leader.first.x, leader.first.y, leader.second.x,
                                 leader.second.y);
           });
}

std::optional<Box> nearest_place(const Ui& ui, ImVec2 middle, Box size, Box page,
                                 const ProfileTaken& taken, bool clear = false) {
    constexpr float step_mm = 1.5F;
    std::optional<Box> nearest;
    float least = 0;
    for (float y = page.y; y + size.h <= page.bottom() + 0.5F; y += ui.mm(step_mm)) {
        for (float x = page.x; x + size.w <= page.right() + 0.5F; x += ui.mm(step_mm)) {
            const Box place{x, y, size.w, size.h};
            const float off = std::hypot(place.mid_x() - middle.x, place.mid_y() - middle.y);
            if ((!nearest || off < least) && can_take(ui, middle, place, page, taken) &&
                (!clear || is_clear(ui, middle, place, taken))) {
                nearest = place;
                least = off;
            }
        }
    }
    return nearest;
}

}  // namespace

void ProfileTaken::add_line(const std::vector<ImVec2>& stroke) {
    for (std::size_t i = 1; i < stroke.size(); ++i) {
        const ImVec2 a = stroke[i - 1], b = stroke[i];
        const float parts = std::max(1.0F, std::hypot(b.x - a.x, b.y - a.y) / 8);
        for (float t = 0; t <= parts; t += 1) {
            lines.push_back(
                {a.x + (b.x - a.x) * t / parts - 1, a.y + (b.y - a.y) * t / parts - 1, 2, 2});
        }
    }
}

ImVec2 leader_end(ImVec2 middle, Box place) {
    return {std::clamp(middle.x, place.x, place.right()),
            std::clamp(middle.y, place.y, place.bottom())};
}

std::optional<Box> place_beside(const Ui& ui, ImVec2 a, ImVec2 b, Box size, Box page,
                                const ProfileTaken& taken, Need need) {
    const float length = std::hypot(b.x - a.x, b.y - a.y);
    const ImVec2 along =
        length < 1 ? ImVec2(1, 0) : ImVec2((b.x - a.x) / length, (b.y - a.y) / length);
    const ImVec2 up{along.y, -along.x};
    const ImVec2 middle{(a.x + b.x) / 2, (a.y + b.y) / 2};
    const float w = size.w, h = size.h;
    for (const float to_end : {0.0F, -1.0F, 1.0F}) {
        for (const float off : {1.0F, -1.0F, 2.1F, -2.1F}) {
            const float dx = up.x * off * (w / 2 + ui.mm(2)) + along.x * to_end * w;
            const float dy = up.y * off * (h / 2 + ui.mm(2)) + along.y * to_end * h;
            const Box place{middle.x + dx - w / 2, middle.y + dy - h / 2, w, h};
            if (can_take(ui, middle, place, page, taken) && is_clear(ui, middle, place, taken)) {
                return place;
            }
        }
    }
    if (const auto clear = nearest_place(ui, middle, size, page, taken, true)) {
        return clear;
    }
    if (need == Need::clear) {
        return std::nullopt;
    }
    const auto place = nearest_place(ui, middle, size, page, taken);
    return place || need != Need::must
               ? place
               : nearest_place(ui, middle, size, page, {taken.lines, taken.words, {}});
}

}  // namespace hemline
