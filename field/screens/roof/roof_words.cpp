#include "field/screens/roof/roof_words.h"

#include <algorithm>
#include <cmath>

#include "field/screens/page/status_mark.h"
#include "field/screens/roof/fill_shape.h"
#include "field/screens/roof/roof_lines.h"

namespace hemline {

namespace {

constexpr float beside_line_mm = 0.9F, between_words_mm = 0.8F;
constexpr float arrow_mm = 7, head_mm = 1.6F;
constexpr int tries_a_side = 14;  ///< places of a fall's arrow that are looked at, each way

/// Words run to the right, or up.
ImVec2 readable(ImVec2 along) {
    const bool backward = along.x < -0.01F || (along.x <= 0.01F && along.y > 0);
    return backward ? ImVec2(-along.x, -along.y) : along;
}

}  // namespace

bool RoofWords::is_free(const TiltedBox& box, const SheetLine* but) const {
    if (!is_inside(box, page_)) {
        return false;
    }
    const TiltedBox around = grown(box, ui_.mm(between_words_mm));
    const auto meets = [&](const TiltedBox& other) { return do_meet(around, other); };
    if (std::any_of(taken_.begin(), taken_.end(), meets)) {
        return false;
    }
    const auto crosses = [&](ImVec2 from, ImVec2 to) { return is_crossed(around, from, to); };
    return std::none_of(sheet_.lines.begin(), sheet_.lines.end(),
                        [&](const SheetLine& line) {
                            return &line != but && is_crossed(grown(around, half_across(ui_, line)),
                                                              line.from, line.to);
                        }) &&
           std::none_of(sheet_.gaps.begin(), sheet_.gaps.end(),
                        [&](const SheetGap& gap) { return crosses(gap.from, gap.to); });
}

std::optional<ImVec2> RoofWords::mark(const SheetLine& line) {
    const float r = ui_.mm(line.outer ? outer_mark_mm : inner_mark_mm);
    // Toward an end, so that the middle is left to the length; in the middle of a short line.
    const bool is_short = line.length < 8 * r;
    for (const float t : {is_short ? 0.5F : 0.3F, 0.7F, 0.22F, 0.78F, 0.4F, 0.6F, 0.5F}) {
        const ImVec2 at = moved(line.from, line.along, line.length * t);
        const TiltedBox box{at, {1, 0}, r, r};
        const bool is_level = line.kind == EdgeKind::eave || line.kind == EdgeKind::ridge;
        if (line.length < (is_level ? 3 : 4.5F) * r || !is_free(box, &line)) {
            continue;
        }
        taken_.push_back(box);
        ui_.ink()->AddCircleFilled(at, r, ui_.colours().paper);
        draw_status_mark(ui_, at.x, at.y, r,
                         line.work == nullptr ? EdgeStatus::one_reading : line.status, line.letter,
                         line.outer && line.letter.size() == 1 ? Size::bold : Size::small);
        if (line.letter == sheet_.now) {
            ui_.ink()->AddCircle(at, r + ui_.mm(0.9F), ui_.colours().chalk, 0, ui_.mm(0.7F));
        }
        return at;
    }
    return {};
}

std::optional<TiltedBox> RoofWords::place_along(const SheetLine& line, float w, float h) const {
    const ImVec2 along = readable(line.along);
    const float off = half_across(ui_, line) + ui_.mm(beside_line_mm) + h / 2;
    const std::vector<float> sides =
        line.outer ? std::vector<float>{-1, 1} : std::vector<float>{1, -1};
    const ImVec2 across =
        line.outer ? line.inside : ImVec2(along.y, -along.x);  // above it, as words are read
    for (const float side : sides) {
        for (const float t :
             {0.5F, 0.55F, 0.45F, 0.6F, 0.4F, 0.65F, 0.35F, 0.7F, 0.3F, 0.75F, 0.25F}) {
            const bool within = w <= line.length * (line.outer ? 1.0F : 1.1F);
            if (!within && (!line.outer || side > 0)) {
                continue;
            }
            TiltedBox box{moved(moved(line.from, line.along, line.length * t), across, side * off),
                          along, w / 2, h / 2};
            if (is_free(box, &line)) {
                return box;
            }
        }
    }
    return {};
}

void RoofWords::length(const SheetLine& line) {
    if (!line.says) {
        return;
    }
    // What is worked out is not known to a sixteenth: on the drawing it has no fraction.
    const bool is_worked_out = !line.is_read && !line.outer;
    const Length said = is_worked_out ? nearest_on(*line.says, print_mark_) : *line.says;
    const Text words = said;
    const Palette& p = ui_.colours();
    for (const Size size : {line.is_read ? Size::bold : Size::small, Size::small}) {
        const float h = ui_.line_height(size) * 0.72F;  // capitals and figures
        const auto place = place_along(line, ui_.text_width(words, size), h);
        if (!place) {
            continue;
        }
        const bool is_in_hand = line.is_asked || line.status == EdgeStatus::cutting ||
                                line.status == EdgeStatus::fitting ||
                                line.status == EdgeStatus::to_tick;
        ui_.text_along(place->mid.x, place->mid.y, place->along.x, place->along.y, words, size,
                       is_in_hand && line.is_read ? p.chalk
                       : line.is_read             ? p.ink
                                                  : p.soft);
        taken_.push_back(*place);
        return;
    }
}

void RoofWords::fall(const SheetPlane& plane) {
    const Text words = plane.pitch ? Text(*plane.pitch) : Text();
    const float arrow = ui_.mm(arrow_mm);
    const bool sideways = std::abs(plane.falls.x) > std::abs(plane.falls.y);
    const float w = plane.pitch ? ui_.text_width(words, Size::small) : 0;
    const float h = ui_.line_height(Size::small) * 0.72F;
    // The arrow, and the pitch under or beside it.
    const float half_w = sideways ? std::max(arrow, w) / 2 : (ui_.mm(3.5F) + w) / 2;
    const float half_h = sideways ? (ui_.mm(2.5F) + h) / 2 : arrow / 2;
    const auto is_in_hole = [&](ImVec2 at) {
        return std::any_of(plane.holes.begin(), plane.holes.end(),
                           [&](const auto& hole) { return is_in_shape(hole, at); });
    };
    std::optional<ImVec2> best;
    float least = 0;
    for (const std::vector<ImVec2>& piece : plane.pieces) {
        Box around{piece[0].x, piece[0].y, 0, 0};
        ImVec2 middle{0, 0};
        float right = around.x, low = around.y;
        for (const ImVec2 p : piece) {
            around.x = std::min(around.x, p.x);
            around.y = std::min(around.y, p.y);
            right = std::max(right, p.x);
            low = std::max(low, p.y);
            middle.x += p.x / static_cast<float>(piece.size());
            middle.y += p.y / static_cast<float>(piece.size());
        }
        around.x = std::max(around.x, page_.x);
        around.y = std::max(around.y, page_.y);
        right = std::min(right, page_.right());
        low = std::min(low, page_.bottom());
        for (int i = 1; i < tries_a_side; ++i) {
            for (int k = 1; k < tries_a_side; ++k) {
                const ImVec2 at{
                    around.x + (right - around.x) * static_cast<float>(i) / tries_a_side,
                    around.y + (low - around.y) * static_cast<float>(k) / tries_a_side};
                const float far = std::hypot(at.x - middle.x, at.y - middle.y);
                if ((!best || far < least) && is_in_shape(piece, at) && !is_in_hole(at) &&
                    is_free({at, {1, 0}, half_w, half_h})) {
                    best = at;
                    least = far;
                }
            }
        }
    }
    if (!best) {
        return;
    }
    taken_.push_back({*best, {1, 0}, half_w, half_h});
    const Colour colour = ui_.colours().soft;
    const ImVec2 mid = sideways ? ImVec2(best->x, best->y - half_h + ui_.mm(1.2F))
                                : ImVec2(best->x - half_w + ui_.mm(1.5F), best->y);
    const ImVec2 tip = moved(mid, plane.falls, arrow / 2);
    const ImVec2 across{-plane.falls.y, plane.falls.x};
    const ImVec2 back = moved(tip, plane.falls, -ui_.mm(head_mm));
    ui_.ink()->AddLine(moved(mid, plane.falls, -arrow / 2), tip, colour, ui_.mm(0.35F));
    for (const float side : {1.0F, -1.0F}) {
        ui_.ink()->AddLine(tip, moved(back, across, side * ui_.mm(head_mm) * 0.6F), colour,
                           ui_.mm(0.35F));
    }
    const ImVec2 text = sideways ? ImVec2(best->x, best->y + half_h - h / 2)
                                 : ImVec2(best->x + half_w - w / 2, best->y);
    ui_.text_along(text.x, text.y, 1, 0, words, Size::small, colour);
}

void RoofWords::beside(ImVec2 place, const Text& words) {
    const float w = ui_.text_width(words, Size::small), h = ui_.line_height(Size::small);
    const float off = ui_.mm(2);
    for (const ImVec2 way : {ImVec2(1, -1), ImVec2(-1, -1), ImVec2(1, 0), ImVec2(-1, 0),
                             ImVec2(1, 1), ImVec2(-1, 1)}) {
        const TiltedBox box{{place.x + way.x * (off + w / 2), place.y + way.y * (off + h / 2)},
                            {1, 0},
                            w / 2,
                            h / 2};
        if (is_free(box)) {
            ui_.text_along(box.mid.x, box.mid.y, 1, 0, words, Size::small, ui_.colours().chalk);
            taken_.push_back(box);
            return;
        }
    }
}

}  // namespace hemline
